/** The lowest preload of a joint against the clamp force that it must keep. */

import { placeOf } from '../../resolve/index.ts';
import { formatDecimal, formatQuantity, quantity, valueIn } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint, isSuspect } from '../rule.ts';
import { aimPlace, aimWords, bears, exceeds, torqueFor } from './aim.ts';

export const belowClamp: Check = {
  code: 'TRQ020',
  name: 'below-clamp',
  severity: 'error',
  title: 'The lowest preload is less than the clamp force that the joint must keep.',
  why: 'On a dry day, with a wrench that clicks early, the joint has less clamp than its load: it slips, leaks or opens.',
  sources: ['VDI 2230 Part 1: the least assembly preload covers the clamp load that is required'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    clamp:\n      force: «54 kN»\n      source: { document: Pump manual, edition: "3", place: page 11 }\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    clamp:\n      force: 46 kN\n      source: { document: Pump manual, edition: "3", place: page 11 }\n',
      },
    ],
  },
  found: eachJoint((plan, shop) => {
    const { clamp, result } = plan;
    if (clamp === undefined || !exceeds(clamp.force.si, result.preloadN.low) || isSuspect(plan)) return undefined;
    const { unit } = clamp.force;
    const lowest = valueIn(quantity('force', result.preloadN.low, 'N'), unit);
    const needed = torqueFor(plan, clamp.force.si, 'least');
    return {
      range: placeOf(plan, 'clamp', 'force'),
      message: `each bolt of \`${plan.id}\` must keep ${formatQuantity(clamp.force)}, and high friction leaves ${formatDecimal(lowest, unit === 'kN' ? 1 : 0)} ${unit}`,
      related: [{ range: aimPlace(plan), message: 'how tight it is' }],
      hint: bears(plan, needed)
        ? `${aimWords(shop, plan, needed, 'least')}, or use a lubricant with less scatter`
        : 'a torque that keeps it at high friction may break the bolt at low friction: use a lubricant with less scatter, a stronger class or a larger thread',
    };
  }),
};
