/** A stated torque more than twice or less than half the computed one. */

import { compareStated } from '../../torque/index.ts';
import { formatQuantity } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint } from '../rule.ts';
import { computedBand, inputsOf } from './computed-band.ts';

export const torqueFarOff: Check = {
  code: 'TRQ003',
  name: 'torque-far-off',
  severity: 'error',
  title: 'The stated torque is more than twice or less than half the computed one and no reason is given.',
  why: 'At twice the torque the bolt yields; at half of it the joint opens in service.',
  sources: ['common practice: twice or half is no matter of friction'],
  example: { bad: [{ file: 'machines/pump.yaml', from: '    torque: 160 N·m\n', to: '    torque: «75 N·m»\n' }] },
  found: eachJoint((plan) => {
    if (plan.origin !== 'stated' || plan.reason !== undefined) return undefined;
    const { verdict, likely } = compareStated(plan.target, plan.result);
    if (verdict !== 'far off') return undefined;
    return {
      range: plan.ranges['torque'] ?? plan.range,
      message: `\`${plan.id}\` states ${formatQuantity(plan.target)}, far from the computed ${computedBand(plan)}`,
      hint: `${likely === undefined ? '' : `perhaps ${likely}: `}check ${inputsOf(plan)} and the torque against the source; if the maker wants it so, say why in \`reason\``,
    };
  }),
};
