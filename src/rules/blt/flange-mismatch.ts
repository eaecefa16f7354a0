/** Circle, count and thread of a joint against the standard flange that it names. */

import { type Flange, sameBoltCircle } from '../../fasteners/index.ts';
import type { JointPlan } from '../../resolve/index.ts';
import { formatDecimal } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint } from '../rule.ts';

export const flangeMismatch: Check = {
  code: 'BLT006',
  name: 'flange-mismatch',
  severity: 'error',
  title: 'Circle, count or thread differ from the standard flange named.',
  why: 'A slip in count or circle draws a flange that is not on the pipe, and the order leads to bolts that are not there.',
  sources: ['EN 1092-1:2018, connection dimensions by PN and DN', 'ASME B16.5-2009, drilling by class and NPS'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    pattern: { circle: 240 mm, count: 8, first: 22.5 deg }\n',
        to: '    pattern: «{ circle: 190 mm, count: 8, first: 22.5 deg }»\n',
      },
      {
        file: 'machines/pump.yaml',
        from: '    when:\n      - only: { size: large }\n        pattern: { circle: 320 mm, count: 12, first: 15 deg }\n',
        to: '    flange: EN 1092-1 DN 100 PN 16\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '    pattern: { circle: 240 mm, count: 8, first: 22.5 deg }\n',
        to: '    pattern: { circle: 180 mm, count: 8, first: 22.5 deg }\n',
      },
      {
        file: 'machines/pump.yaml',
        from: '    when:\n      - only: { size: large }\n        pattern: { circle: 320 mm, count: 12, first: 15 deg }\n',
        to: '    flange: EN 1092-1 DN 100 PN 16\n',
      },
    ],
  },
  found: eachJoint((plan) => {
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
  }),
};

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
