/** Dowels, jacking screws and the clocking mark: their places in the figure, their symbols and the words of the legend. */

import { onCircleOut } from './centre-lines.ts';
import { dimensionText } from './dimensions.ts';
import { arcPoints } from './paths.ts';
import type { PatternSpec, SpecFeature } from './pattern-spec.ts';
import {
  type Disc,
  distance,
  onCircle,
  type PathMark,
  type Point,
  type Primitive,
  type Segment,
} from './primitives.ts';

export interface PlacedFeature extends Disc {
  readonly feature: SpecFeature;
  /** Its true place in the drawing; other than `centre` where a bolt symbol covers that. */
  readonly truth: Point;
}

/** Radius of the symbols, mm: they are signs, not to scale. */
export const FEATURE_RADIUS = 1.5;
/** Least air around a symbol. */
const AIR = 0.6;
/** A symbol is moved off its true place in steps of this. */
const STEP = 0.4;
const MOST_STEPS = 40;

/** Words as short as `J1` stand beside the symbol; longer ones in the legend. */
const SHORT_LABEL = 3;

function shortLabel({ kind, label }: SpecFeature): string | undefined {
  return kind !== 'clocking mark' && label !== undefined && label.length <= SHORT_LABEL ? label : undefined;
}

/** What stands beside each feature's symbol: its own short words, or the letter of its entry where the legend has several of a kind. */
export function wordsBeside(features: readonly SpecFeature[]): ReadonlyMap<SpecFeature, string> {
  const beside = new Map<SpecFeature, string>();
  for (const { group, letter } of legendEntries(features)) {
    for (const feature of group) {
      const words = shortLabel(feature) ?? letter;
      if (words !== undefined) beside.set(feature, words);
    }
  }
  return beside;
}

/** `bolts`: what the symbols must keep clear of. A symbol that would cover a bolt is moved along its ray, outwards or inwards. */
export function placeFeatures(
  spec: PatternSpec,
  middle: Point,
  scale: number,
  bolts: readonly Disc[],
): readonly PlacedFeature[] {
  const placed: PlacedFeature[] = [];
  for (const feature of spec.features) {
    const truth = { x: (feature.at.x - middle.x) * scale, y: (feature.at.y - middle.y) * scale };
    const taken = [...bolts, ...placed];
    placed.push({ feature, truth, radius: FEATURE_RADIUS, centre: freePlace(truth, taken) });
  }
  return placed;
}

function freePlace(truth: Point, taken: readonly Disc[]): Point {
  const out = onCircleOut(truth);
  const isFree = (p: Point): boolean =>
    taken.every((d) => distance(p, d.centre) > FEATURE_RADIUS + d.radius + AIR - 1e-6);
  for (let i = 0; i <= MOST_STEPS; i++) {
    for (const side of i === 0 ? [0] : [1, -1]) {
      const p = { x: truth.x + out.x * STEP * i * side, y: truth.y + out.y * STEP * i * side };
      if (isFree(p)) return p;
    }
  }
  return truth;
}

/** All symbols stand where the features are. */
export function areTrue(placed: readonly PlacedFeature[]): boolean {
  return placed.every((f) => f.centre === f.truth || distance(f.centre, f.truth) < 1e-6);
}

export function featureMarks(placed: readonly PlacedFeature[]): Primitive[] {
  return [
    ...leaders(placed).map((line): Primitive => ({ kind: 'line', ...line, stroke: 'thin', ink: 'ink' })),
    ...placed.flatMap((f) => featureSymbol(f.feature.kind, f.centre, onCircleOut(f.truth))),
  ];
}

/**
 * From symbols that were moved to their true places; bolt symbols painted later cover their ends. A clocking mark keeps its
 * angle, which is all it tells.
 */
export function leaders(placed: readonly PlacedFeature[]): readonly Segment[] {
  return placed
    .filter(({ centre, truth, feature }) => feature.kind !== 'clocking mark' && distance(centre, truth) > 1e-6)
    .map(({ centre, truth }) => ({ from: truth, to: centre }));
}

/**
 * Dowel: a ring with two opposite quarters filled. Jacking screw: a thin ring with a cross. Clocking mark: a short double stroke
 * along `out`. They differ by shape alone and none looks like a bolt with its number.
 */
