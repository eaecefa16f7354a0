/** Shape of a machine: variants, serial ranges, parts; its joints have a file of their own. */

import { z } from 'zod';
import { benchId, consumableId, id, jointId, machineId, only, partId, quantity, source, words } from './common.ts';
import { jointShape } from './joint.ts';

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

export const ELASTOMERS = ['NBR', 'HNBR', 'FKM', 'EPDM', 'VMQ', 'FVMQ', 'CR', 'AU', 'FFKM', 'PTFE'] as const;

const partShape = z.strictObject({
  name: words,
  number: words.optional().meta({ description: 'Part number' }),
  kind: z.enum(PART_KINDS),
  quantity: z.int().min(1).max(999).optional().meta({
    description: 'How many; left out for fasteners, it follows from the joints that they fasten',
  }),
  material: words.optional(),
  thread: words.optional().meta({ description: 'Thread of a fastener: compared with the joints that it fastens' }),
  grade: words.optional().meta({ description: 'Property class or grade of a fastener: compared likewise' }),
  mass: quantity('Mass of one').optional(),
  always_replace: z.boolean().optional().meta({ description: 'Thrown away whenever it is taken off' }),
  past_yield: z.boolean().optional().meta({ description: 'Tightened past yield (by angle), so that it serves once' }),
  locking: z.boolean().optional().meta({ description: 'Locking (prevailing-torque) nut or screw' }),
  elastomer: z.enum(ELASTOMERS).optional().meta({ description: 'Rubber or plastic of a seal, by its ISO 1629 symbol' }),
  resists: z
    .record(consumableId, source)
    .optional()
    .meta({ description: 'Consumables that the seal maker allows, against the general table, each with its source' }),
  made_of: z.array(partId).min(1).optional().meta({ description: 'Sub-assembly: the parts of which it is built' }),
  kit: words.optional().meta({ description: 'Kit in which it is supplied' }),
  lead: quantity('Delivery time').optional(),
  rate: quantity('Share of inspected ones that is usually replaced').optional(),
  only: only.optional(),
  note: words.optional(),
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
    rotates: z
      .boolean()
      .optional()
      .meta({ description: 'It turns, so that it is turned by hand before it is handed back' }),
    manual: source.optional().meta({ description: "Maker's manual" }),
    parts: z.record(partId, partShape),
    joints: z.record(jointId, jointShape).optional(),
  })
  .meta({ title: 'Machine' });
