/** What follows for the binders from each line of the ledger: cards to take out and to put in, from which day on. */

import type { Bench, ControlRules } from '../resolve/types.ts';
import { addDays } from './dates.ts';
import { cardFile } from './state.ts';
import type {
  ChangeClass,
  DocumentState,
  Entry,
  IssueEntry,
  Notice,
  NoticeCard,
  SuspendEntry,
  TemporaryEntry,
} from './types.ts';

export interface NoticeFacts {
  readonly entries: readonly Entry[];
  readonly states: readonly DocumentState[];
  readonly benches: readonly Bench[];
  readonly rules: ControlRules;
  readonly asOf: string;
}

/** What a line causes, before it is spread over the benches. */
export interface Cause {
  /** Number of the line. */
  readonly seq: number;
  /** Number of the temporary change that it concerns. */
  readonly change?: string;
  readonly number: string;
  readonly cause: Notice['cause'];
  readonly doc: string;
  readonly title: string;
  readonly class: ChangeClass;
  readonly due: string;
  readonly limitDays: number;
  readonly takeOut: readonly NoticeCard[];
  readonly putIn: readonly NoticeCard[];
  readonly what: string;
  readonly why: string;
  readonly approver?: string;
  readonly benches: readonly { readonly bench: string; readonly copy: number }[];
}

/** Causes in the order of their days. */
export function causesOf({ entries, states, rules, asOf }: NoticeFacts): readonly Cause[] {
  const byDoc = new Map(states.map((s) => [s.doc, s]));
  /** The issue whose cards hang when a line is written: the last one before it that holds by then. */
  const hanging = (doc: string, seq: number, day: string): IssueEntry | undefined =>
    byDoc
      .get(doc)
      ?.issues.filter((i) => i.seq < seq && i.effective <= day)
      .at(-1);
  const ends = new Map(
    entries.flatMap((e) => (e.kind === 'temporary-end' && e.recorded <= asOf ? [[e.number, e] as const] : [])),
  );
  const changes = new Map(entries.flatMap((e) => (e.kind === 'temporary' ? [[e.number, e] as const] : [])));
  const causes: Cause[] = [];
  for (const entry of entries) {
    if (entry.recorded > asOf || entry.kind === 'receipt' || entry.kind === 'review') continue;
    const number = `CN-${entry.seq}`;
    const doc = entry.kind === 'temporary-end' ? changes.get(entry.number)?.doc : entry.doc;
    const state = doc === undefined ? undefined : byDoc.get(doc);
    if (state === undefined || doc === undefined) continue;
    const base = { seq: entry.seq, number, doc, title: state.title, benches: entry.distribution };
    const safety = { class: 'major' as const, limitDays: rules.receiptDays.suspension };
    switch (entry.kind) {
      case 'issue': {
        const old = state.issues[state.issues.indexOf(entry) - 1];
        causes.push({
          ...base,
          cause: 'issue',
          title: entry.title,
          class: entry.change.class,
          // What hung on the wall before the ledger was begun is to be exchanged for numbered copies from the day of its line on.
          due: [entry.effective, entry.recorded].sort().at(-1) ?? entry.effective,
          limitDays: rules.receiptDays[entry.change.class],
          takeOut: old === undefined ? [] : cardsOf(old),
          putIn: cardsOf(entry, (variant) => cardFile(entry, variant, state.coming.includes(entry))),
          what: entry.change.what,
          why: entry.change.why,
          approver: entry.approver,
        });
        break;
      }
      case 'suspend': {
        // Lifted since: nothing is left to be done.
        if (state.suspended?.seq !== entry.seq) break;
        const old = hanging(doc, entry.seq, entry.recorded);
        causes.push({
          ...base,
          ...safety,
          cause: 'suspend',
          due: entry.recorded,
          takeOut: old === undefined ? [] : cardsOf(old),
          putIn: [],
          what: 'Suspended: no copy may be used',
          why: entry.reason,
        });
        break;
      }
      case 'reinstate': {
        const old = hanging(doc, entry.seq, entry.recorded);
        causes.push({
          ...base,
          cause: 'reinstate',
          class: 'major',
          limitDays: rules.receiptDays.major,
          due: entry.recorded,
          takeOut: [],
          putIn: old === undefined ? [] : cardsOf(old, (variant) => cardFile(old, variant, false)),
          what: 'The suspension is lifted',
          why: entry.reason,
          approver: entry.approver,
        });
        break;
      }
      case 'withdraw': {
        const old = hanging(doc, entry.seq, entry.effective);
        causes.push({
          ...base,
          cause: 'withdraw',
          class: 'major',
          limitDays: rules.receiptDays.major,
          due: entry.effective,
          takeOut: old === undefined ? [] : cardsOf(old),
          putIn: [],
          what: entry.replacement === undefined ? 'Withdrawn' : `Withdrawn: use ${entry.replacement}`,
          why: entry.reason,
          approver: entry.approver,
        });
        break;
      }
      case 'temporary':
        causes.push(...temporaryCauses(entry, base, state, ends.get(entry.number)?.recorded, rules, asOf));
        break;
      case 'temporary-end': {
        const change = changes.get(entry.number);
        const of = state.issues.find((i) => i.rev === change?.rev);
        // Ended before it began: it never hung there.
        if (change === undefined || of === undefined || entry.recorded < change.from) break;
        causes.push({
          ...base,
          benches: inScope(entry.distribution, change),
          cause: 'temporary-end',
          change: change.number,
          class: 'major',
          limitDays: rules.receiptDays.major,
          due: entry.recorded,
          ...exchange(of, change, 'without'),
          what: `Temporary change ${change.number} has ended`,
          why: entry.reason,
        });
        break;
      }
    }
  }
  const gone = new Map(
    entries.flatMap((e) => (e.kind === 'withdraw' && e.recorded <= asOf ? [[e.doc, e.effective] as const] : [])),
  );
  return causes
    .filter((c) => !isStopped(c, byDoc.get(c.doc)?.suspended, gone.get(c.doc)))
    .sort((a, b) => (a.due === b.due ? 0 : a.due < b.due ? -1 : 1));
}

