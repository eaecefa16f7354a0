/** Registers of document control, resolved: outside documents, temporary changes as written, feedback. */

import { type At, entries, field, items, optional } from '../model/index.ts';
import { joinUnits } from '../units/index.ts';
import { type Context, lookUp } from './context.ts';
import { checkDate, defined } from './quantities.ts';
import { READ_FROM } from './read-from.ts';
import type { Feedback, OutsideDocument, TemporaryDraft } from './types.ts';

export function resolveOutside(context: Context): readonly OutsideDocument[] {
  return [...context.content.outside.entries].map(([id, at]): OutsideDocument => {
    const v = at.value;
    person(context, field(at, 'owner'));
    dated(context, optional(at, 'received'));
    const confirmed = optional(at, 'confirmed');
    for (const entry of confirmed === undefined ? [] : entries(confirmed)) {
      person(context, field(entry, 'by'));
      dated(context, field(entry, 'on'));
    }
    return {
      id,
      document: v.document,
      kind: v.kind,
      edition: v.edition,
      owner: v.owner,
      confirmed: Object.entries(v.confirmed ?? {}).map(([doc, c]) => ({ doc, ...c })),
      keyRange: at.keyRange,
      [READ_FROM]: at.node,
      ...defined({ received: v.received, kept: v.kept }),
    };
  });
}

export function resolveTemporary(context: Context): readonly TemporaryDraft[] {
  const { content } = context;
  return [...content.temporary.entries].map(([number, at]): TemporaryDraft => {
    const v = at.value;
    person(context, field(at, 'author'));
    person(context, field(at, 'approver'));
    for (const key of ['approved', 'from', 'until'] as const) dated(context, field(at, key));
    const scope = optional(at, 'scope');
    const benches = scope && optional(scope, 'benches');
    for (const b of benches === undefined ? [] : items(benches))
      lookUp(context, 'bench', content.benches, b.value, b.node.range);
    return {
      number,
      doc: v.doc,
      rev: v.rev,
      step: v.step,
      text: joinUnits(v.text),
      reason: joinUnits(v.reason),
      author: v.author,
      approver: v.approver,
      approved: v.approved,
      from: v.from,
      until: v.until,
      keyRange: at.keyRange,
      [READ_FROM]: at.node,
      ...defined({ benches: v.scope?.benches, variants: v.scope?.variants, serials: v.scope?.serials }),
    };
  });
}

export function resolveFeedback(context: Context): readonly Feedback[] {
  return [...context.content.feedback.entries].map(([number, at]): Feedback => {
    const v = at.value;
    dated(context, field(at, 'on'));
    const answer = optional(at, 'answer');
    if (answer !== undefined) {
      person(context, field(answer, 'by'));
      dated(context, field(answer, 'on'));
    }
    return {
      number,
      doc: v.doc,
      rev: v.rev,
      from: v.from,
      on: v.on,
      text: joinUnits(v.text),
      keyRange: at.keyRange,
      [READ_FROM]: at.node,
      ...defined({ step: v.step, answer: v.answer }),
    };
  });
}

function person(context: Context, at: At<string>): void {
  lookUp(context, 'person', context.content.people, at.value, at.node.range);
}

function dated(context: Context, at: At<string> | undefined): void {
  if (at !== undefined) checkDate(context.report, at);
}
