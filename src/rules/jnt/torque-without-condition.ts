/** A measured torque does not say for which state of the thread its limit holds. */

import { type Measure, placeOf, READ_FROM, type Step } from '../../resolve/index.ts';
import { entryOf, type Node } from '../../source/index.ts';
import { CONDITIONS, findCondition } from '../../torque/index.ts';
import type { Check, Fault } from '../check.ts';
import { eachStep } from '../rule.ts';

export const torqueWithoutCondition: Check = {
  code: 'JNT013',
  name: 'torque-without-condition',
  severity: 'warning',
  title: 'A measured torque does not say for which condition of the thread its limit holds.',
  why: 'One mechanic oils the plug and another does not; both read the same torque, and one of the two seats is crushed.',
  sources: [
    'common practice: a torque without its lubrication is incomplete',
    'T = K d F, with the nut factors of the conditions',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Fit the <part:plug>.
        only: { size: large }
        fit: [plug]
`,
        to: `      - do: Fit the <part:plug>.
        only: { size: large }
        fit: [plug]
        measure:
          what: torque on the plug
          limit: «44 to 48 N·m»
          with: wrench-40-200
          if out: Take the plug out and begin again.
          source: { document: Pump manual, edition: "3", place: page 15 }
`,
      },
    ],
    good: [
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Fit the <part:plug>.
        only: { size: large }
        fit: [plug]
`,
        to: `      - do: Fit the <part:plug>.
        only: { size: large }
        fit: [plug]
        measure:
          what: torque on the plug
          limit: 44 to 48 N·m
          condition: dry
          with: wrench-40-200
          if out: Take the plug out and begin again.
          source: { document: Pump manual, edition: "3", place: page 15 }
`,
      },
    ],
  },
  found: eachStep(
    (step) =>
      step.measures.flatMap((m) => {
        if ((m.limit.max ?? m.limit.min)?.dimension !== 'torque' || isDrag(m)) return [];
        if (m.condition !== undefined && findCondition(m.condition) !== undefined) return [];
        const ids = CONDITIONS.map((c) => c.id).join(', ');
        return [
          {
            range: placeOfMeasure(step, m, m.condition === undefined ? 'limit' : 'condition'),
            message:
              m.condition === undefined
                ? `the limit of \`${m.what}\` does not say for which condition of the thread it holds`
                : `\`${m.condition}\` is not a condition of a thread`,
            hint: `write the \`condition:\` for which the source gives the torque, one of ${ids}`,
          },
        ];
      }),
    ({ measures }) => measures.length > 0,
  ),
};

/** Torque that something turns with, in which a thread has no part or is what is measured. */
const DRAG =
  /\b(?:drag|turning|rotat\w+|rolling|starting|break-?away|run-?down|prevailing|running|friction|preload|hand ?wheel|lever|brake|clutch|slip\w*)\b/i;

function isDrag(m: Measure): boolean {
  return DRAG.test(m.what);
}

/** Measures of other variants are left out of the step, so that the place is found by the words. */
function placeOfMeasure(step: Step, m: Measure, field: string): Fault['range'] {
  const node = entryOf(step[READ_FROM], 'measure')?.value;
  if (node?.kind !== 'sequence') return placeOf(step, 'measure', field);
  const digits = (text: string) => text.replace(/[^\d.]+/g, ' ').trim();
  const same = node.items.findIndex(
    (item) =>
      isText(item, 'what', (t) => t === m.what) && isText(item, 'limit', (t) => digits(t) === digits(m.limitText)),
  );
  const index =
    same >= 0 ? same : node.items.findIndex((item) => isText(item, 'limit', (t) => digits(t) === digits(m.limitText)));
  return index < 0 ? placeOf(step, 'measure') : placeOf(step, 'measure', index, field);
}

function isText(item: Node, key: string, test: (text: string) => boolean): boolean {
  const value = entryOf(item, key)?.value;
  return value?.kind === 'scalar' && test(String(value.value));
}
