/** What the mistakes came to, as the table of DEVELOPERS.md. */

import type { Tally } from './run.ts';

export interface Sums {
  readonly made: number;
  readonly intended: number;
  readonly other: number;
  readonly missed: number;
  readonly placed: number;
}

export function sumsOf(tallies: readonly Tally[]): Sums {
  const all = tallies.flatMap((t) => t.mistakes);
  const count = (verdict: string): number => all.filter((m) => m.verdict === verdict).length;
  return {
    made: all.length,
    intended: count('intended'),
    other: count('other'),
    missed: count('missed'),
    placed: all.filter((m) => m.placed).length,
  };
}

/** Markdown, one row a kind and the sum below. */
export function mistakesTable(tallies: readonly Tally[]): string {
  const row = (name: string, s: Sums): string =>
    `| ${[name, s.made, s.intended, s.other, s.missed, s.placed].join(' | ')} |`;
  const kinds = tallies.map((t) => row(`${t.kind.name} (${t.kind.checks.join(', ')})`, sumsOf([t])));
  const head = '| Kind | Made | Caught by the intended check | By another | Missed | At the right line |';
  const sum = row(`**All ${tallies.length} kinds**`, sumsOf(tallies));
  return `${[head, '|---|--:|--:|--:|--:|--:|', ...kinds, sum].join('\n')}\n`;
}

/** `98.4 % of 700 caught, 97.0 % by the intended check` */
export function mistakesInWords(tallies: readonly Tally[]): string {
  const s = sumsOf(tallies);
  const share = (n: number): string => `${((100 * n) / Math.max(1, s.made)).toFixed(1)} %`;
  return `${s.made} mistakes of ${tallies.length} kinds: ${share(s.intended + s.other)} caught, ${share(s.intended)} by the intended check, ${share(s.placed)} at the right line`;
}
