/** Which friction and which nut factor a joint is reckoned with. */

import type { Bearing, Thread } from '../fasteners/index.ts';
import { type Band, positiveBand } from './band.ts';
import { effectiveNutFactor, type JointFriction, longFormTorque } from './formulas.ts';
import type { FrictionPair, TorqueInput } from './input.ts';

/** Friction of a joint: stated by the lubricant's maker, else that of the condition, alike in thread and under the head. */
export function frictionOf(input: TorqueInput): { used: FrictionPair; from: 'condition' | 'stated' } {
  const { friction, condition } = input;
  const used = friction ?? { thread: condition.friction, bearing: condition.friction };
  positiveBand('thread friction', used.thread);
  positiveBand('bearing friction', used.bearing);
  return { used, from: friction === undefined ? 'condition' : 'stated' };
}

/**
 * Nut factor of a joint: stated; else worked out by the long form from stated friction (then the two routes agree by
 * making and are no check on each other); else that of the condition.
 */
export function nutFactorOf(input: TorqueInput): { used: Band; from: 'condition' | 'stated' | 'long form' } {
  const { nutFactor, friction, condition, thread, bearing } = input;
  if (nutFactor !== undefined) return { used: positiveBand('nut factor', nutFactor), from: 'stated' };
  if (friction === undefined) return { used: positiveBand('nut factor', condition.nutFactor), from: 'condition' };
  const { low, nominal, high } = jointBand(thread, bearing, friction);
  const K = (joint: JointFriction) => effectiveNutFactor(thread.diameterMm, 1, longFormTorque(joint, 1));
  return { used: { low: K(low), nominal: K(nominal), high: K(high) }, from: 'long form' };
}

/** The joint with friction at its low end, nominal and at its high end, in thread and under the head together. */
export function jointBand(
  thread: Thread,
  bearing: Bearing,
  friction: FrictionPair,
): { readonly [end in keyof Band]: JointFriction } {
  const at = (end: keyof Band): JointFriction => ({
    thread,
    bearing,
    frictionThread: friction.thread[end],
    frictionBearing: friction.bearing[end],
  });
  return { low: at('low'), nominal: at('nominal'), high: at('high') };
}
