/** The two routes to a torque: short form with nut factor, long form with friction coefficients. */

import { formatDecimal } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint } from '../rule.ts';

export const routesDisagree: Check = {
  code: 'TRQ007',
  name: 'routes-disagree',
  severity: 'error',
  title: 'The short and the long form of the torque equation do not agree.',
  why: 'When two independent computations part, one of the inputs is wrong, and the printed number rests on it.',
  sources: ['Shigley, Mechanical Engineering Design, chapter 8: short form', 'VDI 2230 Part 1: long form'],
  example: {
    bad: [
      {
        file: 'consumables.yaml',
        from: 'oil: { name: machine oil, kind: lubricant, condition: oiled, medium',
        to: 'oil: { name: machine oil, kind: lubricant, condition: oiled,\n  nut_factor: { low: 0.09, nominal: 0.10, high: 0.11, source: { document: Oil data sheet, edition: 2025-04 } },\n  medium',
      },
      { file: 'machines/pump.yaml', from: '    thread: M16\n', to: '    thread: «M16»\n' },
      {
        file: 'machines/pump.yaml',
        from: '    preload: 70 %\n    torque: 160 N·m\n    source: { document: Pump manual, edition: "3", place: page 12 }\n    rounds: [30 %, 70 %, 100 %]\n',
        to: '    preload: 80 %\n    rounds: [35 %, 70 %, 100 %]\n',
      },
    ],
  },
  found: eachJoint((plan) => {
    const { routesAgree, shortForm, longForm } = plan.result;
    if (routesAgree) return undefined;
    return {
      range: plan.ranges['thread'] ?? plan.range,
      message: `the two torque equations give ${formatDecimal(shortForm.nominal, 1)} and ${formatDecimal(longForm.nominal, 1)} N·m for \`${plan.id}\``,
      hint: 'check thread, head and condition; the long form uses the bearing face of this head',
    };
  }),
};
