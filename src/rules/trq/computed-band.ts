/** The computed torque band in words, in the unit of the joint's wrench. */

import type { JointPlan } from '../../resolve/index.ts';
import { convert, formatDecimal, formatNumber, formatQuantity, quantity } from '../../units/index.ts';

/** `98 to 152 N·m`: short form, nut factor low to high, for the preload share asked for. */
export function computedBand(plan: JointPlan): string {
  const unit = plan.target.unit;
  const show = (nm: number) => convert(quantity('torque', nm, 'N·m'), unit, nm < 20 ? 1 : 0);
  const { low, high } = plan.result.shortForm;
  return `${formatNumber(show(low))} to ${formatQuantity(show(high))}`;
}

/** What the band was computed from, so that an author can compare it: `thread M16, grade 8.8, condition `oiled`, preload 70 %`. */
export function inputsOf({ thread, grade, condition, preloadShare }: JointPlan): string {
  return `thread ${thread.designation}, grade ${grade.id}, condition \`${condition.id}\`, preload ${formatDecimal(preloadShare * 100, 0)} %`;
}