/** Nothing is put in while a document is suspended, or once it is withdrawn: the reinstatement asks for what holds then. */
function isStopped({ cause, due, seq }: Cause, stop: SuspendEntry | undefined, gone: string | undefined): boolean {
  if (cause === 'withdraw') return false;
  if (gone !== undefined && due >= gone) return true;
  return (
    cause !== 'suspend' && stop !== undefined && (due > stop.recorded || (due === stop.recorded && seq > stop.seq))
  );
}

/** The change itself, and its expiry when its last day is over. */
function temporaryCauses(
  entry: TemporaryEntry,
  base: Pick<Cause, 'seq' | 'number' | 'doc' | 'title'>,
  state: DocumentState,
  ended: string | undefined,
  rules: ControlRules,
  asOf: string,
): readonly Cause[] {
  const of = state.issues.find((i) => i.rev === entry.rev);
  // Ended before it began: it was never to be put in.
  if (of === undefined || (ended !== undefined && ended < entry.from)) return [];
  const shared = {
    ...base,
    change: entry.number,
    class: 'major' as const,
    limitDays: rules.receiptDays.major,
    benches: inScope(entry.distribution, entry),
  };
  const begun: Cause = {
    ...shared,
    cause: 'temporary',
    due: entry.from,
    ...exchange(of, entry, 'with'),
    what: `Temporary change ${entry.number} until ${entry.until}: ${entry.text}`,
    why: entry.reason,
    approver: entry.approver,
  };
  // A new issue takes the card out, and the change with it.
  const replaced = state.issues.some((i) => i.seq > of.seq && i.effective <= addDays(entry.until, 1));
  if (ended !== undefined || replaced || asOf <= entry.until) return [begun];
  const expiry: Cause = {
    ...shared,
    number: `${base.number}-END`,
    cause: 'temporary-expiry',
    due: addDays(entry.until, 1),
    ...exchange(of, entry, 'without'),
    what: `Temporary change ${entry.number} has expired`,
    why: `Its last day was ${entry.until}`,
  };
  return [begun, expiry];
}

function inScope(distribution: Cause['benches'], change: TemporaryEntry): Cause['benches'] {
  const { benches } = change.scope;
  return benches === undefined ? distribution : distribution.filter((d) => benches.includes(d.bench));
}

/** Cards in the scope of a temporary change, exchanged for the same ones with it or without it. */
function exchange(
  issue: IssueEntry,
  change: TemporaryEntry,
  then: 'with' | 'without',
): Pick<Cause, 'takeOut' | 'putIn'> {
  const { variants } = change.scope;
  const all = cardsOf(issue, (variant) => cardFile(issue, variant, false));
  const cards = all.filter((_, i) => variants === undefined || variants.includes(issue.cards[i]?.variant ?? ''));
  const plain = cards.map(({ file: _file, ...card }) => card);
  const changed = cards.map((card) => ({ ...card, with: [change.number] }));
  return then === 'with'
    ? { takeOut: plain, putIn: changed }
    : { takeOut: changed.map(({ file: _file, ...card }) => card), putIn: cards };
}

function cardsOf(issue: IssueEntry, file?: (variant: string) => string): readonly NoticeCard[] {
  return issue.cards.map((c) => ({
    doc: issue.doc,
    rev: issue.rev,
    label: c.label,
    sides: c.sides,
    fingerprint: c.fingerprint,
    ...(file === undefined ? {} : { file: file(c.variant) }),
  }));
}
