/** What a check is: a code, and a function over the resolved shop that reports and carries on. */

import type { Code, Report } from '../diagnostics/index.ts';
import type { JointPlan, ResolvedShop } from '../resolve/index.ts';

export interface Rule {
  readonly code: Code;
  /** What happens at the bench if it passes unseen. */
  readonly why: string;
  readonly check: (shop: ResolvedShop, report: Report) => void;
}

/** Every form of every joint, with the words that tell its variant. */
export function eachJoint(shop: ResolvedShop, visit: (plan: JointPlan, variant: string) => void): void {
  for (const m of shop.machines) {
    for (const j of m.joints) visit(j.plan, j.variants === '' ? '' : ` (${j.variants})`);
  }
}
