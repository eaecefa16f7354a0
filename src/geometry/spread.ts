/** The order that fills a ring of equal places as evenly as possible: the rule behind the cross patterns. */

/**
 * Places 0 to count - 1 on a ring, each once, from 0. Next comes the place farthest from all places taken; among equals
 * the one farthest from the place taken last, then from the one before it, and so on back; among equals still, the lowest.
 * Applied to the quarter of a bolt circle it gives the fours of the ASME PCC-1 legacy cross pattern for every published
 * count from 4 to 32.
 */
export function spreadOrder(count: number): readonly number[] {
  const order: number[] = count > 0 ? [0] : [];
  const free = new Set(Array.from({ length: Math.max(0, count - 1) }, (_, i) => i + 1));
  while (free.size > 0) {
    let best = -1;
    for (const place of free) {
      if (best < 0 || isFarther(place, best, order, count)) best = place;
    }
    free.delete(best);
    order.push(best);
  }
  return order;
}

function isFarther(a: number, b: number, order: readonly number[], count: number): boolean {
  const nearest = (place: number) => Math.min(...order.map((taken) => apart(place, taken, count)));
  const gain = nearest(a) - nearest(b);
  if (gain !== 0) return gain > 0;
  for (let i = order.length - 1; i >= 0; i--) {
    const taken = order[i] ?? 0;
    const step = apart(a, taken, count) - apart(b, taken, count);
    if (step !== 0) return step > 0;
  }
  return a < b;
}

/** Pitches between two places, the shorter way round. */
export function apart(a: number, b: number, count: number): number {
  const way = Math.abs(a - b) % count;
  return Math.min(way, count - way);
}
