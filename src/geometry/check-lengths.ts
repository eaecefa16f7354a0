/** Counts, lengths and angles of a pattern that cannot be drawn. */

import type { PatternFault } from './check-pattern.ts';
import { type Pattern, patternCount } from './pattern.ts';
import type { Ring } from './places.ts';

/** No joint has more; beyond it a count is a slip. Practice. */
const MOST_HOLES = 1000;
/** No joint is larger, mm; beyond it a length is a slip of a unit. Practice. */
const MOST_MM = 100_000;
/** A drawing of concentric rows of bolts shows this many. Practice. */
const MOST_CIRCLES = 3;

export function checkCounts(p: Pattern): readonly PatternFault[] {
  if (p.kind === 'circles' && (p.circles.length < 2 || p.circles.length > MOST_CIRCLES)) {
    return [
      {
        problem: `\`${p.circles.length}\` circles`,
        hint: `concentric circles are 2 or ${MOST_CIRCLES}; write one circle as \`circle\``,
      },
    ];
  }
  const counts = countsOf(p);
  const least = p.kind === 'rectangle' ? 1 : 2;
  const bad = counts.find((n) => !Number.isInteger(n) || n < least);
  if (bad !== undefined) {
    return [{ problem: `\`${bad}\` is not a number of holes`, hint: `give a whole number of at least ${least}` }];
  }
  const count = patternCount(p);
  if (count < 2) return [{ problem: `the pattern has \`${count}\` holes`, hint: 'a pattern has at least 2' }];
  if (count <= MOST_HOLES) return [];
  return [{ problem: `the pattern has \`${count}\` holes`, hint: `at most ${MOST_HOLES} are handled` }];
}

function countsOf(p: Pattern): readonly number[] {
  switch (p.kind) {
    case 'circle':
    case 'arc':
    case 'slot':
      return [p.count];
    case 'circles':
      return p.circles.map((c) => c.count);
    case 'rectangle':
      return [p.along, p.across];
    case 'points':
      return [];
  }
}

export function checkLengths(p: Pattern): readonly PatternFault[] {
  switch (p.kind) {
    case 'circle':
      return checkRing(p);
    case 'arc':
      return [...checkRing(p), ...checkSpan(p.spanDeg)];
    case 'circles':
      return [...p.circles.flatMap(checkRing), ...checkEqualCircles(p.circles)];
    case 'rectangle':
      return checkRectangle(p);
    case 'slot':
      return checkSlot(p);
    case 'points':
      return p.points.flatMap(({ xMm, yMm }, i) => checkPoint(xMm, yMm, i + 1));
  }
}

function checkRing({ diameterMm, firstDeg }: Ring): readonly PatternFault[] {
  const faults = checkSize('bolt circle', diameterMm);
  if (Number.isFinite(firstDeg)) return faults;
  return [
    ...faults,
    { problem: `first hole \`${firstDeg}°\` is not an angle`, hint: "give degrees clockwise from 12 o'clock" },
  ];
}

function checkSpan(spanDeg: number): readonly PatternFault[] {
  if (spanDeg > 0 && spanDeg < 360) return [];
  return [
    {
      problem: `span \`${spanDeg}°\` is not an arc`,
      hint: 'give an angle above 0° and below 360°, from the first hole to the last; a full circle has no span',
    },
  ];
}

function checkEqualCircles(circles: readonly Ring[]): readonly PatternFault[] {
  const again = circles.find((c, i) => circles.slice(0, i).some((other) => other.diameterMm === c.diameterMm));
  if (again === undefined) return [];
  return [
    {
      problem: `two circles of \`${again.diameterMm} mm\``,
      hint: 'write them as one circle with all its holes, or correct one diameter',
    },
  ];
}

/** A single row has no width and a single column no length: those are not asked for, and have no way round. */
function checkRectangle(p: Extract<Pattern, { kind: 'rectangle' }>): readonly PatternFault[] {
  const faults = [
    ...(p.along === 1 && Number.isFinite(p.lengthMm) ? [] : checkSize('length', p.lengthMm)),
    ...(p.across === 1 && Number.isFinite(p.widthMm) ? [] : checkSize('width', p.widthMm)),
  ];
  if (p.numbering === undefined || (p.along > 1 && p.across > 1)) return faults;
  return [...faults, { problem: `a single row is not numbered \`${p.numbering}\``, hint: 'leave `numbering` out' }];
}

function checkSlot(p: Extract<Pattern, { kind: 'slot' }>): readonly PatternFault[] {
  const faults = [...checkSize('length', p.lengthMm), ...checkSize('width', p.widthMm)];
  if (faults.length > 0 || p.lengthMm > p.widthMm) return faults;
  return [
    {
      problem: `a slot \`${p.lengthMm} mm\` long is not longer than its width \`${p.widthMm} mm\``,
      hint: 'give the length over all first, then the width; equal ones are a circle',
    },
  ];
}

function checkPoint(xMm: number, yMm: number, number: number): readonly PatternFault[] {
  if (Math.abs(xMm) <= MOST_MM && Math.abs(yMm) <= MOST_MM) return [];
  const isPlace = Number.isFinite(xMm) && Number.isFinite(yMm);
  return [
    {
      problem: `hole ${number} at \`${xMm}, ${yMm}\` ${isPlace ? 'is out of reach' : 'has no place'}`,
      hint: isPlace ? `at most ${MOST_MM} mm are handled` : 'give both coordinates in mm',
    },
  ];
}

/** Above zero and not beyond what a joint can measure. */
function checkSize(name: string, mm: number): readonly PatternFault[] {
  const problem = `${name} \`${mm} mm\` is not a size`;
  if (!(Number.isFinite(mm) && mm > 0)) return [{ problem, hint: 'give a length above zero' }];
  return mm <= MOST_MM ? [] : [{ problem, hint: `at most ${MOST_MM} mm are handled` }];
}
