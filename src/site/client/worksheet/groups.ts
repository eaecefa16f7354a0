/** How the fields stand together in the form: what most joints need first, the rest folded away under it. */

import type { FieldKey } from './fields.ts';

export interface Group {
  readonly name: string;
  readonly first: readonly FieldKey[];
  readonly more: readonly FieldKey[];
  /** Name of the fold. */
  readonly moreName: string;
}

export const GROUPS: readonly Group[] = [
  {
    name: 'Fastener',
    first: ['thread', 'grade', 'head', 'condition'],
    more: ['turned', 'nut', 'heavy', 'k'],
    moreName: 'Nut and lubricant',
  },
  {
    name: 'Joint face',
    first: [
      ...(['pattern', 'n', 'circle', 'first', 'span'] as const),
      ...(['n2', 'circle2', 'first2', 'n3', 'circle3', 'first3'] as const),
      ...(['length', 'width', 'along', 'across', 'straddle', 'points'] as const),
    ],
    more: ['numbering', 'wall', 'socket', 'flange', 'face'],
    moreName: 'Numbering, room and flange',
  },
  {
    name: 'Tightening',
    first: ['preload', 'torque', 'rounds', 'passes'],
    more: ['method', 'tools', 'run-down', 'name'],
    moreName: 'Order, run-down torque and name',
  },
  {
    name: 'Wrench',
    first: ['wrench', 'step'],
    more: ['adapter', 'angle', 'lever'],
    moreName: 'Adapter',
  },
];
