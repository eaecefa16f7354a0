/** Values that a text gives in two units: `135 N·m (100 lbf·ft)`. */

import { type Dimension, findUnit, parseQuantity, type Quantity, UNITS, valueIn } from '../../units/index.ts';

export interface UnitPair {
  readonly text: string;
  readonly start: number;
  readonly first: Quantity;
  readonly second: Quantity;
}

const NUMBER = String.raw`\d+[ -]\d+\/\d+|\d+\/\d+|\d+(?:[.,]\d+)?`;
const UNIT = [...new Set(UNITS.flatMap((u) => [u.symbol, ...u.spellings]))]
  .sort((a, b) => b.length - a.length)
  .map((s) => s.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&'))
  .join('|');
/** A value or a range: `44 to 48 N·m`. */
const value = (n: number) =>
  String.raw`(?:(?<from${n}>${NUMBER})\s+to\s+)?(?<to${n}>${NUMBER})[\s\u00a0]?(?<unit${n}>${UNIT})(?![\p{L}\p{N}])`;
/** The second value stands in brackets of its own, or behind a stroke or an equals sign. */
const PAIR = new RegExp(
  String.raw`(?<![\p{L}\p{N}.,/])${value(1)}\s*(?:(?<open>[(\[])\s*(?:about\s|approx\.?\s|=|≈|~)?\s*|[/=≈]\s*)${value(2)}(?<close>\s*[)\]])?`,
  'gu',
);

/** Pairs of one kind of quantity in two units; of a range each end is a pair. Anything else in brackets is left alone. */
export function unitPairs(text: string): readonly UnitPair[] {
  const pairs: UnitPair[] = [];
  for (const match of text.matchAll(PAIR)) {
    const g = match.groups ?? {};
    if ((g['open'] === undefined) !== (g['close'] === undefined)) continue;
    const { dimension } = findUnit(g['unit1'] ?? '') ?? {};
    if (dimension === undefined) continue;
    const ends = [
      [g['from1'], g['from2']],
      [g['to1'], g['to2']],
    ] as const;
    for (const [a, b] of ends) {
      const first = read(a, g['unit1'], dimension);
      const second = read(b, g['unit2'], dimension);
      if (first === undefined || second === undefined || first.unit === second.unit) continue;
      pairs.push({ text: match[0].trim(), start: match.index, first, second });
    }
  }
  return pairs;
}

function read(number: string | undefined, unit: string | undefined, dimension: Dimension): Quantity | undefined {
  if (number === undefined || unit === undefined) return undefined;
  const parsed = parseQuantity(`${number} ${unit}`, dimension);
  return parsed.ok ? parsed.value : undefined;
}

/** A hundredth: makers round so. With half of the last digit of both. Practice. */
const SHARE = 0.01;

/** Do the two say the same? Temperatures may also be differences of temperature. */
export function pairAgrees({ first, second }: UnitPair): boolean {
  const half = halfDigit(first) * factorTo(first, second.unit) + halfDigit(second);
  const near = (converted: number): boolean =>
    Math.abs(converted - second.value) <= SHARE * Math.max(Math.abs(converted), Math.abs(second.value)) + half + 1e-9;
  return (
    near(valueIn(first, second.unit)) ||
    (first.dimension === 'temperature' && near(first.value * factorTo(first, second.unit)))
  );
}

function factorTo(q: Quantity, unit: string): number {
  return (findUnit(q.unit, q.dimension)?.factor ?? 1) / (findUnit(unit, q.dimension)?.factor ?? 1);
}

/** Half a unit of the last digit as written; a fraction is exact. */
function halfDigit({ decimals, fraction }: Quantity): number {
  return fraction === undefined ? 10 ** -decimals / 2 : 0;
}

/** Names of sizes, not measures: a 4 in pipe is DN 100, and a 1/2 in square is called 12.5 mm. */
const NOMINAL = /\b(?:pipe|hose|valve|flange|bore|drive|square|DN|NPS)\b/iu;
const NOMINAL_SHARE = 0.1;

/** Whether a pair names a nominal size in inches and in millimetres. */
export function isNominal({ first, second }: UnitPair, text: string): boolean {
  if (first.dimension !== 'length' || ![first.unit, second.unit].includes('in')) return false;
  return Math.abs(first.si / second.si - 1) <= NOMINAL_SHARE && NOMINAL.test(text);
}
