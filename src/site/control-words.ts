/** Words about documents under control that pages share: standings, causes of notices, scopes, days. Pure functions. */

import type { DocumentState, Notice, TemporaryScope } from '../control/types.ts';
import { capital, count, list } from '../render/html/index.ts';
import type { StepMark } from '../resolve/types.ts';

export type StandingWord = DocumentState['standing'];

/** Capitals for the sign, one word a standing. */
export const STANDING_TEXT: Readonly<Record<StandingWord, string>> = {
  'in force': 'CURRENT',
  'not yet effective': 'NOT YET EFFECTIVE',
  suspended: 'SUSPENDED',
  withdrawn: 'WITHDRAWN',
  'draft only': 'DRAFT ONLY',
};

const CAUSES: Readonly<Record<Notice['cause'], string>> = {
  issue: 'new issue',
  suspend: 'suspended',
  reinstate: 'in force again',
  withdraw: 'withdrawn',
  temporary: 'temporary change',
  'temporary-end': 'temporary change ended',
  'temporary-expiry': 'temporary change ran out',
};

export function causeText(notice: Notice): string {
  return CAUSES[notice.cause];
}

/** `OF-204 Rev C (Large), 4 sides`, for what a notice takes out or puts in. */
function cardsText(cards: Notice['putIn']): string {
  return cards
    .map((c) => {
      const label = c.label === '' ? '' : ` (${c.label})`;
      const temporary = c.with === undefined || c.with.length === 0 ? '' : ` with ${list(c.with)}`;
      return `${c.doc} Rev\u00a0${c.rev}${label}${temporary}`;
    })
    .join('; ');
}

/** What goes out of the binder and what comes in. */
export function exchangeText({ takeOut, putIn }: Notice): string {
  const out = takeOut.length === 0 ? '' : `Out: ${cardsText(takeOut)}.`;
  return `${out}${putIn.length === 0 ? '' : ` In: ${cardsText(putIn)}.`}`.trim();
}

/** Age against the shop's limit in words. */
export function ageText({
  age,
  limitDays,
  overdue,
  due,
}: Pick<Notice, 'age' | 'limitDays' | 'overdue' | 'due'>): string {
  if (age === undefined) return `from ${due}`;
  const days = `${count(age, 'day')}, ${limitDays} allowed`;
  return overdue ? `OVERDUE, ${days}` : days;
}

export function scopeClauses(
  { benches, variants, serials }: TemporaryScope,
  name: { readonly bench: (id: string) => string; readonly variant: (key: string) => string },
): readonly string[] {
  return [
    ...(benches === undefined
      ? []
      : [`at the ${benches.length === 1 ? 'bench' : 'benches'} ${list(benches.map(name.bench))} only`]),
    ...(variants === undefined ? [] : [`${list(variants.map(name.variant))} only`]),
    ...(serials === undefined ? [] : [`serial numbers ${serials.from} to ${serials.to} only`]),
  ];
}

export function joinClauses(clauses: readonly string[]): string {
  return clauses.join('; ');
}

/** `last day`, `5 days left`: the last day counts as one. */
export function leftText(daysLeft: number): string {
  return daysLeft <= 1 ? 'last day' : `${count(daysLeft, 'day')} left`;
}

const MARKS: Readonly<Record<StepMark, string>> = {
  text: 'what is done',
  note: 'the note',
  warnings: 'warnings',
  joint: 'the joint',
  measures: 'measurements',
  lists: 'parts and tools',
  wait: 'the wait',
  points: 'hold points',
  records: 'what is written down',
};

/** What of a step changed, for those who do not see the bars. */
export function marksText(marks: readonly StepMark[]): string {
  return list(marks.map((m) => MARKS[m]));
}

/** Day before which something counts as recent: both days as `2026-03-02`. */
export function daysBefore(day: string, days: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) - days * 86_400_000).toISOString().slice(0, 10);
}

/** As a sentence of its own: with a capital and a full stop. */
export function sentence(text: string): string {
  const whole = capital(text.trim());
  return /[.!?]$/u.test(whole) ? whole : `${whole}.`;
}
