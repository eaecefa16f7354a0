/** One spelling for what people type in designations. */

/** Vulgar fractions, dashes and inch marks in one spelling; width and ligature forms folded. Case and blanks are left. */
export function foldSigns(text: string): string {
  return text
    .replace(/([¼½¾⅐-⅞])/gu, ' $1')
    .normalize('NFKC')
    .replace(/\u2044/gu, '/')
    .replace(/[″”“]|''|′′/gu, '"')
    .replace(/[‐‑‒–—−]/gu, '-');
}
