/** The closing words of check and build. */

import type { Diagnostic } from '../../src/diagnostics/index.ts';
import type { ResolvedShop } from '../../src/resolve/index.ts';

export function faultCount(diagnostics: readonly Diagnostic[]): string {
  const errors = diagnostics.filter((d) => d.severity === 'error').length;
  const warnings = diagnostics.length - errors;
  if (errors === 0 && warnings === 0) return 'no faults';
  return [counted(errors, 'error'), counted(warnings, 'warning')].filter((t) => t !== '').join(', ');
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
