/** What stands beside the bolt holes: dowels, jacking screws, the clocking mark. */

import { formatDecimal } from '../units/index.ts';
import type { PatternFault } from './check-pattern.ts';
import { type Hole, type Pattern, patternHoles } from './pattern.ts';
import { finite } from './places.ts';

export interface Feature {
  readonly kind: 'dowel' | 'jacking screw' | 'clocking mark';
  readonly xMm: number;
  readonly yMm: number;
  /** Of the dowel or the tapped hole; a mark has none. */
  readonly diameterMm?: number;
  /** Thread of a jacking screw, as printed: stands in the legend instead of the diameter. */
  readonly size?: string;
  /** The author's words, for the legend. */
  readonly label?: string;
}

export interface FeatureFault extends PatternFault {
  /** Which of the features, from 0. */
  readonly index: number;
}

/** Place on a circle about the origin: degrees clockwise from 12 o'clock, mm. Throws RangeError on a value that is no number. */
export function placeOn(circleDiameterMm: number, deg: number): { readonly xMm: number; readonly yMm: number } {
  const angle = (finite(deg) * Math.PI) / 180;
  const radius = finite(circleDiameterMm) / 2;
  return { xMm: radius * Math.sin(angle), yMm: radius * Math.cos(angle) };
}

/**
 * Faults of features, one each at most: no place, no size, or in the way of a bolt hole or of a feature before it. Clocking
 * marks have no size and are in nobody's way. holeDiameterMm > 0; the pattern is sound.
 */
export function checkFeatures(
  p: Pattern,
  holeDiameterMm: number,
  features: readonly Feature[],
): readonly FeatureFault[] {
  const holes = patternHoles(p);
  return features.flatMap((feature, index) => {
    const fault = placeFault(feature) ?? wayFault(feature, holes, holeDiameterMm, features.slice(0, index));
    return fault === undefined ? [] : [{ ...fault, index }];
  });
}

function placeFault({ kind, xMm, yMm, diameterMm }: Feature): PatternFault | undefined {
  if (!Number.isFinite(xMm) || !Number.isFinite(yMm)) {
    return {
      problem: `${kind} at \`${xMm}, ${yMm}\` has no place`,
      hint: 'give a circle and an angle, or both coordinates',
    };
  }
  if (kind === 'clocking mark') return undefined;
  if (diameterMm === undefined) return { problem: `${kind} has no size`, hint: 'give its diameter' };
  if (Number.isFinite(diameterMm) && diameterMm > 0) return undefined;
  return { problem: `${kind} of \`${diameterMm} mm\` has no size`, hint: 'give a diameter above zero' };
}

function wayFault(
  feature: Feature,
  holes: readonly Hole[],
  holeDiameterMm: number,
  before: readonly Feature[],
): PatternFault | undefined {
  const { kind, diameterMm } = feature;
  if (kind === 'clocking mark' || diameterMm === undefined) return undefined;
  const hole = holes.find((h) => apart(feature, h) < (diameterMm + holeDiameterMm) / 2);
  if (hole !== undefined) return inTheWay(feature, `bolt hole ${hole.number}`, apart(feature, hole));
  const other = before.find(
    (f) => f.kind !== 'clocking mark' && apart(feature, f) < (diameterMm + (f.diameterMm ?? 0)) / 2,
  );
  return other === undefined ? undefined : inTheWay(feature, `the ${other.kind} before it`, apart(feature, other));
}

function inTheWay({ kind }: Feature, what: string, distanceMm: number): PatternFault {
  return {
    problem: `${kind} overlaps ${what}: centres \`${formatDecimal(distanceMm, 2)} mm\` apart`,
    hint: 'check its circle, angle and diameter',
  };
}

interface At {
  readonly xMm: number;
  readonly yMm: number;
}

function apart(a: At, b: At): number {
  return Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm);
}
