/** Places on circles, and the guards that every layout of places shares. */

export type Place = readonly [xMm: number, yMm: number];

/** Holes on a circle: `firstDeg` clockwise from 12 o'clock is the first. */
export interface Ring {
  readonly diameterMm: number;
  readonly count: number;
  readonly firstDeg: number;
}

/** Places of a full circle at equal pitch; sign 1 counts clockwise, -1 anticlockwise. */
export function ringPlaces(ring: Ring, sign: 1 | -1): readonly Place[] {
  return roundPlaces(ring, (sign * 360) / whole(ring.count));
}

/** `count` places on a circle, each `stepDeg` clockwise from the one before. Throws RangeError on a value that is no number. */
export function roundPlaces(ring: Ring, stepDeg: number): readonly Place[] {
  const radius = finite(ring.diameterMm) / 2;
  const [first, step] = [finite(ring.firstDeg), finite(stepDeg)];
  return Array.from({ length: whole(ring.count) }, (_, i) => {
    const angle = ((first + step * i) * Math.PI) / 180;
    return [radius * Math.sin(angle), radius * Math.cos(angle)] as const;
  });
}

/** The value. Throws RangeError when it is no number. */
export function finite(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`pattern length or angle is ${value}`);
  return value;
}

/** The count. Throws RangeError when it is not a whole number of at least 1. */
export function whole(count: number): number {
  if (!Number.isInteger(count) || count < 1) throw new RangeError(`hole count is ${count}`);
  return count;
}
