/** How sources and the author's single sentences are put on a card. */

import type { SourceNote } from '../../resolve/types.ts';
import { capitalised } from '../../resolve/words.ts';

/** `Brackwater Thermal, cooler handbook, 4th edition, page 31`; a number stays with the word before it. */
export function sourceText(source: SourceNote): string {
  return [source.document, source.edition, source.place]
    .filter((t) => t !== undefined)
    .join(', ')
    .replace(/(\p{L}) (?=\d)/gu, '$1\u00a0');
}

/** With a capital and exactly one full stop, however the author wrote it. */
export function sentence(text: string): string {
  const t = capitalised(text.trim());
  return /[.!?]$/u.test(t) ? t : `${t}.`;
}
