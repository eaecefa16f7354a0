/** An acceptance limit that does not say where it comes from. */

import { READ_FROM } from '../../resolve/index.ts';
import { entryOf, type Node } from '../../source/index.ts';
import type { Check, Fault } from '../check.ts';
import { eachStep } from '../rule.ts';

export const numberWithoutSource: Check = {
  code: 'REV006',
  name: 'number-without-source',
  severity: 'warning',
  title: 'An acceptance limit does not say where it comes from.',
  why: 'When a part measures just outside, nobody can say whether the limit is the maker’s or a guess, and the part goes back because the ferry sails at six.',
  sources: [
    'ISO 9001:2015, 7.5.3.2: documents from outside are identified and controlled (read second-hand)',
    'common practice: an auditor picks one number and asks for its origin',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `          limit: 0.05 to 0.30 mm
          with: feeler
          if out: Loosen and repeat this stage.
          record: as left
          source: { document: Pump manual, edition: "3", place: page 14 }
`,
        to: `          limit: «0.05 to 0.30 mm»
          with: feeler
          if out: Loosen and repeat this stage.
          record: as left
`,
      },
    ],
  },
  found: eachStep((step) => {
    const measures = measuresOf(step[READ_FROM]);
    return measures.length === 0 ? undefined : measures.flatMap((m): Fault[] => faultOf(m) ?? []);
  }),
};

const NONE: readonly Node[] = [];

function measuresOf(step: Node): readonly Node[] {
  const measure = entryOf(step, 'measure')?.value;
  if (measure === undefined) return NONE;
  return measure.kind === 'sequence' ? measure.items : [measure];
}

function faultOf(measure: Node): Fault[] | undefined {
  const limit = entryOf(measure, 'limit')?.value;
  if (limit?.kind !== 'scalar' || entryOf(measure, 'source') !== undefined) return undefined;
  const text = String(limit.value);
  // Nothing left of pressure or voltage is a state, not a number that somebody chose.
  if (!/[1-9]/.test(text)) return undefined;
  const what = entryOf(measure, 'what')?.value;
  const name = what?.kind === 'scalar' ? ` of \`${String(what.value)}\`` : '';
  return [
    {
      range: limit.range,
      message: `the limit \`${text}\`${name} does not say where it comes from`,
      hint: 'add `source: { document: …, edition: …, place: … }`: the maker’s manual, the drawing, or the shop’s own standard',
    },
  ];
}
