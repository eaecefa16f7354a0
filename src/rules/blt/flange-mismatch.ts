/** Circle, count and thread of a joint against the standard flange that it names. */

import { type Flange, sameBoltCircle } from '../../fasteners/index.ts';
import type { JointPlan } from '../../resolve/index.ts';
import { formatDecimal } from '../../units/index.ts';
import { jointRule } from '../rule.ts';

export const flangeMismatch = jointRule(
  'BLT006',
  'A slip in count or circle draws a flange that is not on the pipe, and the order leads to bolts that are not there.',
  (plan) => {
    const { flange } = plan;
    if (flange === undefined) return undefined;
    const wrong = mismatch(plan, flange);
    if (wrong === undefined) return undefined;
    return {
      range: plan.ranges[wrong.key] ?? plan.range,
      message: `\`${plan.id}\` has ${wrong.own}, and ${flange.designation} has ${wrong.standard}`,
      related: [{ range: plan.ranges['flange'] ?? plan.range, message: 'the flange named' }],
      hint: 'compare with the flange itself; for a flange that is not to the standard, leave `flange` out',
    };
  },
);

function mismatch(
  { pattern, count, thread }: JointPlan,
  flange: Flange,
): { readonly key: string; readonly own: string; readonly standard: string } | undefined {
  if (pattern.kind !== 'circle') {
    return { key: 'pattern', own: `a pattern that is no circle`, standard: `${flange.count} bolts on a circle` };
  }
  const counts = [flange.count, ...(flange.alternatives ?? []).map((a) => a.count)];
  if (!counts.includes(count)) {
    return { key: 'pattern', own: `${count} bolts`, standard: counts.join(' or ') };
  }
  if (!sameBoltCircle(flange, pattern.diameterMm)) {
    const mm = (value: number) => `a bolt circle of ${formatDecimal(value, 1).replace(/\.0$/, '')} mm`;
    return { key: 'pattern', own: mm(pattern.diameterMm), standard: mm(flange.boltCircleMm) };
  }
  if (thread.designation !== flange.thread) {
    return { key: 'thread', own: thread.designation, standard: flange.thread };
  }
  return undefined;
}
