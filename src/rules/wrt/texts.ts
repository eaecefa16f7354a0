/** The texts of a card in which writing is checked, and the places of words in them. */

import type { Range } from '../../diagnostics/index.ts';
import { type Choice, type FromFile, type Prose, placeOf, READ_FROM, type Step } from '../../resolve/index.ts';
import { entryOf, type Node } from '../../source/index.ts';
import { onceACard, type Scene } from '../rule.ts';
import { insetOf, nthIndex, occurrences, withoutReferences } from './place.ts';
import { newReading, type Reading, readingOf } from './reading.ts';

export type Kind = 'do' | 'note' | 'hazard' | 'avoid' | 'if out' | 'intro' | 'purpose';

export interface Text {
  readonly kind: Kind;
  readonly reading: Reading;
  readonly step?: Step;
  /** Of a hazard, an avoidance or an action out of limit: which one of the step. */
  readonly index: number;
  /** Of an introduction: the stage's place. */
  readonly stage?: Range;
}

type ByKind = ReadonlyMap<Kind, readonly Text[]>;

/** All texts of a card by kind, gathered once for all checks. */
export const textsOf = onceACard(({ document, shop, variant }): ByKind => {
  const made = new Map<Kind, Text[]>();
  const several = document.variants.length > 1;
  const add = (kind: Kind, prose: Prose, index: number, where: { readonly step: Step } | { readonly stage: Range }) => {
    // Only steps of shared stages carry a label.
    const again = several || !('step' in where) || where.step.label !== undefined;
    const text: Text = { kind, reading: again ? readingOf(prose, kind) : newReading(prose), index, ...where };
    const list = made.get(kind);
    if (list === undefined) made.set(kind, [text]);
    else list.push(text);
  };
  made.set('purpose', [{ kind: 'purpose', reading: readingOf(document.purpose, 'purpose'), index: 0 }]);
  for (const { intro, range, shared, steps } of variant.stages) {
    if (intro !== undefined) {
      const stage = shop.stages.find((s) => s.id === shared)?.range ?? range;
      add('intro', intro, 0, { stage });
    }
    for (const step of steps) {
      const where = { step };
      add('do', step.text, 0, where);
      if (step.note !== undefined) add('note', step.note, 0, where);
      for (const [index, { hazard, avoid }] of step.warnings.entries()) {
        add('hazard', hazard, index, where);
        add('avoid', avoid, index, where);
      }
      for (const [index, { ifOut }] of step.measures.entries()) add('if out', ifOut, index, where);
    }
  }
  return made;
});

/** The words from `start` to `end` of the reading, where the file holds them unbroken; else, or without them, their field. */
export function placeIn(scene: Scene, text: Text, start?: number, end?: number): Range {
  const from: FromFile = text.step ?? scene.document;
  const path = pathTo(scene, text);
  if (path === undefined) return text.stage ?? scene.document.range;
  const field = placeOf(from, ...path);
  if (start === undefined || end === undefined) return field;
  const node = nodeAt(from[READ_FROM], path);
  if (node?.kind !== 'scalar' || typeof node.value !== 'string') return field;
  const inset = insetOf(node.value, field, text.kind === 'purpose');
  if (inset === undefined) return field;
  const words = text.reading.text.slice(start, end);
  const before = occurrences(text.reading.typed.slice(0, start), words);
  const index = nthIndex(withoutReferences(node.value), words, before);
  if (index < 0) return field;
  return { file: field.file, start: field.start + inset + index, end: field.start + inset + index + words.length };
}

/** The way from the step or document to the text; undefined for the introduction of a shared stage, in another file. */
function pathTo({ document, variant }: Scene, text: Text): readonly (string | number)[] | undefined {
  const { kind, step, index, stage } = text;
  if (kind === 'purpose') return ['purpose'];
  if (kind === 'intro') return stage === undefined ? undefined : introOf(document, stage);
  if (step === undefined || kind === 'do' || kind === 'note') return [kind];
  const list = kind === 'if out' ? 'measure' : 'warn';
  return [list, written(step, list, index, variant.choices), kind];
}

function introOf(document: FromFile, range: Range): readonly (string | number)[] | undefined {
  const stages = entryOf(document[READ_FROM], 'stages')?.value;
  const items = stages?.kind === 'sequence' ? stages.items : [];
  const index = items.findIndex(
    (i) => i.range.file === range.file && i.range.start <= range.start && range.end <= i.range.end,
  );
  return index < 0 ? undefined : ['stages', index, 'intro'];
}

/** Index in the file of the `i`th warning or measurement that holds for these choices: some are for other variants. */
function written(step: Step, key: string, i: number, choices: readonly Choice[]): number {
  const list = entryOf(step[READ_FROM], key)?.value;
  if (list?.kind !== 'sequence') return 0;
  const held = [...list.items.keys()].filter((n) => holds(list.items[n], choices));
  return held[i] ?? i;
}

function holds(item: Node | undefined, choices: readonly Choice[]): boolean {
  const only = item && entryOf(item, 'only')?.value;
  if (only === undefined) return true;
  return choices.every(({ axis, value }) => {
    const wanted = entryOf(only, axis)?.value;
    if (wanted === undefined) return true;
    const values = wanted.kind === 'sequence' ? wanted.items : [wanted];
    return values.some((v) => v.kind === 'scalar' && v.value === value);
  });
}

function nodeAt(root: Node, path: readonly (string | number)[]): Node | undefined {
  let here: Node | undefined = root;
  for (const step of path) {
    if (here === undefined) return undefined;
    if (typeof step === 'string') here = entryOf(here, step)?.value;
    // One thing may be written without a list.
    else if (here.kind === 'sequence') here = here.items[step];
  }
  return here;
}
