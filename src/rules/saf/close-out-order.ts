/** Locks that come off before the machine is ready for it. */

import type { Range } from '../../diagnostics/index.ts';
import { keyPlaceOf, placeOf, type Step } from '../../resolve/index.ts';
import type { Check, Fault } from '../check.ts';
import { eachVariant } from '../rule.ts';
import { isLock, type Point } from './close-out.ts';
import { openedBy } from './energy.ts';

const BEFORE: readonly Point[] = ['turned by hand', 'tools counted', 'guards refitted'];

export const closeOutOrder: Check = {
  code: 'SAF018',
  name: 'close-out-order',
  severity: 'error',
  title:
    'The locks come off before the tools are counted, the guards are back, the machine is turned by hand or the work is done.',
  why: 'From the moment the last lock is off the machine can start, with hands at the guard or a spanner still inside.',
  sources: [
    '29 CFR 1910.147(e)(1) to (e)(3): the machine is whole and people are clear, then the locks come off (memory)',
  ],
  example: {
    bad: [
      {
        file: 'stages/close-out.yaml',
        from: `  - do: Refit every guard.
    close_out: [guards refitted]
  - do: Remove your own lock.
    close_out: [own locks removed]
`,
        to: `  - do: Remove your own lock.
    close_out: [«own locks removed»]
  - do: Refit every guard.
    close_out: [guards refitted]
`,
      },
    ],
  },
  found: eachVariant(function* (scene): Iterable<Fault> {
    const { document, machine, steps } = scene;
    if (document.incomplete) return;
    const off = steps.find((s) => s.closeOut.includes('own locks removed'));
    if (off === undefined) return;
    const label = off.label === undefined ? {} : { label: off.label };
    for (const point of BEFORE) {
      if (point === 'turned by hand' && machine?.rotates !== true) continue;
      const done = steps.filter((s) => s.closeOut.includes(point));
      const [first] = done;
      // Where nothing does it at all, that is reported by itself.
      if (first === undefined || first.number <= off.number) continue;
      yield {
        range: pointPlace(off, 'own locks removed'),
        message: `\`own locks removed\` stands before \`${point}\``,
        related: [{ range: pointPlace(first, point), message: `\`${point}\` stands only here` }],
        ...label,
        hint: `move the step that removes the locks after the one with \`close_out: [${point}]\``,
      };
    }
    const late = steps.slice(off.number).find((s) => openedBy(s) !== undefined);
    if (late === undefined) return;
    // Locks hung once more make it safe again.
    if (steps.slice(off.number, late.number).some((s) => s.tools.some((id) => isLock(scene, id)))) return;
    yield {
      range: pointPlace(off, 'own locks removed'),
      message: 'the locks come off here, and the work goes on after it',
      related: [{ range: keyPlaceOf(late, openedBy(late) ?? 'do'), message: 'work after the locks have come off' }],
      ...label,
      hint: 'move the close-out after the last step that loosens, takes off or fits, or hang the locks again before that step',
    };
  }),
};

function pointPlace(step: Step, point: Point): Range {
  return placeOf(step, 'close_out', step.closeOut.indexOf(point));
}
