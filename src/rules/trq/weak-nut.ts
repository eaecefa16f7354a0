/** The nut against its bolt. */

import { nutWeaker } from '../../fasteners/index.ts';
import { formatDecimal } from '../../units/index.ts';
import { jointRule } from '../rule.ts';

export const weakNut = jointRule(
  'TRQ012',
  'The threads of a weak nut strip while the wrench still turns, and nothing shows from outside.',
  (plan) => {
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
        ? `the nut ${nut.grade.id} of \`${plan.id}\` is weaker than its bolt, ${grade.id}`
        : `the nut ${nut.grade.id} of \`${plan.id}\` holds ${kn(nut.strength.proofLoadN)}, and the preload may reach ${kn(highestN)}`,
      hint: carries ? `${sentence}; where the weaker nut is meant, say why in \`nut: { reason: ... }\`` : sentence,
    };
  },
);
