/** A stated torque outside the band that the condition of the joint allows. */

import { compareStated } from '../../torque/index.ts';
import { formatQuantity } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint } from '../rule.ts';
import { computedBand, inputsOf } from './computed-band.ts';

export const torqueOutsideBand: Check = {
  code: 'TRQ002',
  name: 'torque-outside-band',
  severity: 'warning',
  title: 'The stated torque lies outside the computed band and no reason is given.',
  why: 'The torque was perhaps written for another lubricant, class or size; the clamp is then not what the joint needs.',
  sources: [
    'nut factor of the condition, lowest to highest: textbook and trade ranges, named on the page of each joint',
  ],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    preload: 70 %\n    torque: 160 N·m\n',
        to: '    preload: 40 %\n    torque: «160 N·m»\n',
      },
    ],
  },
  found: eachJoint((plan) => {
    if (plan.origin !== 'stated' || plan.reason !== undefined) return undefined;
    const { verdict, likely } = compareStated(plan.target, plan.result);
    if (verdict !== 'outside the band') return undefined;
    return {
      range: plan.ranges['torque'] ?? plan.range,
      message: `\`${plan.id}\` states ${formatQuantity(plan.target)}, outside the computed ${computedBand(plan)}`,
      hint: `${likely === undefined ? '' : `perhaps ${likely}: `}check ${inputsOf(plan)} and the torque against the source; if the maker wants it so, say why in \`reason\``,
    };
  }),
};
