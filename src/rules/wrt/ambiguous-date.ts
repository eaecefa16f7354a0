/** A date that two readers read as two days. */

import type { Range } from '../../diagnostics/index.ts';
import { READ_FROM, type ResolvedShop } from '../../resolve/index.ts';
import type { Node, ScalarNode } from '../../source/index.ts';
import type { Check } from '../check.ts';
import { inEnglish } from './english.ts';
import { insetOf } from './place.ts';

const DATE =
  /(?<![\p{L}\p{N}./-])(\d{1,2})([/.-])(\d{1,2})\2(\d{4}|\d{2})(?![\p{L}\p{N}]|[./-]\d)(?! ?(?:mm|in|bar|cm|m)\b)/gu;
const LOOKS_LIKE = /\d[/.-]\d/;
/** Values of these keys are dates themselves and are refused in any other form when they are read. */
const DATE_KEYS = new Set(['effective', 'approved', 'calibration_due']);

/** The days that a date may be, as `2025-11-07`, in the order in which people read them. */
export function readingsOfDate(a: string, sign: string, b: string, c: string): readonly string[] {
  const year = (y: string) => (y.length === 4 ? y : `20${y.padStart(2, '0')}`);
  const found = [day(year(c), b, a), day(year(c), a, b)];
  // Two digits with points or hyphens are a part or a section number more often than a date.
  if (c.length === 2) {
    if (sign !== '/') return [];
    found.push(day(year(a), b, c));
  }
  return [...new Set(found.filter((d) => d !== undefined))];
}

function day(year: string, month: string, date: string): string | undefined {
  const [m, d] = [Number(month), Number(date)];
  if (m < 1 || m > 12 || d < 1 || d > new Date(Date.UTC(Number(year), m, 0)).getUTCDate()) return undefined;
  return `${year}-${month.padStart(2, '0')}-${date.padStart(2, '0')}`;
}

interface Text {
  readonly node: ScalarNode;
  /** A key of the file's own map. */
  readonly atEdge: boolean;
}

/** Visits every text of the shop's files that something resolved was read from, once. */
function eachScalar(shop: ResolvedShop, visit: (text: Text) => void): void {
  for (const thing of [...shop.machines, ...shop.documents]) walk(thing[READ_FROM], true, visit);
  const registers = [shop.people, shop.benches, shop.tools, shop.consumables];
  for (const thing of registers.flat()) walk(thing[READ_FROM], false, visit);
  const seen = new Set<Node>();
  for (const { variants } of shop.documents)
    for (const { stages } of variants)
      for (const { shared, steps } of stages) {
        if (shared === undefined) continue;
        for (const { [READ_FROM]: node } of steps) {
          if (seen.has(node)) continue;
          seen.add(node);
          walk(node, false, visit);
        }
      }
}

function walk(node: Node, atEdge: boolean, visit: (text: Text) => void): void {
  if (node.kind === 'scalar') {
    if (typeof node.value === 'string' && LOOKS_LIKE.test(node.value)) visit({ node, atEdge });
  } else if (node.kind === 'sequence') for (const item of node.items) walk(item, false, visit);
  else
    for (const { key, value } of node.entries)
      if (!DATE_KEYS.has(key)) walk(value, atEdge && value.kind === 'scalar', visit);
}

/** The date itself where the text stands unbroken on its line, else the whole field. */
function placeIn({ node: { value, range }, atEdge }: Text, index: number, length: number): Range {
  const inset = insetOf(String(value), range, atEdge);
  if (inset === undefined) return range;
  const start = range.start + inset + index;
  return { file: range.file, start, end: start + length };
}

export const ambiguousDate: Check = {
  code: 'WRT012',
  name: 'ambiguous-date',
  severity: 'warning',
  title: 'A date can be read as more than one day.',
  why: 'One reader takes 7/11/25 for July and the next one for November; the wrench is then four months overdue, or the card not yet in force.',
  sources: ['ISO 8601-1:2019: year, month and day in this order, 2025-07-11'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '        fit: [gasket, cover]\n',
        to: '        fit: [gasket, cover]\n        note: Gaskets bought before «7/11/25» have no lug.\n',
      },
    ],
    good: [
      {
        file: 'procedures/mw-1.yaml',
        from: '        fit: [gasket, cover]\n',
        to: '        fit: [gasket, cover]\n        note: Gaskets bought before 2025-11-07 have no lug.\n',
      },
    ],
  },
  found: inEnglish((shop, tell) => {
    eachScalar(shop, (text) => {
      for (const match of String(text.node.value).matchAll(DATE)) {
        const [written, a = '', sign = '', b = '', c = ''] = match;
        const days = readingsOfDate(a, sign, b, c);
        if (days.length < 2) continue;
        tell(placeIn(text, match.index, written.length), `\`${written}\` may be ${days.join(' or ')}`, {
          hint: 'look up which day is meant, and write it as year, month, day: YYYY-MM-DD',
        });
      }
    });
  }),
};
