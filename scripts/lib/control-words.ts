/** Words in which the commands of control say what was done, whom it concerns, and what is still to do. */

import {
  type Comparison,
  type Distribution,
  daysBetween,
  documentStates,
  type Entry,
  type Ledger,
  type Notice,
  type NoticeCard,
  noticesOf,
} from '../../src/control/index.ts';
import type { ResolvedShop } from '../../src/resolve/index.ts';

export function counted(n: number, one: string, many = `${one}s`): string {
  return `${n} ${n === 1 ? one : many}`;
}

/** `2026-03-02, tomorrow`; days are texts. */
export function dayWords(day: string, today: string): string {
  const days = daysBetween(today, day);
  if (days === 0) return `${day}, today`;
  if (days === 1) return `${day}, tomorrow`;
  return days > 0 ? `${day}, in ${days} days` : `${day}, ${counted(-days, 'day')} ago`;
}

/** `Maren Osei, Quality lead`; the id of somebody whom the register no longer knows. */
export function personWords({ people }: ResolvedShop, id: string): string {
  const found = people.find((p) => p.id === id);
  return found === undefined ? id : `${found.name}, ${found.role}`;
}

/** Lines of two columns: `  class of change  major`. */
export function columns(rows: readonly (readonly [string, string])[]): readonly string[] {
  const width = Math.max(...rows.map(([head]) => head.length)) + 2;
  return rows.map(([head, text]) => `  ${head.padEnd(width)}${text}`);
}

/** Rows of any number of columns, each as wide as its longest cell. */
export function table(rows: readonly (readonly string[])[]): readonly string[] {
  const widths = (rows[0] ?? []).map((_, i) => Math.max(...rows.map((r) => (r[i] ?? '').length)));
  return rows.map((r) => `  ${r.map((cell, i) => cell.padEnd(widths[i] ?? 0)).join('  ')}`.trimEnd());
}

/** One line a bench: `  heat-exchange  Heat exchange, hall 2  copy 3`. */
export function benchLines({ benches }: ResolvedShop, distribution: Distribution): readonly string[] {
  return table(
    distribution.map(({ bench, copy }) => {
      const found = benches.find((b) => b.id === bench);
      return [bench, found === undefined ? 'not in benches.yaml' : `${found.name}, ${found.place}`, `copy ${copy}`];
    }),
  );
}

/** A heading with the benches of a line, or that there is none. */
export function visitLines(shop: ResolvedShop, distribution: Distribution, heading: string): readonly string[] {
  return distribution.length === 0
    ? ['no bench holds a copy']
    : [`${heading} (${counted(distribution.length, 'bench', 'benches')})`, ...benchLines(shop, distribution)];
}

/** `signed by …`, or that it is not. */
export function signatureWords(entry: Entry, shop: ResolvedShop): string {
  const { signature } = entry;
  return signature === undefined ? 'not signed' : `signed by ${personWords(shop, signature.by)} (key ${signature.key})`;
}

/** The changes as the master copy lists them; a sentence when there is none. */
export function changeLines(comparison: Comparison | undefined): readonly string[] {
  if (comparison === undefined) return ['first issue of this document'];
  const { from, changes } = comparison;
  if (changes.length === 0) {
    return [`nothing has changed in meaning since Rev ${from}: every bench exchanges its cards for the same work`];
  }
  return [`changed since Rev ${from}`, ...changes.map((c) => `  ${c.words}`)];
}

/** Notices that wait for a receipt on a day, oldest first. */
export function openNotices(ledger: Ledger, { benches, info }: ResolvedShop, asOf: string): readonly Notice[] {
  const { entries } = ledger;
  const states = documentStates(entries, asOf);
  return noticesOf({ entries, states, benches, rules: info.control, asOf }).open;
}

/** Every open notice with its age and its limit; says so when none is open. */
export function openLines(open: readonly Notice[], today: string): readonly string[] {
  if (open.length === 0) return ['every notice has its receipt'];
  const late = open.filter((n) => n.overdue).length;
  return [
    `${counted(open.length, 'receipt')} open${late === 0 ? '' : `, ${late} overdue`}`,
    ...table(open.map((n) => [n.number, n.bench, `copy ${n.copy}`, `${n.doc}: ${taskWords(n)}`, ageWords(n, today)])),
  ];
}

/** `take out Rev B, put in Rev C` */
function taskWords({ takeOut, putIn, doc }: Notice): string {
  const out = cardWords(takeOut, doc);
  const into = cardWords(putIn, doc);
  const parts = [out === '' ? '' : `take out ${out}`, into === '' ? '' : `put in ${into}`].filter((t) => t !== '');
  return parts.length === 0 ? 'nothing hangs there' : parts.join(', ');
}

function cardWords(cards: readonly NoticeCard[], doc: string): string {
  const revs = cards.map((c) => {
    const own = `${c.doc === doc ? '' : `${c.doc} `}Rev ${c.rev}`;
    return c.with === undefined ? own : `${own} with ${c.with.join(', ')}`;
  });
  return [...new Set(revs)].join(' and ');
}

function ageWords({ age, due, limitDays, overdue }: Notice, today: string): string {
  const limit = `limit ${counted(limitDays, 'day')}`;
  if (age === undefined) return `to be done on ${dayWords(due, today)}; ${limit}`;
  const open = age === 0 ? 'open since today' : `open for ${counted(age, 'day')}`;
  return overdue ? `${open}; ${limit}: OVERDUE by ${counted(age - limitDays, 'day')}` : `${open}; ${limit}`;
}
