/** Sources of the formulas, section by section. */

import type { JointPlan } from '../../resolve/types.ts';
import type { WorkingSection } from '../../torque/working.ts';
import { formatQuantity } from '../../units/index.ts';

/** Where the formulas of a section are from. The same words stand on the page of the site. */
export function sectionNote(plan: JointPlan, section: WorkingSection): string {
  const metric = plan.thread.system === 'metric';
  switch (section) {
    case 'thread':
      return metric ? 'ISO 724; stress area ISO 898-1' : 'ASME B1.1';
    case 'strength and preload asked for':
      return '';
    case 'torque, short form':
      return 'Shigley, chapter 8';
    case 'torque, long form':
      return 'VDI 2230 Part 1, 60° flanks';
    case 'wrench setting':
      return `FAA AC 43.13-1B; set down to a mark of the wrench: ${formatQuantity(plan.setting)}`;
    case 'preload at this torque':
      return 'friction and wrench at their limits together; scatter as VDI 2230 Part 1 defines it';
    case 'stress while tightening':
      return 'VDI 2230 Part 1: plastic modulus; the elastic one of the editions before 2001 stands beside it';
  }
}
