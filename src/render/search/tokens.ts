/** Cuts text into search terms, the same way for what is indexed and for what is asked. */

/** One thing found in the text: as a whole, and the smaller pieces by which it may be asked for. */
interface Token {
  readonly whole: string;
  readonly pieces: readonly string[];
}

/** Units that are joined to the number before them: `24 mm` becomes `24mm`. Keys are compared after folding. */
const UNIT_TERMS: ReadonlyMap<string, string> = new Map([
  ...['n·m', 'n.m', 'nm', 'n*m'].map((u) => [u, 'nm'] as const),
  ...['lbf·ft', 'lbf.ft', 'lbfft', 'ft·lbf', 'ft.lbf', 'ft-lbf', 'lb·ft', 'lb.ft', 'lb-ft', 'ft-lb', 'ftlb'].map(
    (u) => [u, 'lbfft'] as const,
  ),
  ...['lbf·in', 'lbf.in', 'lbfin', 'in·lbf', 'in-lbf', 'in-lb', 'lb-in', 'lb·in'].map((u) => [u, 'lbfin'] as const),
  ...['in', 'inch', 'inches', '"'].map((u) => [u, 'in'] as const),
  ...['mm', 'cm', 'kn', 'kg', 'bar', 'psi', 'ml', 'mpa', '%'].map((u) => [u, u] as const),
  ...['µm', 'μm', 'um', 'micron'].map((u) => [u, 'um'] as const),
  ['°c', 'degc'],
]);

const NUMBER = String.raw`\d+-\d+\/\d+|\d+\/\d+|\d+\.\d+|\d+`;
const UNIT = [...UNIT_TERMS.keys()]
  .sort((a, b) => b.length - a.length)
  .map((u) => u.replace(/[.*+?^${}()|[\]\\]/gu, String.raw`\$&`))
  .join('|');
/** A number with its unit, not inside a longer word: `m24 mm` and `24 mmx` are left to the word rule. */
const QUANTITY = new RegExp(String.raw`(?<![\p{L}\p{N}.\/-])(${NUMBER})[ \u00a0]?(${UNIT})(?![\p{L}\p{N}])`, 'gu');
const WORD = /[\p{L}\p{N}]+(?:[/.·-][\p{L}\p{N}]+)*/gu;

/** Words too common to part one document from another. */
const NOISE: ReadonlySet<string> = new Set([
  'a',
  'an',
  'and',
  'as',
  'at',
  'be',
  'by',
  'for',
  'from',
  'in',
  'is',
  'it',
  'of',
  'on',
  'or',
  'that',
  'the',
  'to',
  'with',
]);

/** Folds case, accents and look-alike signs, and writes fractions and mixed numbers in one way: `1 ½` as `1-1/2`. */
export function fold(text: string): string {
  return (
    text
      // A space first: compatibility folding would turn `1½` into `11/2`.
      .replace(/[\u00bc-\u00be\u2150-\u215e\u2189]/gu, ' $&')
      .replace(/[\u2032\u2033\u201c\u201d]/gu, '"')
      .normalize('NFKC')
      .replace(/\u2044/gu, '/')
      .replace(/[\u2010-\u2015\u2212]/gu, '-')
      .replace(/[\u22c5\u2219\u2022]/gu, '·')
      .normalize('NFD')
      .replace(/\p{M}+/gu, '')
      .toLowerCase()
      .replace(/(\d),(\d)/gu, '$1.$2')
      .replace(/×/gu, 'x')
      // Mixed numbers become one word; `5/8-11` has no whole number before the fraction and stays.
      .replace(/(?<![\d/.\p{L}-])(\d{1,2})\s+(\d{1,2}\/\d{1,3})(?!\d)/gu, '$1-$2')
      .replace(/(\d)\s+x\s+(\d)/gu, '$1x$2')
  );
}

function piecesOf(word: string): string[] {
  const pieces = new Set<string>();
  if (/^\d+-\d+\/\d+$/u.test(word) || /^\d+(?:[/.]\d+)?$/u.test(word)) return [];
  // `1-1/8-7` and `5/8-11`: the size in front of the pitch, never the halves of a fraction.
  const thread = /^((?:\d+-)?\d+\/\d+)-\d+$/u.exec(word);
  if (thread?.[1] !== undefined) return [thread[1]];
  // `m16x2`: the size alone.
  const metric = /^(m\d+(?:\.\d+)?)x\d/u.exec(word);
  if (metric?.[1] !== undefined) pieces.add(metric[1]);
  const parts = word.split(/[/.·-]/u);
  if (parts.length > 1) {
    for (const part of parts) if (part.length > 1) pieces.add(part);
    pieces.add(parts.join(''));
    for (let i = 1; i < parts.length - 1; i++) pieces.add(parts.slice(i).join('-'));
  }
  pieces.delete(word);
  return [...pieces];
}

function tokens(text: string): Token[] {
  const found: Token[] = [];
  const rest = fold(text).replace(QUANTITY, (_all, number: string, unit: string) => {
    const term = `${number}${UNIT_TERMS.get(unit) ?? unit}`;
    found.push({ whole: term, pieces: [number] });
    return ' ';
  });
  for (const [word] of rest.matchAll(WORD)) {
    if (NOISE.has(word)) continue;
    // A unit that stands alone says nothing.
    const unit = UNIT_TERMS.get(word);
    if (unit !== undefined && /[·.*-]/u.test(word)) found.push({ whole: unit, pieces: [] });
    else found.push({ whole: word, pieces: piecesOf(word) });
  }
  return found;
}

/** Terms under which `text` is filed: wholes and pieces, each once. */
export function indexTerms(text: string): string[] {
  return [...new Set(tokens(text).flatMap((t) => [t.whole, ...t.pieces]))];
}

/** Terms that a query asks for: wholes only, each once, since every one of them must be met. At most 12. */
export function queryTerms(text: string): string[] {
  return [...new Set(tokens(text.slice(0, 200)).map((t) => t.whole))].slice(0, 12);
}

/** Letters and digits run together: the last resort for a fragment out of the middle of a number. */
export function squeeze(text: string): string {
  return fold(text).replace(/[^\p{L}\p{N}]/gu, '');
}
