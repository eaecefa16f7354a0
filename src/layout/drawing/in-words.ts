/** What a pattern figure shows, in words: its title, its description for the alternative text, the sentence under it. */

import { angleText, fromTop } from './angles.ts';
import { dimensionText } from './dimensions.ts';
import { legendEntries } from './features.ts';
import type { PatternSpec } from './pattern-spec.ts';

export function titleOf(spec: PatternSpec): string {
  const count = spec.holes.length;
  return `${spec.action === 'loosen' ? 'Loosening' : 'Tightening'} order of ${spec.name}, ${count === 1 ? '1 bolt' : `${count} bolts`}`;
}

/** View, pattern, features, the order and the rounds. */
export function descriptionOf(spec: PatternSpec): string {
  const top = spec.top === undefined ? '' : ` Top: ${spec.top}.`;
  const features = legendEntries(spec.features).map((e) => e.words);
  const beside = features.length === 0 ? '' : ` Also drawn: ${features.join('; ')}.`;
  return `Seen ${spec.view}; ${patternInWords(spec)}.${top}${beside} ${orderInWords(spec)} ${spec.rounds}`.trim();
}

function orderInWords(spec: PatternSpec): string {
  const verb = spec.action === 'loosen' ? 'Loosen' : 'Tighten';
  const together = spec.moves.some((move) => move.length > 1);
  if (!together) return `${verb} the holes in this order: ${spec.moves.flat().join(', ')}.`;
  const sets = spec.moves.map((move) => (move.length === 1 ? String(move[0]) : listed(move)));
  return `${verb} these holes together, set after set: ${sets.join('; ')}.`;
}

function listed(numbers: readonly number[]): string {
  return `${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;
}

function patternInWords(spec: PatternSpec): string {
  const p = spec.pattern;
  const count = `${spec.holes.length} holes`;
  const hand = p.kind !== 'points' && p.numbering === 'anticlockwise' ? 'anticlockwise' : 'clockwise';
  switch (p.kind) {
    case 'circle':
      return `${count} on a circle of ${plain(p.diameterMm)}, numbered ${hand}`;
    case 'arc':
      return `${count} on an arc of ${angleText(p.spanDeg)} of a circle of ${plain(p.diameterMm)}, hole 1 ${fromTop(p.firstDeg)}, numbered ${hand}`;
    case 'circles':
      return `${p.circles.map((c) => `${c.count} holes on a circle of ${plain(c.diameterMm)}`).join(', ')}, numbered ${hand} circle after circle`;
    case 'slot':
      return `${count} along a slotted line of ${plain(p.lengthMm)} by ${plain(p.widthMm)}, numbered ${hand}`;
    case 'rectangle':
    case 'points':
      return `${count}, numbered as drawn`;
  }
}

function plain(mm: number): string {
  return dimensionText(mm).replace('\u00a0', ' ');
}

/** Explains the numbers, a sentence each; none for a single bolt. `numbered`: the order stands in the symbols. */
export function legendOf(spec: PatternSpec, numbered: boolean): readonly string[] {
  if (spec.holes.length === 1) return [];
  const p = spec.pattern;
  const hand = p.kind !== 'points' && p.numbering === 'anticlockwise' ? ', counted anticlockwise' : '';
  const together = spec.moves.some((move) => move.length > 1);
  if (!numbered) return [`Numbers at the holes: hole numbers${hand}.`, 'Filled: first.', 'Order: table.'];
  const order = spec.action === 'loosen' ? 'order to loosen' : 'order';
  const same = spec.holes.every((h) => h.number === h.order);
  if (same) return [`In the circle: ${order} and hole${hand}.`];
  // A hole number of an inner circle stands inside it.
  const where = p.kind === 'circles' ? 'Beside it' : 'Outside';
  return [`In the circle: ${order}${together ? '; same number: together' : ''}.`, `${where}: hole${hand}.`];
}
