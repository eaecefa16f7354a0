/** What a check is: a code, and a function over the resolved shop that reports and carries on. */

import type { Code, DiagnosticDetails, Range, Report } from '../diagnostics/index.ts';
import type { JointPlan, ResolvedShop } from '../resolve/index.ts';
import { compareStated } from '../torque/index.ts';

export interface Rule {
  readonly code: Code;
  /** What happens at the bench if it passes unseen. */
  readonly why: string;
  readonly check: (shop: ResolvedShop, report: Report) => void;
}

/** What a check finds wrong with one form of a joint. */
export interface JointFault extends DiagnosticDetails {
  readonly range: Range;
  readonly message: string;
}

/**
 * A check that looks at one joint at a time. Forms of a joint that share a fault are reported once, with their variants
 * named when the other forms are sound.
 */
export function jointRule(
  code: Code,
  why: string,
  find: (plan: JointPlan, shop: ResolvedShop) => JointFault | undefined,
): Rule {
  return {
    code,
    why,
    check: (shop, report) => {
      for (const { joints } of shop.machines) {
        const faults = new Map<string, { fault: JointFault; id: string; variants: string[] }>();
        for (const { plan, variants } of joints) {
          const fault = find(plan, shop);
          if (fault === undefined) continue;
          const key = `${plan.id} ${fault.range.start} ${fault.message}`;
          const known = faults.get(key);
          if (known === undefined) faults.set(key, { fault, id: plan.id, variants: [variants] });
          else known.variants.push(variants);
        }
        for (const { fault, id, variants } of faults.values()) {
          const forms = joints.filter((j) => j.plan.id === id).length;
          const which = variants.length === forms || variants[0] === '' ? '' : ` (${variants.join('; ')})`;
          report(code, fault.range, `${fault.message}${which}`, fault);
        }
      }
    },
  };
}

/** A torque that looks like a slip of unit or decimal point. */
export function isSlip(plan: JointPlan): boolean {
  const verdict = verdictOf(plan);
  return verdict === 'unit slip' || verdict === 'digit slip';
}

/** A torque that cannot be meant makes every further check of the joint an echo of that one fault. */
export function isSuspect(plan: JointPlan): boolean {
  return isSlip(plan) || verdictOf(plan) === 'far off';
}

function verdictOf(plan: JointPlan) {
  if (plan.origin !== 'stated' || plan.reason !== undefined) return undefined;
  return compareStated(plan.target, plan.result).verdict;
}
