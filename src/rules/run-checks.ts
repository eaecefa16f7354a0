/** Every check over one shop. */

import type { Report } from '../diagnostics/index.ts';
import type { ResolvedShop } from '../resolve/index.ts';
import type { Run, Tell } from './check.ts';
import { CHECKS } from './checks.ts';

/** Procedure after procedure, each under all checks while it is at hand; diagnostics are sorted by whoever prints them. */
export function runChecks(shop: ResolvedShop, report: Report): void {
  const ofDocuments: { readonly run: NonNullable<Run['ofDocument']>; readonly tell: Tell }[] = [];
  for (const { code, found } of CHECKS) {
    if (typeof found !== 'function') continue;
    const tell: Tell = (range, message, details) => report(code, range, message, details);
    if (found.ofDocument === undefined) found(shop, tell);
    else {
      found.ofShop?.(shop, tell);
      ofDocuments.push({ run: found.ofDocument, tell });
    }
  }
  for (const document of shop.documents) for (const { run, tell } of ofDocuments) run(shop, document, tell);
}
