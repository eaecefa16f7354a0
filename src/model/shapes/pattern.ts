/** Shape of a bolt pattern and of what else stands on the joint face: dowels, clocking mark, jacking screws. */

import { z } from 'zod';
import { quantity, words } from './common.ts';

const numbering = z
  .enum(['clockwise', 'anticlockwise'])
  .optional()
  .meta({ description: 'Way in which the holes are numbered, in the named view' });
const circle = quantity('Bolt circle diameter');
const count = z.int().min(1).max(400);
const first = quantity('Angle of hole 1, clockwise from TOP').optional();

export const patternShape = z.union([
  z.strictObject({ circle, count, first, numbering }),
  z.strictObject({
    arc: quantity('Diameter of the circle of which the holes fill an arc'),
    count,
    first,
    span: quantity('Angle from the first hole to the last'),
    numbering,
  }),
  z.strictObject({
    circles: z
      .array(z.strictObject({ circle, count, first }))
      .min(2)
      .max(3)
      .meta({ description: 'Circles about one centre; the holes of the first are numbered first' }),
    numbering,
  }),
  z.strictObject({
    rectangle: z.tuple([
      quantity('Length between outer holes, across the view'),
      quantity('Width between outer holes, up the view'),
    ]),
    along: z.int().min(1).max(100).meta({ description: 'Holes on each long side, corners included' }),
    across: z.int().min(1).max(100).meta({ description: 'Holes on each short side, corners included' }),
    numbering,
  }),
  z.strictObject({
    slot: z.tuple([
      quantity('Length over the outermost hole centres, across the view'),
      quantity('Width between the two straight rows'),
    ]),
    count,
    straddle: z
      .boolean()
      .optional()
      .meta({ description: 'The holes straddle the centre line: none stands in the middle of the top' }),
    numbering,
  }),
  z.strictObject({
    points: z
      .array(z.tuple([quantity('Across the view'), quantity('Up the view')]))
      .min(1)
      .max(400),
  }),
]);

const onCircle = { circle: quantity('Circle on which it stands'), at: quantity('Angle clockwise from TOP') } as const;
const atPoint = {
  at: z.tuple([quantity('Across the view, from the centre'), quantity('Up the view, from the centre')]),
} as const;
const diameter = quantity('Diameter of the dowel');

export const dowelShape = z.union([
  z.strictObject({ ...onCircle, diameter }),
  z.strictObject({ ...atPoint, diameter }),
]);

export const clockingShape = z.strictObject({
  ...onCircle,
  mark: words.meta({ description: 'What marks the place on both parts' }),
});

export const jackingShape = z.strictObject({
  circle: quantity('Circle on which the jacking screws stand'),
  count: z.int().min(2).max(12),
  first: quantity('Angle of the first, clockwise from TOP').optional(),
  thread: words.meta({ description: 'Thread of the jacking screws' }),
  turn: words.meta({ description: 'Part of a turn at each move: 1/4' }),
});
