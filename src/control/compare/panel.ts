/** The panel of a new card: at most five lines of what changed since the issue before. */

import type { ChangePanel } from '../../resolve/types.ts';
import type { Change, Comparison } from '../types.ts';
import { SUBJECTS } from './merge.ts';

const LINES = 5;

/** Nothing when nothing changed. What only moved, or counts for the office only, comes last. */
export function panelOf({ from, changes }: Comparison): ChangePanel | undefined {
  if (changes.length === 0) return undefined;
  const lines = [...new Set([...changes].sort((a, b) => rank(a) - rank(b)).map(lineOf))];
  return { since: from, lines: lines.slice(0, LINES), more: Math.max(0, lines.length - LINES) };
}

function rank({ kind, of }: Change): number {
  const place = SUBJECTS.indexOf(of);
  return kind === 'moved' ? SUBJECTS.length + place : place;
}

/** With the cards for which it holds, because the panel is the same on all of them. */
function lineOf({ words, variants, kind, of }: Change): string {
  // A new card is named already.
  if (variants.length === 0 || (of === 'variant' && kind === 'added')) return words;
  return `${words} (only ${variants.join('; ')})`;
}
