/** Shape of a joint: fastener, torque, pattern, order, tools. */

import { z } from 'zod';
import { consumableId, id, only, partId, quantity, source, toolId, words } from './common.ts';
import { clockingShape, dowelShape, jackingShape, patternShape } from './pattern.ts';

const HEADS = [
  'hexagon',
  'hexagon DIN',
  'heavy hexagon',
  'hexagon flange',
  'hexagon flange heavy',
  'socket',
  'button',
  'countersunk socket',
  'set screw',
  'stud',
] as const;

/** Materials of tapped holes that the checks tell apart. */
export const TAPPED = ['steel', 'cast iron', 'bronze', 'aluminium'] as const;

/** Stiffness of what is clamped, for the picture of what the rounds do. */
const stackShape = z.strictObject({
  grip: quantity('Length between head and nut'),
  flange: z.strictObject({
    thickness: quantity('Thickness of one flange'),
    width: quantity('Width of the flange ring'),
    modulus: quantity('Modulus of elasticity of the flange').optional(),
  }),
  gasket: z
    .strictObject({
      thickness: quantity('Thickness of the gasket'),
      width: quantity('Width of the gasket'),
      modulus: quantity('Modulus of elasticity of the gasket, pressed'),
    })
    .optional()
    .meta({ description: 'Left out where metal lies on metal' }),
});

const jointBase = {
  name: words,
  fastener: partId.meta({ description: 'Part that is tightened' }),
  also: z.array(partId).optional().meta({ description: 'Further parts of which each bolt has one: nut, washer' }),
  thread: words.meta({ description: 'Thread designation: M16, M20x1.5, 5/8-11 UNC' }),
  grade: words.meta({ description: 'Property class or grade: 8.8, A2-70, SAE 5, ASTM A193 B7' }),
  head: z.enum(HEADS).meta({ description: 'Form of the head; `stud` is a stud with a nut' }),
  turned: z.enum(['head', 'nut']).optional().meta({
    description: 'What the wrench turns: the head, unless the nut is said; of a stud it is the nut',
  }),
  nut: z
    .strictObject({
      grade: words.meta({ description: 'Property class or grade of the nut: 8, 10, A2-70, ASTM A194 2H' }),
      heavy: z.boolean().optional().meta({ description: 'Heavy hexagon nut' }),
      reason: words.optional().meta({ description: 'Why a nut weaker than its bolt is right here' }),
    })
    .optional(),
  run_down: quantity('Run-down torque of a locking nut or screw').optional(),
  condition: id.meta({
    description: 'Lubrication and finish: dry, zinc-dry, oiled, anti-seize, moly, wax, stainless-dry, threadlocked',
  }),
  lubricant: consumableId.optional(),
  where: words.optional().meta({ description: 'Where the lubricant goes: thread and under the head' }),
  pattern: patternShape,
  flange: words.optional().meta({
    description: 'Standard flange with which circle, count and thread are compared: EN 1092-1 DN 100 PN 16',
  }),
  dowels: z.array(dowelShape).min(1).max(12).optional(),
  clocking: clockingShape.optional(),
  jacking: jackingShape.optional(),
  wall: quantity('Distance from a bolt centre to the nearest wall or hub').optional(),
  view: words.meta({ description: 'From where the pattern is seen' }),
  top: words.optional().meta({ description: 'What marks 12 o’clock' }),
  preload: quantity('Share of the proof load aimed at').optional(),
  torque: quantity('Torque that the maker or the shop states').optional(),
  source: source.optional(),
  reason: words.optional().meta({ description: 'Why the stated torque lies outside the computed band' }),
  rounds: z.array(quantity('Share of the torque, or the torque itself')).min(1).max(6).optional(),
  circular_passes: z.int().min(0).max(4).optional(),
  sequence: z
    .strictObject({
      method: z.enum(['cross', 'spiral', 'quadrants', 'in turn']).optional(),
      tools: z
        .literal([1, 2, 4])
        .optional()
        .meta({ description: 'How many wrenches pull at the same moment: 1, 2 or 4' }),
    })
    .optional()
    .meta({ description: 'Order of tightening, where it is not the usual one' }),
  gasket: partId.optional().meta({ description: 'Gasket or seal that this joint presses' }),
  clamp: z
    .strictObject({ force: quantity('Least force in each bolt'), source })
    .optional()
    .meta({ description: 'Clamp force that each bolt must keep' }),
  into: z
    .enum(TAPPED)
    .optional()
    .meta({ description: 'Material of the tapped hole, where the bolt is not held by a nut' }),
  engagement: quantity('Length of thread in the tapped hole').optional(),
  insert: z.boolean().optional().meta({ description: 'The tapped hole has a thread insert' }),
  protrusion: quantity('Length of thread that stands out of the nut').optional(),
  bearing_limit: z
    .strictObject({ pressure: quantity('Highest pressure under head or nut'), source })
    .optional()
    .meta({ description: 'Pressure that the clamped material bears' }),
  gasket_load: z
    .strictObject({
      area: quantity('Area of the gasket that is pressed'),
      seating: quantity('Least pressure that seats the gasket').optional(),
      most: quantity('Highest pressure that the gasket bears').optional(),
      source,
    })
    .optional()
    .meta({ description: "The gasket maker's own limits" }),
  wrench: toolId.meta({ description: 'Torque wrench' }),
  adapter: z
    .strictObject({
      length: quantity('From the square of the wrench to the bolt'),
      angle: quantity('Angle between adapter and handle line: 0 deg straight on, 90 deg square'),
    })
    .optional()
    .meta({ description: 'Adapter (crowfoot): the wrench itself needs its `lever` in tools.yaml' }),
  socket: toolId.optional().meta({ description: 'Socket or key' }),
  stack: stackShape.optional(),
  note: words.optional(),
} as const;

/** A joint; `when` holds what differs in some variants. */
export const jointShape = z.strictObject({
  ...jointBase,
  only: only.optional(),
  when: z.array(z.strictObject({ ...z.strictObject(jointBase).partial().shape, only })).optional(),
});
