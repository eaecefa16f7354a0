/** Whether an act of control may be done, and the line that records it. Each throws ControlFault with what is in its way. */

import { didYouMean } from '../diagnostics/index.ts';
import type { Person, ResolvedShop } from '../resolve/types.ts';
import { daysBetween, isDay } from './dates.ts';
import { noticesOf } from './notices.ts';
import { documentStates } from './state.ts';
import type {
  ChangeClass,
  Distribution,
  DocumentState,
  Ledger,
  Notice,
  ReceiptEntry,
  ReinstateEntry,
  ReviewEntry,
  SuspendEntry,
  TemporaryEndEntry,
  WithdrawEntry,
} from './types.ts';
import { type Act, ControlFault } from './write-ledger.ts';

/** What an act is judged by. */
export interface ActFacts {
  readonly ledger: Ledger;
  /** The compiled content. */
  readonly shop: ResolvedShop;
  /** Day of the clock. */
  readonly today: string;
}

type Given<E> = Omit<E, 'kind' | 'seq' | 'prev' | 'seal' | 'recorded' | 'signature' | 'distribution'>;

export function suspendAct(facts: ActFacts, { doc, reason, by }: Given<SuspendEntry>): Act {
  const state = stateOf(facts, doc);
  person(facts, by);
  if (state.suspended !== undefined) {
    throw new ControlFault(
      `${doc} is suspended already, since ${state.suspended.recorded}: ${state.suspended.reason}`,
      'nothing is to be done',
    );
  }
  if (state.withdrawn !== undefined) refuseWithdrawn(facts, doc);
  return { kind: 'suspend', doc, reason, by, distribution: distributionOf(facts, doc) };
}

export function reinstateAct(facts: ActFacts, { doc, reason, by, approver }: Given<ReinstateEntry>): Act {
  const state = stateOf(facts, doc);
  if (state.suspended === undefined) throw new ControlFault(`${doc} is not suspended`, 'nothing is to be done');
  approval(facts, by, approver, 'major', 'asks for it');
  return { kind: 'reinstate', doc, reason, by, approver, distribution: distributionOf(facts, doc) };
}

export function withdrawAct(
  facts: ActFacts,
  { doc, reason, by, approver, effective, replacement }: Given<WithdrawEntry>,
): Act {
  stateOf(facts, doc);
  refuseWithdrawn(facts, doc);
  approval(facts, by, approver, 'major', 'asks for it');
  day(effective, 'effective date');
  if (effective < facts.today) {
    throw new ControlFault(`${effective} is past`, `let it take effect today (${facts.today}) or later`);
  }
  if (replacement !== undefined) {
    if (replacement === doc)
      throw new ControlFault('a document does not replace itself', 'name the document to use instead');
    stateOf(facts, replacement);
  }
  return {
    kind: 'withdraw',
    doc,
    reason,
    by,
    approver,
    effective,
    ...(replacement === undefined ? {} : { replacement }),
    distribution: distributionOf(facts, doc),
  };
}

export function endTemporaryAct(facts: ActFacts, { number, reason, by }: Given<TemporaryEndEntry>): Act {
  person(facts, by);
  const { entries } = facts.ledger;
  const change = entries.find((e) => e.kind === 'temporary' && e.number === number);
  if (change?.kind !== 'temporary') {
    const numbers = entries.flatMap((e) => (e.kind === 'temporary' ? [e.number] : []));
    throw new ControlFault(
      `no temporary change ${number} was issued`,
      didYouMean(number, numbers) ??
        (numbers.length === 0 ? 'none was issued so far' : `issued are ${numbers.join(', ')}`),
    );
  }
  if (entries.some((e) => e.kind === 'temporary-end' && e.number === number)) {
    throw new ControlFault(`temporary change ${number} has ended already`, 'nothing is to be done');
  }
  if (change.until < facts.today) {
    throw new ControlFault(`temporary change ${number} has expired on ${change.until}`, 'nothing is to be done');
  }
  return { kind: 'temporary-end', number, reason, by, distribution: distributionOf(facts, change.doc) };
}

export function reviewAct(facts: ActFacts, { doc, by, on, finding }: Omit<Given<ReviewEntry>, 'rev'>): Act {
  const state = stateOf(facts, doc);
  person(facts, by);
  refuseWithdrawn(facts, doc);
  day(on, 'day of the review');
  if (on > facts.today)
    throw new ControlFault(`the review of ${on} is still to come`, 'enter it when it has been done');
  if (state.current === undefined) {
    throw new ControlFault(`${doc} has no revision in force to be reviewed`, 'enter the review once one is in force');
  }
  return { kind: 'review', doc, rev: state.current.rev, by, on, finding };
}

/** A receipt as it is entered. `bench` may be left out when only one bench has the notice. */
export interface GivenReceipt {
  readonly notice: string;
  readonly bench?: string;
  readonly by: string;
  readonly on: string;
}

