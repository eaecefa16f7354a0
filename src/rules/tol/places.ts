/** Where a step names a tool or a consumable. */

import type { Range } from '../../diagnostics/index.ts';
import { isWritten, keyPlaceOf, type Prose, placeOf, READ_FROM, type Step } from '../../resolve/index.ts';
import { entryOf } from '../../source/index.ts';

export function refersTo(prose: Prose, kind: 'tool' | 'consumable' | 'part', id: string): boolean {
  return prose.some((p) => p.runs.some((r) => r.ref?.kind === kind && r.ref.id === id));
}

/** Where the step names the tool; the order to tighten or loosen where the joint brings it along. */
export function toolPlace(step: Step, id: string): Range {
  if (refersTo(step.text, 'tool', id)) return wordsPlace(step, `tool:${id}`);
  if (lists(step, 'with', id)) return keyPlaceOf(step, 'with', id);
  for (const key of ['measure', 'tighten', 'loosen']) {
    if (key === 'measure' && step.measures.some((m) => m.tool === id)) {
      const only = entryOf(step[READ_FROM], 'measure')?.value.kind === 'map';
      return only ? placeOf(step, 'measure', 'with') : placeOf(step, 'measure');
    }
    if (key !== 'measure' && isWritten(step, key)) return placeOf(step, key);
  }
  return placeOf(step, 'do');
}

/** Where the step names the consumable. */
export function consumablePlace(step: Step, id: string): Range {
  if (step.lubricate?.id === id) return placeOf(step, 'lubricate', 'with');
  if (lists(step, 'use', id)) return keyPlaceOf(step, 'use', id);
  return wordsPlace(step, `consumable:${id}`);
}

/** Whether `with: [id]`, `use: [id]` or `use: { id: 5 ml }` stands in the step. */
export function lists(step: Step, key: 'with' | 'use', id: string): boolean {
  const node = entryOf(step[READ_FROM], key)?.value;
  if (node?.kind === 'map') return node.entries.some((e) => e.key === id);
  return node?.kind === 'sequence' && node.items.some((i) => i.kind === 'scalar' && i.value === id);
}

/** The words themselves where the file holds the text of the step unbroken, else the whole text. */
export function wordsPlace(step: Step, words: string): Range {
  const node = entryOf(step[READ_FROM], 'do')?.value;
  if (node?.kind !== 'scalar' || typeof node.value !== 'string') return placeOf(step, 'do');
  const { file, start, end } = node.range;
  // A quoted or folded text is longer or shorter in the file than what it says.
  if (end - start !== node.value.length) return node.range;
  const at = node.value.toLowerCase().indexOf(words.toLowerCase());
  return at < 0 ? node.range : { file, start: start + at, end: start + at + words.length };
}
