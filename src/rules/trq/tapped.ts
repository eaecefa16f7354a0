/** What the thread of a bolt sits in, as far as its strength goes. */

import type { JointPlan } from '../../resolve/index.ts';

export type TappedInto = NonNullable<JointPlan['into']> | 'aluminium with an insert';

/** Undefined where the bolt is held by a nut, or nothing is said. */
export function tappedInto({ into, insert }: JointPlan): TappedInto | undefined {
  return into === 'aluminium' && insert === true ? 'aluminium with an insert' : into;
}
