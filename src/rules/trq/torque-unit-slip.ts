/** A stated torque whose ratio to the computed one is that of two units, or of a slipped digit. */

import { compareStated } from '../../torque/index.ts';
import { formatQuantity } from '../../units/index.ts';
import { eachJoint, type Rule } from '../rule.ts';
import { computedBand } from './computed-band.ts';

export const torqueUnitSlip: Rule = {
  code: 'TRQ001',
  why: 'A torque copied in the wrong unit breaks the bolt, or leaves it loose, at the first joint that is tightened by the card.',
  check: (shop, report) =>
    eachJoint(shop, (plan, variant) => {
      if (plan.origin !== 'stated') return;
      const { verdict, likely } = compareStated(plan.target.si, plan.result);
      if (verdict !== 'unit slip' && verdict !== 'digit slip') return;
      report(
        'TRQ001',
        plan.ranges['torque'] ?? plan.range,
        `\`${plan.id}\` states ${formatQuantity(plan.target)}, and ${computedBand(plan)} is computed${variant}`,
        {
          label: likely,
          hint: `${likely === undefined ? '' : `it looks like ${likely}; `}compare with the source, digit by digit`,
        },
      );
    }),
};
