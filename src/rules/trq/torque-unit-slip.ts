/** A stated torque whose ratio to the computed one is that of two units, or of a slipped digit. */

import { compareStated } from '../../torque/index.ts';
import { formatQuantity } from '../../units/index.ts';
import { isSlip, jointRule } from '../rule.ts';
import { computedBand } from './computed-band.ts';

export const torqueUnitSlip = jointRule(
  'TRQ001',
  'A torque copied in the wrong unit breaks the bolt, or leaves it loose, at the first joint tightened by the card.',
  (plan) => {
    if (!isSlip(plan)) return undefined;
    const { likely } = compareStated(plan.target, plan.result);
    return {
      range: plan.ranges['torque'] ?? plan.range,
      message: `\`${plan.id}\` states ${formatQuantity(plan.target)}, and ${computedBand(plan)} is computed`,
      hint: `${likely === undefined ? '' : `it looks like ${likely}: `}compare with the source, digit by digit; if the maker wants it so, say why in \`reason\``,
    };
  },
);
