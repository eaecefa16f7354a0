/** A bolt that was tightened past yield goes back. */

import type { Check } from '../check.ts';
import { eachVariant } from '../rule.ts';
import { labelled, listedPart, placeOfMove } from './life-check.ts';
import { placeOfFate, reuseHint, usedAgain } from './serves-once.ts';

export const pastYieldReused: Check = {
  code: 'PRT012',
  name: 'past-yield-reused',
  severity: 'error',
  title: 'A fastener that is tightened past yield goes back, and no reason with its source is given.',
  why: 'The bolt has been stretched for good; tightened again it necks, and breaks in service without a warning.',
  sources: [
    'common practice: a bolt tightened past yield by angle is renewed each time it is loosened',
    'TB 43-0218, section III: bolts with necked, deformed or pitted thread are thrown away',
  ],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: `  screw: { name: cover screw, kind: screw, number: MW-102 }
`,
        to: `  screw: { name: cover screw, kind: screw, number: MW-102, past_yield: true }
`,
      },
      {
        file: 'procedures/mw-1.yaml',
        from: 'remove: { cover: reuse, gasket: discard, screw: inspect }',
        to: 'remove: { cover: reuse, gasket: discard, screw: «inspect» }',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: `  screw: { name: cover screw, kind: screw, number: MW-102 }
`,
        to: `  screw: { name: cover screw, kind: screw, number: MW-102, past_yield: true }
`,
      },
      {
        file: 'procedures/mw-1.yaml',
        from: 'remove: { cover: reuse, gasket: discard, screw: inspect }',
        to: 'remove: { cover: reuse, gasket: discard, screw: discard }',
      },
    ],
  },
  found: eachVariant(function* (scene) {
    for (const { life, off, on } of usedAgain(scene)) {
      if (life.part.pastYield !== true) continue;
      yield labelled(off.step, {
        range: placeOfFate(off),
        message: `\`${life.id}\` comes off as \`${off.fate}\` and goes back, but it is tightened past yield and serves once`,
        related: [{ range: placeOfMove(on), message: 'it goes back here' }, listedPart(life.part)],
        hint: reuseHint(life.id),
      });
    }
  }),
};
