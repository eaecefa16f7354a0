/** An energy that is released, and never proved to be gone. */

import type { Check, Fault } from '../check.ts';
import { eachVariant } from '../rule.ts';
import { carries, energiesOf, isWeight, placeIn } from './energy.ts';

export const energyNotProved: Check = {
  code: 'SAF002',
  name: 'energy-not-proved',
  severity: 'error',
  title: 'A stored energy is released, and no step from there on proves that it is gone.',
  why: 'A valve that passes, a plugged drain or the wrong isolator looks like a dead machine; only a gauge read or a start button tried shows it before hands are in.',
  sources: [
    '29 CFR 1910.147(d)(6): isolation is verified before work begins',
    'a weight that hangs in its gear is seen to hang: common practice',
  ],
  example: {
    bad: [
      {
        file: 'stages/isolate.yaml',
        from: `  - do: Try to start the machine.
    release: [electric motor]
    prove: [electric motor]
`,
        to: `  - do: Try to start the machine.
    release: [«electric motor»]
`,
      },
    ],
  },
  found: eachVariant(function* (scene): Iterable<Fault> {
    for (const { name, released, proved } of energiesOf(scene)) {
      const last = released.at(-1);
      if (last === undefined || proved.some((s) => s.number >= last.number)) continue;
      if (isWeight(name) && carries(last, scene)) continue;
      const early = proved.at(-1);
      yield {
        range: placeIn(last, 'release', name),
        message:
          early === undefined
            ? `\`${name}\` is released here, and no step proves that it is gone`
            : `\`${name}\` is released here, after the last step that proves it gone`,
        ...(early === undefined ? {} : { related: [{ range: placeIn(early, 'prove', name), message: 'proved here' }] }),
        ...(last.label === undefined ? {} : { label: last.label }),
        hint: `give the step that reads a gauge, tries the start button or looks at it \`prove: [${name}]\`; it may be this one`,
      };
    }
  }),
};
