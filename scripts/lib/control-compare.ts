/** A comparison in words: grouped by what the changes concern, old and new below each other. */

import type { Change, Comparison } from '../../src/control/index.ts';
import { counted } from './control-words.ts';

/** In the order in which a comparison lists them: what tells most comes first. */
const GROUPS: readonly (readonly [Change['of'], string])[] = [
  ['torque', 'Torques'],
  ['limit', 'Limits'],
  ['pattern', 'Bolt patterns and orders'],
  ['joint', 'Joints'],
  ['warning', 'Warnings'],
  ['energy', 'Stored energy'],
  ['step', 'Steps'],
  ['tool', 'Tools'],
  ['consumable', 'Consumables'],
  ['part', 'Parts'],
  ['time', 'Times'],
  ['variant', 'Variants'],
  ['document', 'The document itself'],
];

/** What the two sides are called: `Rev B`, `the draft (Rev C)`. */
export interface Sides {
  readonly from: string;
  readonly to: string;
}

export function comparisonLines({ doc, changes }: Comparison, { from, to }: Sides): readonly string[] {
  const head = `${doc}: ${from} and ${to}`;
  if (changes.length === 0) return [`${head} do not differ in meaning`];
  return [
    `${head} differ in ${counted(changes.length, 'thing')}`,
    ...GROUPS.flatMap(([of, heading]) => {
      const own = changes.filter((c) => c.of === of);
      return own.length === 0 ? [] : ['', heading, ...own.flatMap((c) => changeLines(c))];
    }),
  ];
}

function changeLines({ words, before, after, stepBefore, stepAfter, variants }: Change): readonly string[] {
  const scope = variants.length === 0 ? '' : ` (${variants.join(', ')} only)`;
  return [
    `  ${words}${scope}`,
    ...(before === undefined ? [] : [`    old${stepWords(stepBefore)}  ${before}`]),
    ...(after === undefined ? [] : [`    new${stepWords(stepAfter)}  ${after}`]),
  ];
}

function stepWords(step: number | undefined): string {
  return step === undefined ? '' : `, step ${step}`;
}
