/** Bolt patterns and the places of their holes: x right, y up, mm, seen from the tightening side. */

/**
 * Angles clockwise from 12 o'clock, in degrees; lengths in mm, hole centre to hole centre.
 * A rectangle has holes along its edges only: `along` on each long (x) side and `across` on each short (y) side, corners
 * counted in both. `along` 1 is a single column, `across` 1 a single row.
 */
export type Pattern =
  | { readonly kind: 'circle'; readonly diameterMm: number; readonly count: number; readonly firstDeg: number }
  | {
      readonly kind: 'rectangle';
      readonly lengthMm: number;
      readonly widthMm: number;
      readonly along: number;
      readonly across: number;
    }
  | { readonly kind: 'points'; readonly points: readonly { readonly xMm: number; readonly yMm: number }[] };

export interface Hole {
  /** From 1. */
  readonly number: number;
  readonly xMm: number;
  readonly yMm: number;
}

/** Number of holes. A rectangle of at least 2 by 2 has 2 (along + across) - 4. */
export function patternCount(p: Pattern): number {
  switch (p.kind) {
    case 'circle':
      return p.count;
    case 'rectangle':
      return p.along < 2 || p.across < 2 ? p.along * p.across : 2 * (p.along + p.across) - 4;
    case 'points':
      return p.points.length;
  }
}

/**
 * Hole centres in number order; the origin is the centre of the circle or rectangle, or that of the author's points.
 * Circle: clockwise from the first hole. Rectangle: clockwise from the top left along the edge; a row runs left to right,
 * a column top to bottom. Points: as listed.
 * Throws RangeError on counts or lengths that `checkPattern` refuses. Source: plane trigonometry.
 */
export function patternHoles(p: Pattern): readonly Hole[] {
  switch (p.kind) {
    case 'circle':
      return number(circlePlaces(p.diameterMm, p.count, p.firstDeg));
    case 'rectangle':
      return number(rectanglePlaces(p.lengthMm, p.widthMm, p.along, p.across));
    case 'points':
      return number(p.points.map(({ xMm, yMm }) => [finite(xMm), finite(yMm)] as const));
  }
}

type Place = readonly [x: number, y: number];

function number(places: readonly Place[]): readonly Hole[] {
  return places.map(([xMm, yMm], i) => ({ number: i + 1, xMm, yMm }));
}

function circlePlaces(diameterMm: number, count: number, firstDeg: number): readonly Place[] {
  const radius = finite(diameterMm) / 2;
  const first = (finite(firstDeg) * Math.PI) / 180;
  return Array.from({ length: whole(count) }, (_, i) => {
    const angle = first + (2 * Math.PI * i) / count;
    return [radius * Math.sin(angle), radius * Math.cos(angle)] as const;
  });
}

function rectanglePlaces(lengthMm: number, widthMm: number, along: number, across: number): readonly Place[] {
  const xs = spread(finite(lengthMm), whole(along));
  const ys = spread(finite(widthMm), whole(across)).reverse();
  const [left = 0, right = 0] = [xs[0], xs.at(-1)];
  const [top = 0, bottom = 0] = [ys[0], ys.at(-1)];
  if (across === 1) return xs.map((x) => [x, 0] as const);
  if (along === 1) return ys.map((y) => [0, y] as const);
  return [
    ...xs.map((x) => [x, top] as const),
    ...ys.slice(1, -1).map((y) => [right, y] as const),
    ...[...xs].reverse().map((x) => [x, bottom] as const),
    ...[...ys.slice(1, -1)].reverse().map((y) => [left, y] as const),
  ];
}

/** `count` places evenly from -length/2 to length/2; one place stands in the middle. */
function spread(length: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => (count === 1 ? 0 : (i / (count - 1) - 0.5) * length));
}

function finite(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`pattern length or angle is ${value}`);
  return value;
}

function whole(count: number): number {
  if (!Number.isInteger(count) || count < 1) throw new RangeError(`hole count is ${count}`);
  return count;
}

/** Does the numbering close on itself, so that the last hole is a neighbour of hole 1? */
export function isClosed(p: Pattern): boolean {
  return p.kind === 'circle' ? p.count > 2 : p.kind === 'rectangle' && p.along > 1 && p.across > 1;
}
