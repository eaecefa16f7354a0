/** Colours on paper. Everything is told by word, weight or shape too, so that a grey copy loses nothing. */

import type { CardInk } from '../../layout/card/index.ts';
import type { Ink } from '../../layout/drawing/index.ts';

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

export const DRAWING_INKS: Readonly<Record<Ink, string>> = {
  ink: '#14181a',
  accent: '#0b5563',
  paper: '#ffffff',
  tint: '#eef1f1',
  faint: '#8a9494',
  'safety-yellow': '#f9c80e',
  'safety-orange': '#f07f13',
  'safety-red': '#b8121f',
  'safety-blue': '#1558a6',
  black: '#111111',
  white: '#ffffff',
};