export function featureSymbol(kind: SpecFeature['kind'], centre: Point, out: Point): Primitive[] {
  const r = FEATURE_RADIUS;
  // The ground around the ring interrupts lines that pass under it.
  const ground: Primitive = { kind: 'circle', centre, radius: r + 0.5, stroke: 'none', ink: 'paper', fill: 'paper' };
  const ring: Primitive = { kind: 'circle', centre, radius: r, stroke: 'thin', ink: 'ink', fill: 'paper' };
  if (kind === 'dowel') return [ground, ring, quarter(centre, r, 0), quarter(centre, r, 180)];
  if (kind === 'jacking screw') {
    const [a, b, c, d] = [45, 225, 135, 315].map((deg) => onCircle(centre, r, deg));
    if (a === undefined || b === undefined || c === undefined || d === undefined) return [ground, ring];
    return [
      ground,
      ring,
      { kind: 'line', from: a, to: b, stroke: 'thin', ink: 'ink' },
      { kind: 'line', from: c, to: d, stroke: 'thin', ink: 'ink' },
    ];
  }
  return [-0.6, 0.6].map((aside) => {
    const middle = { x: centre.x - out.y * aside, y: centre.y + out.x * aside };
    const along = r - 0.1;
    return {
      kind: 'line',
      from: { x: middle.x - out.x * along, y: middle.y - out.y * along },
      to: { x: middle.x + out.x * along, y: middle.y + out.y * along },
      stroke: 'visible',
      ink: 'ink',
    };
  });
}

/** A filled quarter of a disc, clockwise from `from` degrees. */
function quarter(centre: Point, radius: number, from: number): PathMark {
  const arc = arcPoints({ kind: 'arc', centre, radius, from, to: from + 90, stroke: 'none', ink: 'ink' });
  const [start = centre] = arc;
  const end = arc.at(-1) ?? centre;
  const points = [centre, centre, start, ...arc, end, centre, centre];
  return { kind: 'path', points, curved: true, closed: true, stroke: 'none', ink: 'ink', fill: 'ink' };
}

export interface LegendEntry {
  readonly kind: SpecFeature['kind'];
  readonly words: string;
  /** `A`, `B` ... where entries share a symbol and nothing else beside it tells them apart. */
  readonly letter?: string;
  readonly group: readonly SpecFeature[];
}

/** One entry for features that look and measure alike, in the order in which they first appear. */
export function legendEntries(features: readonly SpecFeature[]): readonly LegendEntry[] {
  const groups = new Map<string, SpecFeature[]>();
  for (const feature of features) {
    const own = shortLabel(feature) === undefined ? (feature.label ?? '') : '';
    const key = JSON.stringify([feature.kind, feature.size ?? feature.diameterMm ?? null, own]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [feature]);
    else group.push(feature);
  }
  const all = [...groups.values()];
  return all.flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const alike = all.filter(([f]) => f !== undefined && f.kind === first.kind && shortLabel(f) === undefined);
    const words = wordsOf(first, group);
    if (alike.length < 2 || shortLabel(first) !== undefined) return [{ kind: first.kind, words, group }];
    const letter = String.fromCodePoint(65 + alike.indexOf(group));
    return [{ kind: first.kind, words: `${letter}: ${words}`, letter, group }];
  });
}

function sizeOf({ size, diameterMm }: SpecFeature): string {
  if (size !== undefined) return ` ${size.replaceAll(' ', '\u00a0')}`;
  return diameterMm === undefined ? '' : ` Ø\u00a0${dimensionText(diameterMm)}`;
}

function wordsOf(first: SpecFeature, group: readonly SpecFeature[]): string {
  const label = shortLabel(first) === undefined ? first.label : undefined;
  if (first.kind === 'clocking mark') return label === undefined || label === '' ? 'clocking mark' : label;
  const size = sizeOf(first);
  const shorts = group.flatMap((f) => shortLabel(f) ?? []);
  const names = shorts.length < 3 ? shorts.join(' and ') : `${shorts[0]} to ${shorts.at(-1)}`;
  const what = `${group.length === 1 ? first.kind : `${group.length}\u00a0${first.kind}s`}${size}`;
  const named = names === '' ? what : `${names}: ${what}`;
  return label === undefined ? named : `${named}, ${label}`;
}
