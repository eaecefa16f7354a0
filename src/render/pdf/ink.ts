/** Colours on paper. Everything is told by word, weight or shape too, so that a grey copy loses nothing. */

import type { CardInk } from '../../layout/card/index.ts';

export const CARD_INKS: Readonly<Record<CardInk, string>> = {
  ink: '#14181a',
  soft: '#4a5558',
  accent: '#0b5563',
  paper: '#ffffff',
  danger: '#b8121f',
  hairline: '#b4bcbe',
  rule: '#5c676a',
  tint: '#eef1f1',
  'signal-danger': '#b8121f',
  'signal-warning': '#f07f13',
  'signal-caution': '#f9c80e',
  'signal-notice': '#1558a6',
  'tint-danger': '#fcf0f0',
  'tint-warning': '#fef5eb',
  'tint-caution': '#fefaea',
  'tint-notice': '#eff4fa',
};
