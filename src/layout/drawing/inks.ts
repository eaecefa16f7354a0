/** Colours of drawings on white paper. Everything is told by shape or number too, so that a grey copy loses nothing. */

import type { Ink } from './primitives.ts';

export const INK_COLOURS: Readonly<Record<Ink, string>> = {
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
