/** What is wrong with a pattern that an author wrote. */

import { formatDecimal } from '../units/index.ts';
import { checkCounts, checkLengths } from './check-lengths.ts';
import { distanceMm } from './chord.ts';
import { type Hole, type Pattern, patternHoles } from './pattern.ts';

export interface PatternFault {
  readonly problem: string;
  readonly hint: string;
}

/** Holes nearer than this are one hole, whatever their size, mm. */
const SAME_PLACE = 0.001;
/** Overlaps named one by one; more of them have one cause. */
const MOST_NAMED = 5;

/**
 * Faults of a pattern, none when it can be drawn: too few or too many circles or holes, a count that is not whole, a length
 * or span that is zero, negative, absurd or no number, a slot no longer than wide, holes that coincide or, where their
 * diameter (mm) is given, overlap. Overlaps are named up to five.
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

function checkSpacing(p: Pattern, holeDiameterMm = 0): readonly PatternFault[] {
  const holes = patternHoles(p);
  const least = Math.max(SAME_PLACE, holeDiameterMm);
  const faults: PatternFault[] = [];
  for (const [i, a] of holes.entries()) {
    for (const b of holes.slice(i + 1)) {
      const apart = distanceMm(a, b);
      if (apart >= least) continue;
      const crowded = crowdedLine(p, a, b, apart, holeDiameterMm);
      if (crowded !== undefined) return [crowded];
      faults.push(overlap(p, a, b, apart));
      // Circles too near each other are one slip, however many of their holes meet.
      if (p.kind === 'circles') return faults;
      if (faults.length === MOST_NAMED) return faults;
    }
  }
  return faults;
}

/** Equal pitch on one line: one fault for the line, not one for each pair. */
function crowdedLine(p: Pattern, a: Hole, b: Hole, apart: number, holeDiameterMm: number): PatternFault | undefined {
  const line = lineThrough(p, a, b);
  if (line === undefined) return undefined;
  return {
    problem: `${line.name} is too small for ${line.count} holes: they lie ${formatDecimal(apart, 2)} mm apart`,
    hint:
      holeDiameterMm > 0
        ? `holes of ${holeDiameterMm} mm would overlap: compare ${line.what} and count with the drawing`
        : `give a larger ${line.what} or fewer holes`,
  };
}

function lineThrough(p: Pattern, a: Hole, b: Hole): { name: string; what: string; count: number } | undefined {
  switch (p.kind) {
    case 'circle':
      return { name: `bolt circle \`${p.diameterMm} mm\``, what: 'circle', count: p.count };
    case 'arc':
      return { name: `arc of \`${p.diameterMm} mm\` over \`${p.spanDeg}°\``, what: 'arc', count: p.count };
    case 'slot':
      return { name: `slot \`${p.lengthMm} mm\` by \`${p.widthMm} mm\``, what: 'slot', count: p.count };
    case 'circles': {
      let before = 0;
      for (const c of p.circles) {
        const within = (h: Hole) => h.number > before && h.number <= before + c.count;
        if (within(a) && within(b))
          return { name: `bolt circle \`${c.diameterMm} mm\``, what: 'circle', count: c.count };
        before += c.count;
      }
      return undefined;
    }
    case 'rectangle':
    case 'points':
      return undefined;
  }
}

function overlap(p: Pattern, a: Hole, b: Hole, apart: number): PatternFault {
  const mm = formatDecimal(apart, 2);
  return {
    problem: `holes ${a.number} and ${b.number} ${apart < SAME_PLACE ? 'lie in the same place' : `overlap: they lie ${mm} mm apart`}`,
    hint:
      p.kind === 'circles'
        ? 'the circles lie too near each other: check their diameters and first holes'
        : 'check their coordinates or the pattern size',
  };
}
