/** The checks of writing know English only. */

import type { Run } from '../check.ts';

/** The check for shops that write English (`language: en`, `en-GB` ...); silent for every other. */
export function inEnglish(run: Run): Run {
  return (shop, tell) => {
    if (/^en(?![a-z])/i.test(shop.info.language)) run(shop, tell);
  };
}
