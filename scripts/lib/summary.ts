/** The closing words of check and build. */

import type { ControlView, DocumentState } from '../../src/control/index.ts';
import { type Diagnostic, placer, printable, type TextOf } from '../../src/diagnostics/index.ts';
import type { Published } from '../../src/pipeline/index.ts';
import type { ResolvedShop } from '../../src/resolve/index.ts';
import type { AcceptedWarning } from '../../src/rules/index.ts';

export function faultCount(diagnostics: readonly Diagnostic[], accepted: readonly AcceptedWarning[] = []): string {
  const errors = diagnostics.filter((d) => d.severity === 'error').length;
  const warnings = diagnostics.length - errors;
  const standing = [counted(errors, 'error'), counted(warnings, 'warning')].filter((t) => t !== '').join(', ');
  const taken = accepted.length === 0 ? '' : ` (${counted(accepted.length, 'warning')} accepted)`;
  return `${standing === '' ? 'no faults' : standing}${taken}`;
}

/** One line for each warning that an author accepted, with the reason; the build report holds the same. */
export function acceptedLines(accepted: readonly AcceptedWarning[], textOf: TextOf): string {
  const place = placer(textOf);
  return accepted
    .map(({ diagnostic: d, reason }) => {
      const { line, column } = place(d.range);
      return `accepted ${d.code} ${d.name} ${d.range.file}:${line}:${column}: ${printable(reason)}\n`;
    })
    .join('');
}

export function shopCount(shop: ResolvedShop): string {
  const cards = shop.documents.reduce((n, d) => n + d.variants.length, 0);
  const steps = shop.documents.reduce((n, d) => n + d.variants.reduce((m, v) => m + v.stepCount, 0), 0);
  return [
    counted(shop.documents.length, 'procedure'),
    counted(cards, 'card'),
    counted(steps, 'step'),
    counted(shop.machines.length, 'machine'),
    counted(shop.benches.length, 'bench', 'benches'),
  ].join(', ');
}

/** What is published, in numbers. */
export function publishedCount({ shop, view, cards, coming }: Published): string {
  const of = (standing: DocumentState['standing']): number =>
    view.documents.filter((d) => d.standing === standing).length;
  const drafts = shop.documents.filter((d) => d.standing === 'draft').length;
  return [
    `as of ${view.asOf}, ${of('in force')} in force`,
    counted(cards.length, 'card'),
    counted(coming.length, 'card') === '' ? '' : `${counted(coming.length, 'card')} not yet effective`,
    of('suspended') > 0 ? `${of('suspended')} suspended` : '',
    of('withdrawn') > 0 ? `${of('withdrawn')} withdrawn` : '',
    counted(drafts, 'draft'),
    counted(view.open.length, 'open receipt'),
    counted(shop.benches.length, 'bench', 'benches'),
  ]
    .filter((t) => t !== '')
    .join(', ');
}

/** Every document whose draft says something else than its issue, and what: it stays as it was until it is issued again. */
export function draftLines({ drafts }: ControlView): string {
  return drafts
    .map(({ doc, since, rev, changes }) => {
      if (since === undefined) return `draft ${doc} Rev ${rev} was never issued: it is not published\n`;
      const asks = rev === since ? '' : ` and asks for Rev ${rev}`;
      const head = `draft ${doc} differs from Rev ${since}, which stays in force until it is issued again${asks}\n`;
      return head + changes.map((c) => `  ${printable(c.words)}\n`).join('');
    })
    .join('');
}

function counted(n: number, one: string, many = `${one}s`): string {
  return n === 0 ? '' : `${n} ${n === 1 ? one : many}`;
}
