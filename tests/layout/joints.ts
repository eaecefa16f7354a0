/** Joints of any pattern for drawings: one of the demo's, with another pattern put in its place. */

import {
  acrossMm,
  balance,
  circularSequence,
  type Feature,
  loosening,
  looseningRounds,
  neighbourChordMm,
  type Pattern,
  patternHoles,
  placeOn,
  type SequenceOptions,
  tighteningSequence,
} from '../../src/geometry/index.ts';
import type { JointPlan } from '../../src/resolve/index.ts';
import { demo } from '../cards/demo.ts';

export function jointWith(pattern: Pattern, more: Partial<JointPlan> = {}, options: SequenceOptions = {}): JointPlan {
  const base = demo()
    .shop.machines.flatMap((m) => m.joints)
    .find((j) => j.plan.rounds.length > 2)?.plan;
  if (base === undefined) throw new Error('the demo has no joint with rounds');
  const holes = patternHoles(pattern);
  const sequence = tighteningSequence(pattern, options);
  return {
    ...base,
    pattern,
    holes,
    features: [],
    sequence,
    loosening: loosening(sequence),
    looseningRounds: looseningRounds(holes.length),
    count: holes.length,
    balance: balance(pattern, sequence.order, sequence.moves),
    circularBalance: balance(pattern, circularSequence(pattern).order),
    chordMm: neighbourChordMm(pattern),
    acrossMm: acrossMm(pattern),
    ...more,
  };
}

export function circle(count: number, diameterMm = 1200, firstDeg = 0): Pattern {
  return { kind: 'circle', diameterMm, count, firstDeg };
}

/** Two dowels, three jacking screws and a clocking mark about a bolt circle, clear of its line. */
export function featuresAbout(diameterMm: number): readonly Feature[] {
  const inside = diameterMm * 0.72;
  return [
    ...[20, 200].map((deg): Feature => ({ kind: 'dowel', ...placeOn(inside, deg), diameterMm: 10 })),
    ...[0, 1, 2].map(
      (i): Feature => ({
        kind: 'jacking screw',
        ...placeOn(inside, 70 + 120 * i),
        diameterMm: 10,
        label: `J${i + 1}`,
      }),
    ),
    { kind: 'clocking mark', ...placeOn(diameterMm * 1.1, 0), label: 'punched line on both flanges' },
  ];
}
