/** Temporary changes: a dashed box before the step that they touch, and what the foot of every side says of them. */

import type { TemporaryNote, Variant } from '../../resolve/types.ts';
import { listed } from '../../resolve/words.ts';
import { type Block, type Decoration, mm, node, shift, stack } from './items.ts';
import { setProse } from './prose.ts';
import { paragraph, type Setting, span } from './setting.ts';
import { sentence } from './source-text.ts';

/** Between the box and its words. */
export const TEMPORARY_PAD = mm(3.5);
const RULE = mm(0.7);
const DASH = mm(4);

/** Before the warnings of its step, over the full width: what is done otherwise, until when, where, why, and who approved it. */
export function temporaryBlock(
  setting: Setting,
  note: TemporaryNote,
  person: (id: string) => string,
  width: number,
): Block {
  const { type } = setting.format;
  const inner = width - 2 * TEMPORARY_PAD;
  const words = stack(
    [
      paragraph(setting, [span(temporaryHead(note), type.stage, 'bold')], inner),
      ...(note.scope === '' ? [] : [paragraph(setting, [span(sentence(note.scope), type.table, 'semibold')], inner)]),
      setProse(setting, note.text, type.step, inner, { weight: 'semibold' }),
      paragraph(
        setting,
        [span('Why: ', type.small, 'semibold', 'soft'), span(temporaryWhy(note, person), type.small)],
        inner,
      ),
    ],
    mm(0.8),
  );
  const height = words.height + mm(5);
  const placed = shift(words, TEMPORARY_PAD, mm(2.5));
  return { height, decoration: dashedBox(width, height), nodes: [node('Div', [], placed.nodes)] };
}

/** `TEMPORARY CHANGE TC-07 until 2026-12-20` */
export function temporaryHead({ number, until }: TemporaryNote): string {
  return `TEMPORARY CHANGE\u00a0${number} until\u00a0${until}`;
}

/** The reason and who approved it. */
export function temporaryWhy({ reason, approver }: TemporaryNote, person: (id: string) => string): string {
  return `${sentence(reason)} Approved by ${person(approver)}.`;
}

/** Numbers of the temporary changes that a card shows, sorted. */
export function temporaryNumbers(variant: Variant): readonly string[] {
  const numbers = variant.stages.flatMap((s) => s.steps.flatMap((step) => (step.temporary ?? []).map((t) => t.number)));
  return [...new Set(numbers)].sort();
}

/** ` with temporary changes TC-07 and TC-09`; empty without one. */
export function withTemporary(numbers: readonly string[]): string {
  if (numbers.length === 0) return '';
  return ` with temporary change${numbers.length === 1 ? '' : 's'} ${listed(numbers)}`;
}

/** A heavy rule of dashes around a box, whole at its corners: it lies within the box. */
function dashedBox(width: number, height: number): Decoration[] {
  const inset = RULE / 2;
  const dashes = (length: number, put: (from: number, to: number) => Decoration): Decoration[] => {
    // An odd count of equal stretches, dash and gap by turns, so that each side begins and ends with a dash.
    const stretches = 2 * Math.max(1, Math.round((length / DASH - 1) / 2)) + 1;
    const one = length / stretches;
    return Array.from({ length: (stretches + 1) / 2 }, (_, i) => put(2 * i * one, (2 * i + 1) * one));
  };
  const pen = { kind: 'line', width: RULE, ink: 'ink' } as const;
  return [
    ...[inset, height - inset].flatMap((y) =>
      dashes(width, (from, to) => ({ ...pen, x1: from, y1: y, x2: to, y2: y })),
    ),
    ...[inset, width - inset].flatMap((x) =>
      dashes(height, (from, to) => ({ ...pen, x1: x, y1: from, x2: x, y2: to })),
    ),
  ];
}
