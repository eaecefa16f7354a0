/** A stated torque whose ratio to the computed one is that of two units, or of a slipped digit. */

import { compareStated } from '../../torque/index.ts';
import { formatQuantity } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint, isSlip } from '../rule.ts';
import { computedBand } from './computed-band.ts';

export const torqueUnitSlip: Check = {
  code: 'TRQ001',
  name: 'torque-unit-slip',
  severity: 'error',
  title: 'The stated torque differs from the computed one by a factor that betrays a unit or digit slip.',
  why: 'A torque copied in the wrong unit breaks the bolt, or leaves it loose, at the first joint tightened by the card.',
  sources: [
    'NIST SP 811, Appendix B: factors between units of torque',
    'common practice: undoing the slip brings it within 15 % of the computed torque',
  ],
  example: { bad: [{ file: 'machines/pump.yaml', from: '    torque: 160 N·m\n', to: '    torque: «118 N·m»\n' }] },
  found: eachJoint((plan) => {
    if (!isSlip(plan)) return undefined;
    const { likely } = compareStated(plan.target, plan.result);
    return {
      range: plan.ranges['torque'] ?? plan.range,
      message: `\`${plan.id}\` states ${formatQuantity(plan.target)}, and ${computedBand(plan)} is computed`,
      hint: `${likely === undefined ? '' : `it looks like ${likely}: `}compare with the source, digit by digit; if the maker wants it so, say why in \`reason\``,
    };
  }),
};
