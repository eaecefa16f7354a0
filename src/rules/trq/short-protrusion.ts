/** Thread that stands out of the nut. */

import { placeOf } from '../../resolve/index.ts';
import { formatDecimal, formatQuantity } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint } from '../rule.ts';

const LEAST_THREADS = 2;

export const shortProtrusion: Check = {
  code: 'TRQ022',
  name: 'short-protrusion',
  severity: 'warning',
  title: 'Less than two threads stand out of the nut.',
  why: 'The first threads of a bolt are not full; a nut that ends on them strips, and a locking nut does not lock.',
  sources: [
    'TB 43-0218, section IV 7b: at least two threads',
    '46 CFR 56.25-20(a)(2): bolts and studs extend completely through the nut',
  ],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    nut: { grade: "8" }\n    protrusion: «2 mm»\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    nut: { grade: "8" }\n    protrusion: 5 mm\n',
      },
    ],
  },
  found: eachJoint((plan) => {
    const { protrusion, thread } = plan;
    if (protrusion === undefined) return undefined;
    const leastMm = LEAST_THREADS * thread.pitchMm;
    const mm = protrusion.si * 1000;
    if (mm >= leastMm - 0.005) return undefined;
    return {
      range: placeOf(plan, 'protrusion'),
      message: `${formatQuantity(protrusion)} of ${thread.designation} stand out of the nut: ${formatDecimal(mm / thread.pitchMm, 1)} threads, and ${LEAST_THREADS} are the least, ${formatDecimal(leastMm, 1)} mm`,
      hint: 'use the next longer bolt, or take out a washer that the drawing does not show',
    };
  }),
};
