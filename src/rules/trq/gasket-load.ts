/** The load of all bolts on the gasket against the limits of its maker. */

import { placeOf } from '../../resolve/index.ts';
import { formatDecimal, formatQuantity } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { eachJoint, isSuspect } from '../rule.ts';
import { aimPlace, aimWords, exceeds, torqueFor } from './aim.ts';

export const gasketLoad: Check = {
  code: 'TRQ025',
  name: 'gasket-load',
  severity: 'error',
  title: 'The bolts press the gasket with more than it bears, or with less than seats it.',
  why: 'A crushed gasket leaks at the first start and one that never seated leaks at the first warm-up; both are blamed on the mechanic.',
  sources: ['the gasket maker’s own limits, as the joint states them: there is no default'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    gasket_load:\n      area: 12000 mm2\n      seating: 25 MPa\n      most: «60 MPa»\n      source: { document: Gasket data sheet, edition: 2025-03 }\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    gasket_load:\n      area: 12000 mm2\n      seating: 25 MPa\n      most: 90 MPa\n      source: { document: Gasket data sheet, edition: 2025-03 }\n',
      },
    ],
  },
  found: eachJoint((plan, shop) => {
    const { gasketLoad: load, result, count, id } = plan;
    if (load === undefined || isSuspect(plan)) return undefined;
    const areaMm2 = load.area.si * 1e6;
    const pressMPa = (boltN: number) => (count * boltN) / areaMm2;
    const [low, nominal, high] = [result.preloadN.low, result.preloadN.nominal, result.preloadN.high].map(pressMPa);
    if (low === undefined || nominal === undefined || high === undefined) return undefined;
    const toTorque = (MPa: number, end: 'least' | 'most') => torqueFor(plan, (MPa * areaMm2) / count, end);
    const related = [{ range: aimPlace(plan), message: 'how tight it is' }];
    const least = load.seating && toTorque(load.seating.si / 1e6, 'least');
    const most = load.most && toTorque(load.most.si / 1e6, 'most');
    const both = least !== undefined && most !== undefined && least > most;
    const narrow = 'friction and wrench scatter more than the gasket allows: use a lubricant with less scatter';
    if (load.most !== undefined && most !== undefined && exceeds(high, load.most.si / 1e6)) {
      return {
        range: placeOf(plan, 'gasket_load', 'most'),
        message: `the ${count} bolts of \`${id}\` press its gasket with ${formatDecimal(nominal, 1)} to ${formatDecimal(high, 1)} MPa, and ${formatQuantity(load.most)} is the most that it bears`,
        related,
        hint: both || most <= 0 ? narrow : aimWords(shop, plan, most, 'most'),
      };
    }
    if (load.seating === undefined || least === undefined || !exceeds(load.seating.si / 1e6, low)) return undefined;
    return {
      range: placeOf(plan, 'gasket_load', 'seating'),
      message: `the ${count} bolts of \`${id}\` may press its gasket with no more than ${formatDecimal(low, 1)} MPa, and it takes ${formatQuantity(load.seating)} to seat it`,
      related,
      hint: both ? narrow : aimWords(shop, plan, least, 'least'),
    };
  }),
};
