/** Does one act of the demo's history. */

import {
  type ActFacts,
  documentStates,
  noticesOf,
  type privateKey,
  receiptAct,
  reinstateAct,
  reviewAct,
  suspendAct,
  withdrawAct,
} from '../../src/control/index.ts';
import {
  type Compiled,
  type ControlOptions,
  issueDocument,
  issueTemporary,
  recordActs,
} from '../../src/pipeline/index.ts';
import type { DemoAct } from './acts.ts';

/** sign: the private key of an approver. */
export function perform(
  compiled: Compiled,
  act: DemoAct,
  options: ControlOptions,
  sign: (id: string) => ReturnType<typeof privateKey>,
): void {
  const shop = compiled.resolved;
  const signed = (id: string) => {
    const key = sign(id);
    return key === undefined ? options : { ...options, key };
  };
  switch (act.do) {
    case 'issue': {
      const approver = shop.documents.find((d) => d.doc === act.doc)?.revision.approver ?? '';
      issueDocument(compiled, act.doc, signed(approver));
      return;
    }
    case 'temporary': {
      const approver = shop.temporaryChanges.find((t) => t.number === act.number)?.approver ?? '';
      issueTemporary(compiled, act.number, signed(approver));
      return;
    }
    case 'suspend':
      recordActs(compiled, options, undefined, (facts) => [suspendAct(facts, act)]);
      return;
    case 'reinstate':
      recordActs(compiled, signed(act.approver), act.approver, (facts) => [reinstateAct(facts, act)]);
      return;
    case 'withdraw':
      recordActs(compiled, signed(act.approver), act.approver, (facts) => [withdrawAct(facts, act)]);
      return;
    case 'review':
      recordActs(compiled, options, undefined, (facts) => [reviewAct(facts, { ...act, on: options.today })]);
      return;
    case 'receipts':
      recordActs(compiled, options, undefined, (facts) =>
        openAt(facts, act.doc, act.but ?? []).map((notice) =>
          receiptAct(facts, {
            notice: notice.number,
            bench: notice.bench,
            by: shop.benches.find((b) => b.id === notice.bench)?.lead ?? '',
            on: options.today,
          }),
        ),
      );
  }
}

function openAt({ ledger, shop, today }: ActFacts, doc: string, but: readonly string[]) {
  const states = documentStates(ledger.entries, today);
  const { open } = noticesOf({
    entries: ledger.entries,
    states,
    benches: shop.benches,
    rules: shop.info.control,
    asOf: today,
  });
  return open.filter((n) => n.doc === doc && n.due <= today && !but.includes(n.bench));
}
