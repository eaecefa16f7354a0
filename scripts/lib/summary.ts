/** The closing words of check and build. */

import { type Diagnostic, placer, printable, type TextOf } from '../../src/diagnostics/index.ts';
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

function counted(n: number, one: string, many = `${one}s`): string {
  return n === 0 ? '' : `${n} ${n === 1 ? one : many}`;
}
