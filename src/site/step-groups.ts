/** Parts the steps of a stage into groups, so that on a wide screen a joint's drawing stays beside the steps that need it. */

import type { JointPlan, Step } from '../resolve/types.ts';

export interface StepGroup {
  readonly steps: readonly Step[];
  /** The joint whose drawing stands beside the group: loosened in its first step or tightened in its last. */
  readonly joint?: JointPlan;
}

/** Steps beside the joint's own that may share its drawing; a longer run would leave the drawing beside other work. */
const MOST_BESIDE = 3;

function touches(step: Step, joint: JointPlan): boolean {
  const parts = new Set([joint.fastener, ...joint.also]);
  return (
    step.text.some((p) => p.runs.some((r) => r.ref?.kind === 'joint' && r.ref.id === joint.id)) ||
    [...step.remove, ...step.fit].some((move) => parts.has(move.id)) ||
    (step.lubricate !== undefined && parts.has(step.lubricate.id))
  );
}

function jointOf(step: Step, joints: readonly JointPlan[]): JointPlan | undefined {
  const id = step.tighten ?? step.loosen;
  return id === undefined ? undefined : joints.find((j) => j.id === id);
}

/**
 * Every step stands in exactly one group, in order. Before a tightening step its drawing is shared by the steps that fit
 * and coat the fasteners; after a loosening step by the steps that follow it up to the next joint.
 */
export function stepGroups(steps: readonly Step[], joints: readonly JointPlan[]): StepGroup[] {
  const groups: StepGroup[] = [];
  let open: Step[] = [];
  const close = () => {
    if (open.length > 0) groups.push({ steps: open });
    open = [];
  };
  for (let i = 0; i < steps.length; i++) {
    const step = steps[i];
    if (step === undefined) continue;
    const joint = jointOf(step, joints);
    if (joint === undefined) {
      open.push(step);
    } else if (step.tighten !== undefined) {
      const before: Step[] = [];
      for (
        let last = open.at(-1);
        last !== undefined && before.length < MOST_BESIDE && touches(last, joint);
        last = open.at(-1)
      ) {
        before.unshift(last);
        open = open.slice(0, -1);
      }
      close();
      groups.push({ steps: [...before, step], joint });
    } else {
      close();
      const after: Step[] = [];
      for (let next = steps[i + 1]; next !== undefined && after.length < MOST_BESIDE; next = steps[i + 1]) {
        if (jointOf(next, joints) !== undefined) break;
        after.push(next);
        i++;
      }
      groups.push({ steps: [step, ...after], joint });
    }
  }
  close();
  return groups;
}
