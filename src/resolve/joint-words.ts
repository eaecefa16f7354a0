/** Phrases about joints and torques, the same on card, page and worksheet. */

import { findCondition } from '../torque/index.ts';
import { formatDecimal, formatQuantity } from '../units/index.ts';
import type { JointPlan } from './joint-types.ts';
import type { Measure } from './step-types.ts';

const NBSP = '\u00a0';

/** `torque on the plug, dry`: a torque holds only for the condition that is said with it. */
export function measuredText({ what, condition }: Measure): string {
  const name = condition === undefined ? undefined : findCondition(condition)?.name;
  return name === undefined ? what : `${what}, ${name}`;
}

/** Is the wrench set to something else than the torque above the run-down torque? */
export function isCorrected(plan: JointPlan): boolean {
  return plan.adapter !== undefined || plan.runDown !== undefined;
}

/** `85 N·m at the bolt, and 12 N·m run-down torque; adapter 60 mm long, straight on`; empty where nothing is corrected. */
export function correctionText(plan: JointPlan): string {
  if (!isCorrected(plan)) return '';
  const bolt = `${formatQuantity(plan.target)} at the bolt`;
  const runDown = plan.runDown === undefined ? '' : `, and ${formatQuantity(plan.runDown)} run-down torque`;
  const adapter =
    plan.adapter === undefined
      ? ''
      : `; adapter ${formatQuantity(plan.adapter.length)} long, ${angleText(plan.adapter.angleDeg)}, on a lever of ${formatQuantity(plan.adapter.lever)}`;
  return bolt + runDown + adapter;
}

function angleText(deg: number): string {
  if (deg === 0) return 'straight on';
  if (deg === 90) return 'square to the handle';
  return `${formatDecimal(deg, Number.isInteger(deg) ? 0 : 1)}° to the handle`;
}

/** `Turn the nut, hold the head.` where that is not plain; a stud has no head to hold. */
export function turnedText(plan: JointPlan): string {
  return plan.turned === 'nut' && plan.head !== 'stud' ? 'Turn the nut, hold the head.' : '';
}

/** `Nut class 10 (ISO 898-2)`; empty where no nut is stated. */
export function nutText(plan: JointPlan): string {
  return plan.nut === undefined ? '' : `${plan.nut.grade.id}${NBSP}(${plan.nut.grade.standard.replaceAll(' ', NBSP)})`;
}

/** The rounds in which the joint is loosened, as one text. */
export function looseningText(plan: JointPlan): string {
  return plan.looseningRounds.map((r) => r.words).join(' ');
}

/** How the jacking screws are drawn in; empty where there are none. */
export function jackingText(plan: JointPlan): string {
  const { jacking } = plan;
  if (jacking === undefined) return '';
  const { order, advanceMm } = jacking.plan;
  const screws = order.map((n) => `J${n}`).join(', ');
  return (
    `With all bolts out, jacking screws ${jacking.thread.designation.replaceAll(' ', NBSP)}: ${screws}, ${jacking.turn}${NBSP}turn each, round and round; ` +
    `a move lifts ${formatDecimal(advanceMm, 2)}${NBSP}mm.`
  );
}
