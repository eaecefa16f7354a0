/** A block between two rules: torque and measurements, the parts of a step that the eye must find. */

import { type Block, mm, node, shift } from './items.ts';

/** `width`: of the rules, in pt. The block keeps about 2 mm of air under the upper rule and above the lower one. */
export function ruled(block: Block, width: number): Block {
  const inner = shift(block, 0, mm(2));
  const height = block.height + mm(3.5);
  return {
    height,
    decoration: [
      { kind: 'line', x1: 0, y1: 0, x2: width, y2: 0, width: 0.75, ink: 'rule' },
      { kind: 'line', x1: 0, y1: height, x2: width, y2: height, width: 0.75, ink: 'rule' },
      ...inner.decoration,
    ],
    nodes: [node('Div', [], inner.nodes)],
  };
}
