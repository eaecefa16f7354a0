/** An energy of the procedure that no step releases. */

import { isWritten } from '../../resolve/index.ts';
import type { Check, Fault } from '../check.ts';
import { eachVariant } from '../rule.ts';
import { energiesOf } from './energy.ts';

export const energyNotReleased: Check = {
  code: 'SAF001',
  name: 'energy-not-released',
  severity: 'error',
  title: 'A stored energy of the procedure is released by no step.',
  why: 'The head of the card warns of it and no step takes it away: pressure, a spring or a hanging weight lets go when the first bolt is slack.',
  sources: [
    '29 CFR 1910.147(d)(5)(i): stored energy is relieved, disconnected, restrained and otherwise made safe',
    '29 CFR 1910.147(c)(4)(ii): the procedure holds the steps to shut down, isolate, block and secure',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: 'energy: [water pressure, electric motor]',
        to: 'energy: [water pressure, electric motor, «seal spring»]',
      },
    ],
  },
  found: eachVariant(function* (scene): Iterable<Fault> {
    for (const { name, place, released } of energiesOf(scene)) {
      if (released.length > 0) continue;
      const ofMachine = isWritten(scene.document, 'energy') ? '' : ` of \`${scene.document.machine}\``;
      yield {
        range: place,
        message: `\`${name}\`${ofMachine} is released by no step`,
        hint: `give the step that lets it out, blocks it or restrains it \`release: [${name}]\`, or add such a step or shared stage before the work begins`,
      };
    }
  }),
};
