/** Name and severity of every code, for the printers of diagnostics; and the checks by their code. */

import type { Code } from '../diagnostics/index.ts';
import type { Check } from './check.ts';
import { CHECKS } from './checks.ts';

/** A code without a check would be a report that nobody can look up; `tests/rules` holds that there is none. */
export const CATALOGUE: Readonly<Record<Code, Check>> = Object.fromEntries(CHECKS.map((c) => [c.code, c])) as Record<
  Code,
  Check
>;
