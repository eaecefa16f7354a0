/** Joints of any pattern for drawings: one of the demo's, with another pattern put in its place. */

import { balance, neighbourChordMm, type Pattern, patternHoles, tighteningSequence } from '../../src/geometry/index.ts';
import type { JointPlan } from '../../src/resolve/index.ts';
import { demo } from '../cards/demo.ts';

export function jointWith(pattern: Pattern, more: Partial<JointPlan> = {}): JointPlan {
  const base = demo()
    .shop.machines.flatMap((m) => m.joints)
    .find((j) => j.plan.rounds.length > 2)?.plan;
  if (base === undefined) throw new Error('the demo has no joint with rounds');
  const holes = patternHoles(pattern);
  const sequence = tighteningSequence(pattern);
  return {
    ...base,
    pattern,
    holes,
    sequence,
    count: holes.length,
    balance: balance(pattern, sequence.order),
    chordMm: neighbourChordMm(pattern),
    ...more,
  };
}

export function circle(count: number, diameterMm = 1200, firstDeg = 0): Pattern {
  return { kind: 'circle', diameterMm, count, firstDeg };
}
