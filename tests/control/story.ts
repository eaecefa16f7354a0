/** Histories for tests of what follows from them: short words for acts, one line each, unsigned. */

import { noticesOf } from '../../src/control/notices.ts';
import { documentStates } from '../../src/control/state.ts';
import type { ChangeClass, DocumentState, Entry, Notice, TemporaryScope } from '../../src/control/types.ts';
import type { Act } from '../../src/control/write-ledger.ts';
import { READ_FROM } from '../../src/resolve/read-from.ts';
import type { Bench } from '../../src/resolve/types.ts';
import { append, issueAct, RULES } from './history.ts';

const EVERYWHERE = [
  { bench: 'pumps', copy: 1 },
  { bench: 'winch', copy: 2 },
];

export type Told = readonly [on: string, act: Act];

export function issue(doc: string, rev: string, effective: string, level: ChangeClass = 'major'): Act {
  const change = { class: level, what: `What ${rev} changes`, why: 'The bench asked for it' };
  const approved = effective;
  return issueAct(doc, rev, `${doc} ${rev}`, { effective, approved, change, distribution: EVERYWHERE });
}

export function suspend(doc: string): Act {
  return { kind: 'suspend', doc, reason: 'A cover cracked', by: 'ada', distribution: EVERYWHERE };
}

export function reinstate(doc: string): Act {
  return { kind: 'reinstate', doc, reason: 'A bad casting', by: 'ada', approver: 'ben', distribution: EVERYWHERE };
}

export function withdraw(doc: string, effective: string): Act {
  return { kind: 'withdraw', doc, reason: 'Scrapped', by: 'ada', approver: 'ben', effective, distribution: EVERYWHERE };
}

export function temporary(
  number: string,
  doc: string,
  rev: string,
  from: string,
  until: string,
  scope: TemporaryScope = {},
): Act {
  const text = 'Use the long socket.';
  const by = { author: 'ada', approver: 'ben', approved: from };
  return {
    kind: 'temporary',
    number,
    doc,
    rev,
    step: 3,
    text,
    reason: 'It fouls',
    scope,
    ...by,
    from,
    until,
    distribution: EVERYWHERE,
  };
}

export function end(number: string): Act {
  return { kind: 'temporary-end', number, reason: 'The casting was changed', by: 'ada', distribution: EVERYWHERE };
}

export function receipt(notice: string, bench: string, on: string): Act {
  return { kind: 'receipt', notice, bench, copy: bench === 'pumps' ? 1 : 2, by: 'ada', on };
}

export function review(doc: string, rev: string, on: string): Act {
  return { kind: 'review', doc, rev, by: 'ada', on, finding: 'Still so' };
}

export function story(...told: readonly Told[]): readonly Entry[] {
  let entries: readonly Entry[] = [];
  for (const [on, act] of told) entries = append(entries, on, act);
  return entries;
}

/** The one document of the history, or the one asked for. */
export function stateOn(entries: readonly Entry[], day: string, doc = 'MW-1'): DocumentState {
  const found = documentStates(entries, day).find((s) => s.doc === doc);
  if (found === undefined) throw new Error(`${doc} is not there on ${day}`);
  return found;
}

const range = { file: 'shop/benches.yaml', start: 0, end: 0 };
const from = { [READ_FROM]: { kind: 'scalar', value: null, range }, keyRange: range } as const;
const BENCHES: readonly Bench[] = [
  { id: 'pumps', name: 'Pumps', place: 'Hall 1', lead: 'ada', binder: ['MW-1'], copy: 1, ...from },
  { id: 'winch', name: 'Winch', place: 'Slip', lead: 'ada', binder: ['MW-1'], copy: 2, ...from },
];

export function noticesOn(entries: readonly Entry[], day: string): ReturnType<typeof noticesOf> {
  return noticesOf({ entries, states: documentStates(entries, day), benches: BENCHES, rules: RULES, asOf: day });
}

/** `CN-3 out A in B` for the notices of one bench; a card with temporary changes as `B+TC-01`. */
export function told(notices: readonly Notice[], bench = 'pumps'): readonly string[] {
  const cards = (list: Notice['putIn']): string => {
    const names = list.map((c) => `${c.rev}${c.with === undefined ? '' : `+${c.with.join('+')}`}`);
    return names.length === 0 ? '-' : [...new Set(names)].join(' ');
  };
  return notices
    .filter((n) => n.bench === bench)
    .map((n) => `${n.number} ${n.cause} out ${cards(n.takeOut)} in ${cards(n.putIn)}`);
}
