/** Small type of the figure of bands, mm. */

import { LEAST_TYPE } from '../drawing/figure-style.ts';
import type { Primitive } from '../drawing/primitives.ts';

export const SIZE = LEAST_TYPE;
/** Line of small type. */
export const LINE = 3.9;

export function words(
  x: number,
  y: number,
  text: string,
  anchor: 'start' | 'middle' | 'end',
  weight: 'regular' | 'semibold' | 'bold' = 'regular',
  size = SIZE,
): Extract<Primitive, { kind: 'text' }> {
  return { kind: 'text', at: { x, y }, text, size, anchor, weight, role: 'label', ink: 'ink' };
}
