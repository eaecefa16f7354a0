/** What several checks of temporary changes ask. */

import { daysBetween, isDay } from '../../control/dates.ts';
import type { ResolvedShop, TemporaryDraft } from '../../resolve/index.ts';

/** For the examples: a sound temporary change of the example shop, as the file that holds it. */
export function exampleChange(changes: Readonly<Record<string, string>> = {}, number = 'TC-1'): string {
  const keys: Readonly<Record<string, string>> = {
    doc: 'MW-1',
    rev: 'A',
    step: '12',
    text: 'Use the long feeler gauge.',
    reason: 'The short one is away for calibration',
    author: 'ada',
    approver: 'ben',
    approved: '2026-02-02',
    from: '2026-02-03',
    until: '2026-04-30',
    ...changes,
  };
  const lines = Object.entries(keys).map(([key, value]) => `  ${key}: ${value}\n`);
  return `${number}:\n${lines.join('')}`;
}

/** Whether all its dates are days of the calendar; the others have their own report. */
export function isDated({ approved, from, until }: TemporaryDraft): boolean {
  return isDay(approved) && isDay(from) && isDay(until);
}

/** Days for which it holds after its first; below zero when it ends before it begins. */
export function daysOf({ from, until }: TemporaryDraft): number {
  return daysBetween(from, until);
}

/** Temporary changes to one issue, in the order in which they begin. */
export function byIssue(shop: ResolvedShop): readonly (readonly TemporaryDraft[])[] {
  const groups = Map.groupBy(shop.temporaryChanges.filter(isDated), (t) => `${t.doc} ${t.rev}`);
  return [...groups.values()].map((list) =>
    [...list].sort((a, b) => (a.from === b.from ? (a.number < b.number ? -1 : 1) : a.from < b.from ? -1 : 1)),
  );
}
