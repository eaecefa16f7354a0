/** The pressure under head or nut against what the clamped material bears. */

import { type JointPlan, placeOf } from '../../resolve/index.ts';
import { formatDecimal, formatQuantity } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint, isSuspect, lookUp } from '../rule.ts';
import { aimPlace, aimWords, exceeds, torqueFor } from './aim.ts';

/** VDI 2230 Part 1: a washer spreads the face by 1.6 of its thickness (memory). */
const SPREAD = 1.6;
/** Thinnest plain washer of ISO 7089, in diameters of its bolt: M20, 3 mm. */
const THINNEST = 0.15;

export const headPressure: Check = {
  code: 'TRQ024',
  name: 'head-pressure',
  severity: 'warning',
  title: 'The pressure under head or nut is more than the clamped material bears.',
  why: 'The head sinks into the face, and the bolt is slack again the next morning; the torque was right and the joint is loose.',
  sources: [
    'VDI 2230 Part 1: highest preload over the bearing area against the limiting surface pressure',
    'ISO 4014, ISO 4762, ISO 273 and their likes: bearing face and hole, named on the page of the joint',
  ],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    bearing_limit:\n      pressure: «490 MPa»\n      source: { document: Pump manual, edition: "3", place: page 11 }\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    bearing_limit:\n      pressure: 850 MPa\n      source: { document: Pump manual, edition: "3", place: page 11 }\n',
      },
    ],
  },
  found: eachJoint((plan, shop) => {
    const { bearingLimit, result } = plan;
    if (bearingLimit === undefined || isSuspect(plan)) return undefined;
    const parts = lookUp(shop).machine(plan.machine)?.parts ?? [];
    const washer = parts.some((p) => p.kind === 'washer' && plan.also.includes(p.id));
    const areaMm2 = bearingAreaMm2(plan, washer);
    const mostMPa = bearingLimit.pressure.si / 1e6;
    const highMPa = result.preloadN.high / areaMm2;
    if (!exceeds(highMPa, mostMPa)) return undefined;
    const needed = torqueFor(plan, mostMPa * areaMm2, 'most');
    const mm2 = `${formatDecimal(areaMm2, 0)} mm²`;
    return {
      range: placeOf(plan, 'bearing_limit', 'pressure'),
      message: `under the ${plan.turned} of \`${plan.id}\` the pressure may reach ${formatDecimal(highMPa, 0)} MPa on ${mm2}${washer ? ' under its washer' : ''}, and ${formatQuantity(bearingLimit.pressure)} is the most`,
      related: [{ range: aimPlace(plan), message: 'how tight it is' }],
      hint: `${washer ? 'use a thicker, hardened washer' : 'put a hardened washer under it'}${needed > 0 ? `, or ${aimWords(shop, plan, needed, 'most')}` : ''}; low friction and the deviation of the wrench are counted in`,
    };
  }),
};

function bearingAreaMm2({ bearing, thread }: JointPlan, washer: boolean): number {
  const faceMm = bearing.faceMm + (washer ? SPREAD * THINNEST * thread.diameterMm : 0);
  return (Math.PI / 4) * (faceMm ** 2 - bearing.holeMm ** 2);
}
