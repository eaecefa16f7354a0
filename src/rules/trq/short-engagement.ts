/** Thread engagement in a tapped hole. */

import { placeOf } from '../../resolve/index.ts';
import { formatDecimal, formatQuantity } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint } from '../rule.ts';
import { type TappedInto, tappedInto } from './tapped.ts';

/** In diameters of the thread. */
const LEAST: Readonly<Record<TappedInto, number>> = {
  steel: 1.25,
  'cast iron': 1.25,
  bronze: 1.25,
  aluminium: 2,
  'aluminium with an insert': 1.5,
};

export const shortEngagement: Check = {
  code: 'TRQ021',
  name: 'short-engagement',
  severity: 'warning',
  title: 'The thread engagement in a tapped hole is shorter than its material asks for.',
  why: 'The thread of the casting strips before the bolt is tight, and the casting is the part that nobody has in stores.',
  sources: [
    'TM 5-3895-367-14&P, H-2: 2 diameters in aluminium',
    'general torque notes of an engine service manual: 1.25 diameters in steel or cast iron',
    'TB 43-0218, section IV 7a: 1.5 diameters in softer metal',
    'common practice: inserts of 1.5 diameters in aluminium; bronze like cast iron',
  ],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    into: cast iron\n    engagement: «16 mm»\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    into: cast iron\n    engagement: 22 mm\n',
      },
    ],
  },
  found: eachJoint((plan) => {
    const { engagement, thread } = plan;
    const into = tappedInto(plan);
    if (engagement === undefined || into === undefined) return undefined;
    const leastMm = LEAST[into] * thread.diameterMm;
    // Half a hundredth of a millimetre is the rounding of an inch size.
    if (engagement.si * 1000 >= leastMm - 0.005) return undefined;
    const inDiameters = formatDecimal((engagement.si * 1000) / thread.diameterMm, 2);
    return {
      range: placeOf(plan, 'engagement'),
      message: `${formatQuantity(engagement)} of ${thread.designation} in ${into} is ${inDiameters} diameters, and ${LEAST[into]} are usual: ${formatDecimal(leastMm, 1)} mm`,
      related: [{ range: placeOf(plan, 'into'), message: 'what the hole is tapped into' }],
      hint: 'measure the hole and the bolt that stands in it; a longer bolt or an insert mends it, and what the maker’s drawing shows can be accepted with its number',
    };
  }),
};
