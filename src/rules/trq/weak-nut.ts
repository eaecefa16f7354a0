/** The nut against its bolt. */

import { nutWeaker } from '../../fasteners/index.ts';
import { formatDecimal } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint } from '../rule.ts';

export const weakNut: Check = {
  code: 'TRQ012',
  name: 'weak-nut',
  severity: 'error',
  title: 'The nut is weaker than its bolt.',
  why: 'The threads of a weak nut strip while the wrench still turns, and nothing shows from outside.',
  sources: ['ISO 898-2:2012, Table 1: nuts for bolts of each class', 'ASTM A194 and A563: proof loads'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    nut: «{ grade: "6" }»\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    nut: { grade: "8" }\n',
      },
    ],
  },
  found: eachJoint((plan) => {
    const { nut, grade, strength, thread } = plan;
    if (nut === undefined) return undefined;
    const { weaker, sentence } = nutWeaker({ nut: nut.grade, nutStrength: nut.strength, grade, strength, thread });
    const highestN = plan.result.preloadN.high;
    const carries = nut.strength.proofLoadN >= highestN;
    // A weaker nut may be meant, but never one that the preload itself can strip.
    if (carries && (!weaker || nut.reason !== undefined)) return undefined;
    const kn = (n: number) => `${formatDecimal(n / 1000, 1)} kN`;
    return {
      range: plan.ranges['nut'] ?? plan.range,
      message: carries
        ? `the nut of \`${plan.id}\`, ${nut.grade.id}, is weaker than its bolt, ${grade.id}`
        : `the nut of \`${plan.id}\`, ${nut.grade.id}, holds ${kn(nut.strength.proofLoadN)}, and the preload may reach ${kn(highestN)}`,
      hint: carries
        ? `${sentence}; look at the mark on the nut; where the weaker nut is meant, say why in \`nut: { reason: … }\``
        : sentence,
    };
  }),
};
