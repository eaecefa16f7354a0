/** The first moves from bolt to bolt as arrows; with several tools, what is tightened together and where the tools go next. */

import { move } from './arrow.ts';
import type { PlacedHole } from './bolts.ts';
import { boxToSegment, pointToSegment } from './collide.ts';
import type { FigureStyle } from './figure-style.ts';
import type { PatternSpec } from './pattern-spec.ts';
import { type Disc, distance, type Point, type Primitive, type Segment } from './primitives.ts';
import type { Box } from './text-size.ts';

export interface Moves {
  readonly arrows: readonly Segment[];
  /** Bolts of the first move, when there is more than one. */
  readonly links: readonly Segment[];
}

/** Moves shown: enough to see the rule, few enough to read. */
const MOST_ARROWS = 4;
/** A shorter arrow would be all head. */
const LEAST_SHAFT = 2;
/** Moves looked at: on a circle the long ones among groups of neighbours lead from group to group. */
const LOOK_AHEAD = 16;
const LOOK_AHEAD_IN_LINE = 6;

/**
 * The straight pieces of the first moves that are long enough to be drawn and pass through no other bolt; where neighbours are
 * tightened in groups, these are the moves from group to group.
 */
export function firstMoves(spec: PatternSpec, holes: readonly PlacedHole[], style: FigureStyle): Moves {
  const byNumber = new Map(holes.map((hole) => [hole.number, hole]));
  const round = spec.pattern.kind === 'circle' || spec.pattern.kind === 'circles';
  const sets = spec.moves
    .slice(0, (round ? LOOK_AHEAD : LOOK_AHEAD_IN_LINE) + 1)
    .map((set) => set.flatMap((number) => byNumber.get(number) ?? []));
  const [first = []] = sets;
  const together = first.length;
  const clear = clearOf(style);
  const drawable = (s: Segment): boolean =>
    distance(s.from, s.to) > 2 * clear + style.moveHead + LEAST_SHAFT &&
    holes.every(
      (h) => h.centre === s.from || h.centre === s.to || pointToSegment(h.centre, s.from, s.to) > style.symbol + 0.8,
    );
  const arrows: Segment[] = [];
  const most = Math.max(MOST_ARROWS, together);
  for (let i = 0; i + 1 < sets.length && arrows.length < most; i++) {
    arrows.push(...pairs(sets[i] ?? [], sets[i + 1] ?? []).filter(drawable));
  }
  return { arrows: arrows.slice(0, most), links: linksOf(first) };
}

/** Each tool goes to the nearest bolt of the next move that no other tool takes. */
function pairs(from: readonly PlacedHole[], to: readonly PlacedHole[]): readonly Segment[] {
  const free = [...to];
  return from.flatMap((hole) => {
    const next = free.reduce<PlacedHole | undefined>(
      (best, h) => (best === undefined || isNearer(hole.centre, h.centre, best.centre) ? h : best),
      undefined,
    );
    if (next === undefined) return [];
    free.splice(free.indexOf(next), 1);
    return [{ from: hole.centre, to: next.centre }];
  });
}

/** Equal distances go the way round that the clock goes, so that all tools turn alike. */
function isNearer(from: Point, a: Point, b: Point): boolean {
  const gain = distance(from, b) - distance(from, a);
  if (Math.abs(gain) > 1e-6) return gain > 0;
  return from.x * a.y - from.y * a.x > from.x * b.y - from.y * b.x;
}

/** A line between two, a closed line through four. */
function linksOf(set: readonly PlacedHole[]): readonly Segment[] {
  const [a, b] = set;
  if (a === undefined || b === undefined) return [];
  if (set.length === 2) return [{ from: a.centre, to: b.centre }];
  const round = [...set].sort((p, q) => Math.atan2(p.centre.y, p.centre.x) - Math.atan2(q.centre.y, q.centre.x));
  return round.map((hole, i) => ({ from: hole.centre, to: (round[(i + 1) % round.length] ?? hole).centre }));
}

/** Arrows that no number and no feature near their head stands in the way of; links only when all of them are free. */
export function freeMoves(moves: Moves, boxes: readonly Box[], discs: readonly Disc[], style: FigureStyle): Moves {
  const reach = clearOf(style) + style.moveHead;
  const isFree = ({ from, to }: Segment): boolean =>
    boxes.every((box) => boxToSegment(box, from, to) > 0.2) &&
    discs.every(
      (d) => distance(d.centre, to) > reach + d.radius || pointToSegment(d.centre, from, to) > d.radius + 0.5,
    );
  const clear = moves.links.every(({ from, to }) => boxes.every((box) => boxToSegment(box, from, to) > 0.2));
  return { arrows: moves.arrows.filter(isFree), links: clear ? moves.links : [] };
}

/** Arrows stay this far from the middle of a bolt. */
function clearOf(style: FigureStyle): number {
  return style.symbol + 0.5;
}

export function moveMarksOf(moves: Moves, style: FigureStyle): Primitive[] {
  const clear = clearOf(style);
  return [
    ...moves.links.map(({ from, to }): Primitive => {
      const d = distance(from, to) || 1;
      const u = { x: (to.x - from.x) / d, y: (to.y - from.y) / d };
      return {
        kind: 'line',
        from: { x: from.x + u.x * clear, y: from.y + u.y * clear },
        to: { x: to.x - u.x * clear, y: to.y - u.y * clear },
        stroke: 'hidden',
        ink: 'accent',
      };
    }),
    ...moves.arrows.flatMap(({ from, to }) => move(from, to, clear, style.moveHead, 'accent')),
  ];
}
