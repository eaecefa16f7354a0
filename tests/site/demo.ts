/** The demo shop, compiled once for the tests that need it. */

import path from 'node:path';
import { type BuildReport, buildReport, type Compiled, compileShop } from '../../src/pipeline/index.ts';
import type { CheckedShop } from '../../src/resolve/index.ts';

const CONTENT = path.resolve(import.meta.dirname, '..', '..', 'content');

let compiled: Compiled | undefined;

/** What its build reports. */
export function demoReport(): BuildReport {
  compiled ??= compileShop({ folder: CONTENT, shown: 'content' });
  return buildReport(compiled);
}

/** The checked demo shop; throws with the first faults when the demo does not hold. */
export function demoShop(): CheckedShop {
  compiled ??= compileShop({ folder: CONTENT, shown: 'content' });
  if (compiled.checked === undefined) {
    const faults = compiled.diagnostics.filter((d) => d.severity === 'error').slice(0, 5);
    throw new Error(`the demo shop has faults: ${faults.map((d) => `${d.code} ${d.message}`).join('; ')}`);
  }
  return compiled.checked.shop;
}
