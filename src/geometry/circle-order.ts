/** Tightening order on a bolt circle, for any number of bolts. */

import { PUBLISHED_ORDERS } from './published-orders.ts';
import type { SequenceParts } from './sequence.ts';
import { spreadOrder } from './spread.ts';

/** Above this count a ring divisible by four is tightened in groups of neighbours, as ASME PCC-1 does from 36 up. */
const MOST_SINGLE = 32;
const GROUP = 4;

/** Order of bolts numbered clockwise from 1. count: integer >= 1. */
export function circleOrder(count: number): SequenceParts {
  const published = PUBLISHED_ORDERS.find((o) => o.count === count);
  if (published !== undefined) {
    const parts = published.groups === undefined ? inFours(count) : inGroups(published.groupSize, published.groups);
    return { ...parts, published: published.source };
  }
  return count > MOST_SINGLE && count % 4 === 0 ? inGroups(GROUP, groupOrder(count / GROUP)) : crossOrder(count);
}

/** Single bolts crosswise whatever the count: in fours, in pairs, or a star. count: integer >= 1. */
export function crossOrder(count: number): SequenceParts {
  if (count < 4) return { order: upTo(count), rule: 'In turn, a little at a time, and round again.' };
  if (count % 2 === 1) return star(count);
  return count % 4 === 2 ? inPairs(count) : inFours(count);
}

/** 1, opposite, a quarter turn on, opposite; the next four begin where the gap is widest. */
function inFours(count: number): SequenceParts {
  const quarter = count / 4;
  const order = spreadOrder(quarter).flatMap((i) => [0, 2, 1, 3].map((turn) => i + 1 + turn * quarter));
  return {
    order,
    rule: 'Crosswise in fours: one, the one opposite, a quarter turn on, the one opposite; the next four begin where the gap is widest.',
  };
}

/** An even count that four does not divide: opposite pairs, each as far as possible from the pairs before. */
function inPairs(count: number): SequenceParts {
  const half = count / 2;
  return {
    order: spreadOrder(half).flatMap((i) => [i + 1, i + 1 + half]),
    rule: 'Crosswise in pairs: one and the one opposite, then about a quarter turn on; each pair where the gap is widest.',
  };
}

/** An odd count has no opposites: each move of (n - 1)/2 places lands half a pitch from the opposite point. */
function star(count: number): SequenceParts {
  const step = (count - 1) / 2;
  return {
    order: Array.from({ length: count }, (_, i) => ((i * step) % count) + 1),
    rule: `Star: each time ${step} places on, which is next to the point opposite.`,
  };
}

function inGroups(size: number, groups: readonly number[]): SequenceParts {
  const members = groups.map((g) => Array.from({ length: size }, (_, i) => (g - 1) * size + i + 1));
  return {
    order: members.flat(),
    groups: members,
    rule: `In groups of ${size} neighbours: each group in turn, then the group across, crosswise as with single bolts.`,
  };
}

/**
 * An odd number of groups takes the order of the next even number without its last group, the rest renumbered: pairs
 * stay opposite to within one group. For 44 bolts that is what the table has.
 */
function groupOrder(groups: number): readonly number[] {
  const even = groups + (groups % 2);
  const published = PUBLISHED_ORDERS.find((o) => o.groups?.length === even)?.groups;
  const order = published ?? (even % 4 === 0 ? inFours(even) : inPairs(even)).order;
  if (even === groups) return order;
  const last = order.at(-1) ?? even;
  return order.slice(0, -1).map((g) => (g > last ? g - 1 : g));
}

/** Numbers 1 to count. */
export function upTo(count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => i + 1);
}
