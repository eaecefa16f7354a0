/** What is wrong with a pattern that an author wrote. */

import { formatDecimal } from '../units/index.ts';
import { distanceMm } from './chord.ts';
import { type Pattern, patternCount, patternHoles } from './pattern.ts';

export interface PatternFault {
  readonly problem: string;
  readonly hint: string;
}

/** No joint has more; beyond it a count is a slip. Practice. */
const MOST_HOLES = 1000;

/**
 * Faults of a pattern, none when it can be drawn: fewer than 2 or too many holes, a count that is not whole, a length
 * that is zero, negative or no number, holes that coincide or, where their diameter (mm) is given, overlap.
 */
export function checkPattern(p: Pattern, holeDiameterMm?: number): readonly PatternFault[] {
  const faults = [...checkCounts(p), ...checkLengths(p)];
  if (holeDiameterMm !== undefined && !(Number.isFinite(holeDiameterMm) && holeDiameterMm > 0)) {
    faults.push({
      problem: `hole diameter \`${holeDiameterMm} mm\` is not a size`,
      hint: 'give a diameter above zero',
    });
  }
  return faults.length > 0 ? faults : checkSpacing(p, holeDiameterMm);
}

function checkCounts(p: Pattern): PatternFault[] {
  const counts = p.kind === 'circle' ? [p.count] : p.kind === 'rectangle' ? [p.along, p.across] : [];
  const least = p.kind === 'circle' ? 2 : 1;
  const bad = counts.find((n) => !Number.isInteger(n) || n < least);
  if (bad !== undefined) {
    return [{ problem: `\`${bad}\` is not a number of holes`, hint: `give a whole number of at least ${least}` }];
  }
  const count = patternCount(p);
  if (count < 2) return [{ problem: `the pattern has \`${count}\` holes`, hint: 'a pattern has at least 2' }];
  if (count > MOST_HOLES)
    return [{ problem: `the pattern has \`${count}\` holes`, hint: `at most ${MOST_HOLES} are handled` }];
  return [];
}

function checkLengths(p: Pattern): PatternFault[] {
  const faults: PatternFault[] = [];
  const need = (name: string, value: number) => {
    if (Number.isFinite(value) && value > 0) return;
    faults.push({ problem: `${name} \`${value} mm\` is not a size`, hint: 'give a length above zero' });
  };
  switch (p.kind) {
    case 'circle':
      need('bolt circle', p.diameterMm);
      if (!Number.isFinite(p.firstDeg)) {
        faults.push({
          problem: `first hole \`${p.firstDeg}°\` is not an angle`,
          hint: "give degrees clockwise from 12 o'clock",
        });
      }
      break;
    case 'rectangle':
      // A single row has no width and a single column no length: those are not asked for.
      if (p.along !== 1) need('length', p.lengthMm);
      else if (!Number.isFinite(p.lengthMm)) need('length', p.lengthMm);
      if (p.across !== 1) need('width', p.widthMm);
      else if (!Number.isFinite(p.widthMm)) need('width', p.widthMm);
      break;
    case 'points':
      for (const [i, { xMm, yMm }] of p.points.entries()) {
        if (Number.isFinite(xMm) && Number.isFinite(yMm)) continue;
        faults.push({
          problem: `hole ${i + 1} at \`${xMm}, ${yMm}\` has no place`,
          hint: 'give both coordinates in mm',
        });
      }
      break;
  }
  return faults;
}

/** Holes nearer than this are one hole, whatever their size, mm. */
const SAME_PLACE = 0.001;

function checkSpacing(p: Pattern, holeDiameterMm = 0): readonly PatternFault[] {
  const holes = patternHoles(p);
  const least = Math.max(SAME_PLACE, holeDiameterMm);
  const faults: PatternFault[] = [];
  for (const [i, a] of holes.entries()) {
    for (const b of holes.slice(i + 1)) {
      const apart = distanceMm(a, b);
      if (apart >= least) continue;
      const mm = formatDecimal(apart, 2);
      if (p.kind === 'circle') {
        return [
          {
            problem: `bolt circle \`${p.diameterMm} mm\` is too small for ${p.count} holes: they lie ${mm} mm apart`,
            hint:
              holeDiameterMm > 0
                ? `holes of ${holeDiameterMm} mm would overlap`
                : 'give a larger circle or fewer holes',
          },
        ];
      }
      const what = apart < SAME_PLACE ? 'lie in the same place' : `overlap: they lie ${mm} mm apart`;
      faults.push({
        problem: `holes ${a.number} and ${b.number} ${what}`,
        hint: 'check their coordinates or the pattern size',
      });
    }
  }
  return faults;
}
