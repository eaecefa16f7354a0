/** Tries several arrangements of one thing and keeps the best; what is wrong with the others is not reported. */

import type { Block } from './items.ts';
import { EMPTY, mm } from './items.ts';
import type { Setting } from './setting.ts';

export type Arrangement = (setting: Setting) => Block;

/** Blocks of one kind should look alike where that costs no more height than this. */
const LIKENESS = mm(3);

/**
 * The first arrangement that is at most `tolerance` pt higher than the lowest, out of those with the fewest faults of text (a word
 * wider than its place). Only the faults of the one chosen reach `setting.problems`.
 */
export function chooseLowest(setting: Setting, arrangements: readonly Arrangement[], tolerance = LIKENESS): Block {
  const tried = arrangements.map((arrange) => {
    const faults: (() => void)[] = [];
    const block = arrange({
      ...setting,
      problems: {
        missing: (codePoint) => faults.push(() => setting.problems.missing(codePoint)),
        tooWide: (word, width, place) => faults.push(() => setting.problems.tooWide(word, width, place)),
      },
    });
    return { block, faults };
  });
  const fewest = Math.min(...tried.map((t) => t.faults.length));
  const sound = tried.filter((t) => t.faults.length === fewest);
  const least = Math.min(...sound.map((t) => t.block.height));
  const chosen = sound.find((t) => t.block.height <= least + tolerance);
  for (const fault of chosen?.faults ?? []) fault();
  return chosen?.block ?? EMPTY;
}
