/** A torque table typed from a manual that as a whole cannot be meant. */

import type { StatedTable } from '../../resolve/index.ts';

/** A whole table beyond this ratio to the computed torques, or below its inverse, is no matter of friction. Practice. */
const FAR = 2;

export function isFarOff({ reason, comparison: { medianRatio } }: StatedTable): boolean {
  return reason === undefined && (medianRatio > FAR || medianRatio < 1 / FAR);
}
