/** Which parts of a step differ from the issue before. */

import type { Step, StepMark } from '../../resolve/types.ts';

/** Answers for each part of the step whether it is marked. */
export function changesOf(step: Step): (part: StepMark) => boolean {
  const { marks } = step;
  return marks === undefined ? () => false : (part) => marks.includes(part);
}

/** Whether a marked part has nothing on the card beside which its bar could stand: it was taken out, or is not printed. */
export function hasLostPart(step: Step): boolean {
  return (step.marks ?? []).some((part) => !isShown(step, part));
}

function isShown(step: Step, part: StepMark): boolean {
  switch (part) {
    case 'text':
      return true;
    case 'note':
      return step.note !== undefined;
    case 'warnings':
      return step.warnings.length > 0;
    case 'joint':
      return step.tighten !== undefined || step.loosen !== undefined;
    case 'measures':
      return step.measures.length > 0;
    case 'lists':
      return [step.remove, step.fit, step.facing, step.tools, step.consumables].some((list) => list.length > 0);
    case 'wait':
      return step.wait !== undefined || step.time !== undefined;
    case 'points':
      return [step.hold, step.witness, step.lift, step.heat].some((point) => point !== undefined);
    case 'records':
      return step.records.length > 0;
  }
}
