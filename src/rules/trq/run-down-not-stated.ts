/** A locking nut or screw whose run-down torque is not known. */

import { keyPlaceOf, placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { eachJoint, lookUp } from '../rule.ts';

export const runDownNotStated: Check = {
  code: 'TRQ026',
  name: 'run-down-not-stated',
  severity: 'warning',
  title: 'A joint has a locking nut or screw, and its run-down torque is not stated.',
  why: 'What the lock takes to turn is read by the wrench as clamp: the wrench clicks, and the joint is that much looser.',
  sources: [
    'FAA AC 43.13-1B, 7-40: friction drag is added to the torque',
    'TB 43-0218, section IV 7c: run-down torque of locking nuts',
  ],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '  screw: { name: cover screw, kind: screw, number: MW-102 }\n',
        to: '  screw: { name: cover screw, kind: screw, number: MW-102, locking: true }\n',
      },
      { file: 'machines/pump.yaml', from: '    fastener: screw\n', to: '    fastener: «screw»\n' },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '  screw: { name: cover screw, kind: screw, number: MW-102 }\n',
        to: '  screw: { name: cover screw, kind: screw, number: MW-102, locking: true }\n',
      },
      { file: 'machines/pump.yaml', from: '    fastener: screw\n', to: '    fastener: screw\n    run_down: 12 N·m\n' },
    ],
  },
  found: eachJoint((plan, shop) => {
    if (plan.runDown !== undefined) return undefined;
    const parts = lookUp(shop).machine(plan.machine)?.parts ?? [];
    const locking = parts.find((p) => p.locking === true && (p.id === plan.fastener || plan.also.includes(p.id)));
    if (locking === undefined) return undefined;
    return {
      range: locking.id === plan.fastener ? placeOf(plan, 'fastener') : keyPlaceOf(plan, 'also', locking.id),
      message: `\`${locking.id}\` of \`${plan.id}\` locks, and the torque that it takes to run it down is not stated`,
      related: [{ range: keyPlaceOf(locking, 'locking'), message: 'said here' }],
      hint: 'run a new one down with the wrench, read the torque while nothing is clamped yet, and write that value as `run_down: … N·m`; it is added to what the wrench is set to',
    };
  }),
};
