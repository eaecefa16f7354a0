/** Places along an obround line: two straight sides joined by two half circles. */

import { finite, type Place, whole } from './places.ts';

/** Length of the line round a slot `lengthMm` over all and `widthMm` wide, mm: 2 (L - W) + pi W. */
export function slotLineMm(lengthMm: number, widthMm: number): number {
  return 2 * (lengthMm - widthMm) + Math.PI * widthMm;
}

/**
 * `count` places at equal distance along the line, clockwise from the top middle, or from half a pitch after it; mm about
 * the centre. Throws RangeError on a count that is not whole or lengths that make no slot. Source: arc length = radius times
 * angle.
 */
export function slotPlaces(lengthMm: number, widthMm: number, count: number, straddle: boolean): readonly Place[] {
  const straight = finite(lengthMm) - finite(widthMm);
  if (straight <= 0 || widthMm <= 0) throw new RangeError(`no slot of ${lengthMm} by ${widthMm} mm`);
  const pitch = slotLineMm(lengthMm, widthMm) / whole(count);
  return Array.from({ length: count }, (_, i) => slotPlace(straight, widthMm / 2, (i + (straddle ? 0.5 : 0)) * pitch));
}

/** Place at `along` mm clockwise from the top middle. */
function slotPlace(straight: number, radius: number, along: number): Place {
  const half = straight / 2;
  const bend = Math.PI * radius;
  if (along <= half) return [along, radius];
  if (along <= half + bend) {
    const angle = (along - half) / radius;
    return [half + radius * Math.sin(angle), radius * Math.cos(angle)];
  }
  if (along <= half + bend + straight) return [half - (along - half - bend), -radius];
  if (along <= half + 2 * bend + straight) {
    const angle = (along - half - bend - straight) / radius;
    return [-half - radius * Math.sin(angle), -radius * Math.cos(angle)];
  }
  return [along - slotLineMm(straight + 2 * radius, 2 * radius), radius];
}
