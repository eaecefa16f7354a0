/** Demo documents as they are published under control: with marks, a panel of changes, temporary changes, or a standing. */

import { collector } from '../../src/diagnostics/index.ts';
import { type CardLayout, layoutCard, type Node } from '../../src/layout/card/index.ts';
import { loadFaces } from '../../src/layout/type/index.ts';
import type { Document, ResolvedShop, Standing, Step, StepMark, TemporaryNote } from '../../src/resolve/index.ts';
import { CATALOGUE } from '../../src/rules/index.ts';
import { demo } from './demo.ts';

/** A document of the demo. */
export function documentOf(doc: string): Document {
  const found = demo().shop.documents.find((d) => d.doc === doc);
  if (found === undefined) throw new Error(`no document ${doc}`);
  return found;
}

/** The card of its first variant. */
export function lay(document: Document, own: ResolvedShop = demo().shop): CardLayout {
  const [variant] = document.variants;
  if (variant === undefined) throw new Error('no variant');
  return layoutCard(own, document, variant, loadFaces(), collector(CATALOGUE).report);
}

/** All texts in reading order. */
export function textsOf(nodes: readonly Node[]): string[] {
  return nodes.flatMap((n) => [
    ...n.items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])),
    ...textsOf(n.kids),
  ]);
}

/** A document whose steps are changed one by one. */
export function withSteps(document: Document, change: (step: Step) => Step): Document {
  return {
    ...document,
    variants: document.variants.map((v) => ({
      ...v,
      stages: v.stages.map((s) => ({ ...s, steps: s.steps.map(change) })),
    })),
  };
}

/** Marks by number of step. */
export function withMarks(document: Document, marks: Readonly<Record<number, readonly StepMark[]>>): Document {
  return withSteps(document, (step) => {
    const own = marks[step.number];
    return own === undefined ? step : { ...step, marks: own };
  });
}

export function withTemporary(document: Document, number: number, ...notes: readonly TemporaryNote[]): Document {
  return withSteps(document, (step) => (step.number === number ? { ...step, temporary: notes } : step));
}

export function standing(document: Document, how: Standing): Document {
  return { ...document, standing: how };
}

/** All that a step has on the card is marked. */
export const EVERY_MARK: readonly StepMark[] = [
  'text',
  'note',
  'warnings',
  'joint',
  'measures',
  'lists',
  'wait',
  'points',
  'records',
];

export function allMarked(document: Document): Document {
  return withSteps(document, (step) => ({ ...step, marks: EVERY_MARK }));
}

export const CHANGES = {
  since: 'C',
  lines: [
    'Torque of the end-cover joint: 85 → 95 N·m',
    'Step 14: limit of the gap 0 to 0.10 mm → 0 to 0.15 mm',
    'Step 9: tool exchanged, torque wrench 20 to 120 N·m → torque wrench 40 to 200 N·m',
    'New step 12: measure the gap between cover and shell at four places before the second round',
    'Step 5: warning added: water under pressure behind the cover',
  ],
  more: 3,
};

export function note(number: string, more: Partial<TemporaryNote> = {}): TemporaryNote {
  return {
    number,
    text: [
      {
        kind: 'paragraph',
        runs: [{ text: 'Use the blue sealing ring of lot 7 in place of the black one until stores have the black.' }],
      },
    ],
    reason: 'the maker delivers the black ring late',
    scope: 'at the bench Heat exchange only; serial numbers 1001 to 1040 only',
    until: '2026-12-20',
    approver: 'quality',
    ...more,
  };
}