export function receiptAct(
  facts: ActFacts,
  { notice, bench, by, on }: GivenReceipt,
): Extract<Act, { kind: 'receipt' }> {
  person(facts, by);
  day(on, 'day of the receipt');
  if (on > facts.today)
    throw new ControlFault(`the receipt of ${on} is still to come`, 'give the day on the signed notice');
  const { entries } = facts.ledger;
  const states = documentStates(entries, facts.today);
  const { open, received } = noticesOf({
    entries,
    states,
    benches: facts.shop.benches,
    rules: facts.shop.info.control,
    asOf: facts.today,
  });
  const found = matching(open, notice, bench);
  if (found !== undefined) {
    if (on < found.due) {
      throw new ControlFault(
        `${found.number} is to be done on ${found.due}, and the receipt is of ${on}`,
        'what is put in before its day is worked from before its day: exchange the cards then, and enter the receipt',
      );
    }
    return { kind: 'receipt', notice: found.number, bench: found.bench, copy: found.copy, by, on };
  }
  const done = matching(received, notice, bench)?.receipt as ReceiptEntry | undefined;
  if (done !== undefined) {
    throw new ControlFault(
      `the receipt of ${notice} from ${done.bench} is there already, of ${done.on}`,
      'nothing is to be done',
    );
  }
  const names = open.map((n) => `${n.number} ${n.bench}`);
  throw new ControlFault(
    `no notice ${notice}${bench === undefined ? '' : ` for the bench \`${bench}\``} waits for a receipt`,
    didYouMean(`${notice} ${bench ?? ''}`.trim(), names) ??
      (names.length === 0 ? 'no notice waits' : `waiting are ${names.join('; ')}`),
  );
}

function matching(notices: readonly Notice[], number: string, bench: string | undefined): Notice | undefined {
  const found = notices.filter((n) => n.number === number && (bench === undefined || n.bench === bench));
  if (found.length < 2) return found[0];
  throw new ControlFault(
    `notice ${number} went to ${found.length} benches`,
    `say whose receipt it is: ${found.map((n) => `\`--bench ${n.bench}\``).join(', ')}`,
  );
}

// --- what several acts ask for ---------------------------------------------------------------------------------------

/** The state of a document that was issued. */
export function stateOf({ ledger, shop, today }: ActFacts, doc: string): DocumentState {
  // What holds from a later day on counts as well.
  const states = documentStates(ledger.entries, today);
  const state = states.find((s) => s.doc === doc);
  if (state !== undefined && state.issues.length > 0) return state;
  const known = states.map((s) => s.doc);
  throw new ControlFault(
    shop.documents.some((d) => d.doc === doc) ? `${doc} was never issued` : `there is no document ${doc}`,
    didYouMean(doc, known) ?? (known.length === 0 ? 'no document was issued so far' : `issued are ${known.join(', ')}`),
  );
}

/** A withdrawal that is still to come counts as well. */
export function refuseWithdrawn({ ledger }: Pick<ActFacts, 'ledger'>, doc: string): void {
  const gone = ledger.entries.find((e) => e.kind === 'withdraw' && e.doc === doc);
  if (gone?.kind !== 'withdraw') return;
  throw new ControlFault(`${doc} was withdrawn (${gone.effective})`, 'a withdrawn number is not used again');
}

export function person({ shop }: ActFacts, id: string): Person {
  const found = shop.people.find((p) => p.id === id);
  if (found !== undefined) return found;
  const ids = shop.people.map((p) => p.id);
  throw new ControlFault(`\`${id}\` is not in people.yaml`, didYouMean(id, ids) ?? `known are ${ids.join(', ')}`);
}

/** Two people, and the second may approve the class. */
export function approval(facts: ActFacts, author: string, approver: string, level: ChangeClass, does: string): void {
  person(facts, author);
  const second = person(facts, approver);
  if (author === approver) {
    throw new ControlFault(`\`${author}\` ${does} and would approve it too`, 'have it approved by a second person');
  }
  if (!second.approves.includes(level)) {
    const able = facts.shop.people
      .filter((p) => p.approves.includes(level) && p.id !== author)
      .map((p) => `\`${p.id}\``);
    throw new ControlFault(
      `\`${approver}\` may not approve ${level} changes by people.yaml`,
      able.length === 0 ? 'nobody else may' : `those who may: ${able.join(', ')}`,
    );
  }
}

export function day(text: string, what: string): void {
  if (!isDay(text)) throw new ControlFault(`\`${text}\` is not a day (${what})`, 'write it like 2026-03-02');
}

/** Benches that hold the document now; when the binders no longer name it, those of the last line about it. */
export function distributionOf({ shop, ledger }: ActFacts, doc: string): Distribution {
  const now = shop.benches.filter((b) => b.binder.includes(doc)).map((b) => ({ bench: b.id, copy: b.copy }));
  if (now.length > 0) return now;
  const last = ledger.entries.filter((e) => 'distribution' in e && 'doc' in e && e.doc === doc).at(-1);
  return last !== undefined && 'distribution' in last ? last.distribution : [];
}

/** Days stand in the ledger in their order: a clock that was set back would let an old issue pass for a new one. */
export function checkClock({ ledger, today }: Pick<ActFacts, 'ledger' | 'today'>): void {
  const last = ledger.entries.at(-1);
  if (last === undefined || today >= last.recorded) return;
  throw new ControlFault(
    `the clock of this machine says ${today}, and the last line of the ledger was written on ${last.recorded}, ${daysBetween(today, last.recorded)} days later`,
    'set the clock',
  );
}
