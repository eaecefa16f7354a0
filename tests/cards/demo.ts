/** The demo shop, compiled once for all card tests of a file. */

import path from 'node:path';
import type { CardLayout } from '../../src/layout/card/index.ts';
import { compileShop } from '../../src/pipeline/index.ts';
import type { CheckedShop } from '../../src/resolve/index.ts';

export const CONTENT = path.resolve(import.meta.dirname, '../../content');

let compiled: { readonly shop: CheckedShop; readonly cards: readonly CardLayout[] } | undefined;

export function demo(): { readonly shop: CheckedShop; readonly cards: readonly CardLayout[] } {
  if (compiled === undefined) {
    const result = compileShop({ folder: CONTENT, shown: 'content' });
    if (result.checked === undefined) {
      throw new Error(`the demo has faults: ${result.diagnostics.map((d) => `${d.code} ${d.message}`).join('; ')}`);
    }
    compiled = result.checked;
  }
  return compiled;
}
