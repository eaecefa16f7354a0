/** A small seeded random source, so that a synthetic shop is the same on every machine. */

export interface Random {
  /** A whole number from 0 to `below` - 1. */
  readonly whole: (below: number) => number;
  readonly pick: <T>(list: readonly T[]) => T;
}

/** mulberry32: 32 bits of state, good enough to vary a benchmark. Published to the public domain (memory). */
export function seeded(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const whole = (below: number): number => Math.floor(next() * below);
  return {
    whole,
    pick: (list) => {
      const found = list[whole(list.length)];
      if (found === undefined) throw new RangeError('nothing to pick from');
      return found;
    },
  };
}
