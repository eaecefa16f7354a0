/** What the rounds leave in each bolt when bolts take preload from each other. */

import { at, balanced, dot, type Matrix, type Swept, sweep, unswept } from './interaction-solve.ts';

/** One round: every hole once in tightening order, or only some. */
export interface TighteningRound {
  /** What the wrench stops at, as a share of the target preload, above 0. */
  readonly share: number;
  /** Hole numbers from 1 in order; a list in the list is holes tightened at the same moment. */
  readonly order: readonly (number | readonly number[])[];
}

export interface InteractionOptions {
  /** Share of every preload that the gasket gives away by creep between two rounds, 0 to below 1; 0 when absent. */
  readonly creepShare?: number;
}

/** Preloads at the end of a round, as shares of the target. */
export interface RoundPrediction {
  /** By hole, hole 1 first. 0 is loose. */
  readonly preload: readonly number[];
  readonly least: number;
  readonly mean: number;
  readonly most: number;
  /** ± share: (most - least)/(most + least), as `scatterFromAlpha` reckons it. */
  readonly scatter: number;
  /** Nuts that turned noticeably in this round. */
  readonly turned: number;
}

/** A turn counts when it is more than this share of the turn that would bring a single bolt to its target; an illustration. */
const NOTICED = 0.01;

/**
 * Preload in each bolt after each round. compliance: `jointCompliance`, mm/N; its scale does not matter here. All nuts
 * start run down by hand to touch, without preload.
 *
 * Tightening turns a nut until its bolt reads the share of the round. A bolt that already reads it or more makes the wrench
 * click at once and its nut stands still. All other nuts stand still meanwhile, and their bolts lose or gain what the joint
 * gives. A bolt whose joint comes together by more than its stretch goes loose: zero, never below; its nut must first
 * follow the gap when its turn comes. Bolts tightened at the same moment all reach the share together. Which bolts are
 * loose is found with the forces, since a loose bolt no longer holds the joint up: that is why the compliance is asked for
 * and not `interactionMatrix`, which holds only while all are tight.
 *
 * creepShare scales every preload, and every gap, between rounds: the gasket sinks everywhere by the same share.
 * Source: the superposition of elastic bolts; the state is the minimum of the energy. Throws RangeError on no rounds, a
 * share or creep out of range, a hole that the joint has not, or a hole twice in one moment.
 */
export function predictRounds(
  compliance: Matrix,
  rounds: readonly TighteningRound[],
  options: InteractionOptions = {},
): readonly RoundPrediction[] {
  const count = compliance.length;
  const kept = 1 - (options.creepShare ?? 0);
  if (!(kept > 0 && kept <= 1)) throw new RangeError(`the creep of the gasket is ${options.creepShare}`);
  if (rounds.length === 0) throw new RangeError('no round is planned');
  let joint: Joint = { advance: new Array<number>(count).fill(0), force: new Array<number>(count).fill(0) };
  return rounds.map(({ share, order }, i) => {
    if (!(share > 0 && Number.isFinite(share))) throw new RangeError(`the share of a round is ${share}`);
    // Swept afresh each round, so that rounding does not build up over many exchanges.
    const swept = unswept(compliance);
    if (i > 0) joint = { advance: scaled(joint.advance, kept), force: scaled(joint.force, kept) };
    const turned = new Set<number>();
    for (const move of order) {
      const holes = typeof move === 'number' ? [move] : move;
      checkHoles(holes, count);
      joint = tightened(compliance, swept, joint, holes, share, turned);
    }
    return summary(joint.force, turned.size);
  });
}

interface Joint {
  /** How far each nut has been turned down since it touched, mm at one newton a unit of share. */
  readonly advance: readonly number[];
  /** Preload by bolt, as a share of the target. */
  readonly force: readonly number[];
}

function tightened(
  compliance: Matrix,
  swept: Swept,
  joint: Joint,
  holes: readonly number[],
  share: number,
  turned: Set<number>,
): Joint {
  const moving = new Set(holes.map((hole) => hole - 1));
  if ([...moving].every((i) => at(joint.force, i) >= share)) return joint;
  const floor = joint.force.map((_, i) => (moving.has(i) ? share : 0));
  for (const [i, force] of joint.force.entries()) {
    if ((force > 0 && !moving.has(i)) !== swept.in[i]) sweep(swept, i);
  }
  const { force, gap } = balanced(compliance, swept, joint.advance, floor);
  const advance = joint.advance.map((before, i) => {
    if (!moving.has(i)) return before;
    if (at(gap, i) > NOTICED * at(compliance[i], i)) turned.add(i);
    return Math.max(before, dot(compliance[i] ?? [], force));
  });
  return { advance, force };
}

function scaled(list: readonly number[], factor: number): readonly number[] {
  return list.map((value) => value * factor);
}

function checkHoles(holes: readonly number[], count: number): void {
  if (new Set(holes).size !== holes.length || holes.length === 0)
    throw new RangeError(`holes tightened at one moment: ${holes.join(', ')}`);
  for (const hole of holes) {
    if (!Number.isInteger(hole) || hole < 1 || hole > count) throw new RangeError(`the joint has no hole ${hole}`);
  }
}

function summary(preload: readonly number[], turned: number): RoundPrediction {
  const least = Math.min(...preload);
  const most = Math.max(...preload);
  const mean = preload.reduce((sum, value) => sum + value, 0) / preload.length;
  return { preload, least, mean, most, scatter: most > 0 ? (most - least) / (most + least) : 0, turned };
}
