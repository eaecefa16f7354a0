/** Shape of a machine: variants, serial ranges, parts and joints. */

import { z } from 'zod';
import {
  benchId,
  consumableId,
  id,
  jointId,
  machineId,
  only,
  partId,
  quantity,
  source,
  toolId,
  words,
} from './common.ts';

export const PART_KINDS = [
  'casting',
  'cover',
  'shaft',
  'bearing',
  'seal',
  'o-ring',
  'gasket',
  'packing',
  'screw',
  'stud',
  'nut',
  'washer',
  'lock washer',
  'split pin',
  'dowel',
  'key',
  'shim',
  'spring',
  'valve',
  'ring',
  'gear',
  'pipe',
  'filter',
  'coupling',
  'plug',
  'plate',
  'other',
] as const;

export const HEADS = [
  'hexagon',
  'hexagon DIN',
  'heavy hexagon',
  'hexagon flange',
  'socket',
  'button',
  'countersunk socket',
  'set screw',
  'stud',
] as const;

const partShape = z.strictObject({
  name: words,
  number: words.optional().meta({ description: 'Part number' }),
  kind: z.enum(PART_KINDS),
  quantity: z.int().min(1).max(999).optional().meta({
    description: 'How many; left out for fasteners, it follows from the joints that they fasten',
  }),
  material: words.optional(),
  mass: quantity('Mass of one').optional(),
  always_replace: z.boolean().optional().meta({ description: 'Thrown away whenever it is taken off' }),
  kit: words.optional().meta({ description: 'Kit in which it is supplied' }),
  only: only.optional(),
  note: words.optional(),
});

export const patternShape = z.union([
  z.strictObject({
    circle: quantity('Bolt circle diameter'),
    count: z.int().min(1).max(400),
    first: quantity('Angle of hole 1, clockwise from TOP').optional(),
  }),
  z.strictObject({
    rectangle: z.tuple([
      quantity('Length between outer holes, across the view'),
      quantity('Width between outer holes, up the view'),
    ]),
    along: z.int().min(1).max(100).meta({ description: 'Holes on each long side, corners included' }),
    across: z.int().min(1).max(100).meta({ description: 'Holes on each short side, corners included' }),
  }),
  z.strictObject({
    points: z
      .array(z.tuple([quantity('Across the view'), quantity('Up the view')]))
      .min(1)
      .max(400),
  }),
]);

const jointBase = {
  name: words,
  fastener: partId.meta({ description: 'Part that is tightened' }),
  also: z.array(partId).optional().meta({ description: 'Further parts of which each bolt has one: nut, washer' }),
  thread: words.meta({ description: 'Thread designation: M16, M20x1.5, 5/8-11 UNC' }),
  grade: words.meta({ description: 'Property class or grade: 8.8, A2-70, SAE 5, ASTM A193 B7' }),
  head: z.enum(HEADS).meta({ description: 'What the wrench grips; `stud` is a stud with a nut' }),
  condition: id.meta({
    description: 'Lubrication and finish: dry, zinc-dry, oiled, anti-seize, moly, wax, stainless-dry, threadlocked',
  }),
  lubricant: consumableId.optional(),
  where: words.optional().meta({ description: 'Where the lubricant goes: thread and under the head' }),
  pattern: patternShape,
  view: words.meta({ description: 'From where the pattern is seen' }),
  top: words.optional().meta({ description: 'What marks 12 o’clock' }),
  preload: quantity('Share of the proof load aimed at').optional(),
  torque: quantity('Torque that the maker or the shop states').optional(),
  source: source.optional(),
  reason: words.optional().meta({ description: 'Why the stated torque lies outside the computed band' }),
  rounds: z.array(quantity('Share of the torque')).min(1).max(6).optional(),
  circular_passes: z.int().min(0).max(4).optional(),
  wrench: toolId.meta({ description: 'Torque wrench' }),
  socket: toolId.optional().meta({ description: 'Socket or key' }),
  note: words.optional(),
} as const;

/** A joint; `when` holds what differs in some variants. */
const jointShape = z.strictObject({
  ...jointBase,
  only: only.optional(),
  when: z.array(z.strictObject({ ...z.strictObject(jointBase).partial().shape, only })).optional(),
});

export const machineShape = z
  .strictObject({
    id: machineId,
    name: words,
    mark: words.optional().meta({ description: 'Equipment mark on the plate' }),
    where: words.optional(),
    bench: benchId,
    about: words.optional(),
    variants: z
      .record(id, z.array(id).min(2))
      .optional()
      .meta({ description: 'Axis to its values: size: [small, large]' }),
    serials: z
      .array(z.strictObject({ from: z.int().min(0), to: z.int().min(0), is: z.record(id, id) }))
      .optional()
      .meta({ description: 'Which serial numbers are which variant' }),
    energy: z.array(words).optional().meta({ description: 'Stored energy to isolate' }),
    manual: source.optional().meta({ description: "Maker's manual" }),
    parts: z.record(partId, partShape),
    joints: z.record(jointId, jointShape).optional(),
  })
  .meta({ title: 'Machine' });
