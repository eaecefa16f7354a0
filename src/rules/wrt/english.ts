/** The checks of writing know English only. */

import type { ResolvedShop } from '../../resolve/index.ts';
import type { Run } from '../check.ts';

/** The check for shops that write English (`language: en`, `en-GB` ...); silent for every other. */
export function inEnglish(run: Run): Run {
  const { ofDocument } = run;
  const ofAll: Run = (shop, tell) => {
    if (writesEnglish(shop)) run(shop, tell);
  };
  if (ofDocument === undefined) return ofAll;
  return Object.assign(ofAll, {
    ofDocument: ((shop, document, tell) => {
      if (writesEnglish(shop)) ofDocument(shop, document, tell);
    }) satisfies Run['ofDocument'],
  });
}

function writesEnglish({ info }: ResolvedShop): boolean {
  return /^en(?![a-z])/i.test(info.language);
}
