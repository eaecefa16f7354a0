/** Building blocks of the content shapes. Plain zod without transforms, so that the same shapes become JSON Schema files. */

import { z } from 'zod';

/** An id is also part of file names and addresses: lower case, digits and single hyphens, at most 48 characters. */
export const ID_PATTERN = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;
export const DOC_PATTERN = /^[A-Z0-9]+(?:-[A-Z0-9]+)*$/;
export const REVISION_PATTERN = /^[A-Z0-9]{1,3}$/;
export const DATE_PATTERN = /^\d{4}-\d{2}-\d{2}$/;

const identifier = (what: string) =>
  z
    .string()
    .max(48)
    .regex(ID_PATTERN)
    .meta({ description: `${what}: lower-case letters, digits and hyphens` });

export const id = identifier('Identifier');
export const toolId = identifier('Tool, from tools.yaml');
export const consumableId = identifier('Consumable, from consumables.yaml');
export const partId = identifier('Part of the machine');
export const jointId = identifier('Joint of the machine');
export const machineId = identifier('Machine');
export const benchId = identifier('Bench');
export const personId = identifier('Person, from people.yaml');
export const stageId = identifier('Shared stage');
export const docNumber = z
  .string()
  .max(16)
  .regex(DOC_PATTERN)
  .meta({ description: 'Document number: capitals, digits and hyphens, such as OF-204' });
export const revision = z.string().regex(REVISION_PATTERN).meta({ description: 'Revision letter or number' });
export const date = z.string().regex(DATE_PATTERN).meta({ description: 'Date as YYYY-MM-DD' });

/** Of a change: major needs full review and approval, minor is editorial. */
export const CHANGE_CLASSES = ['major', 'minor'] as const;

export const words = z.string().min(1).max(400).meta({ description: 'Plain text' });
export const markdown = z.string().min(1).max(4000).meta({
  description:
    'Markdown text; refer to things with <tool:id>, <consumable:id>, <part:id>, <joint:id>, <step:id>, <procedure:DOC> or [words](part:id)',
});
/** Every quantity is written with its unit; what it is (a length, a torque) is checked when it is read. */
export const quantity = (what: string) =>
  z
    .string()
    .min(1)
    .max(60)
    .meta({ description: `${what}, with its unit` });
export const limit = z
  .string()
  .min(1)
  .max(80)
  .meta({ description: 'Limit with unit: 0 to 0.10 mm, at most 0.05 mm, at least 3 mm' });

/** Axis name to the value or values meant: `{ size: large }`, `{ size: [small, large], hand: left }`. */
export const only = z
  .record(id, z.union([id, z.array(id).min(1)]))
  .meta({ description: 'Holds only for these variants' });

/** Where a number that came from outside was read. */
export const source = z
  .strictObject({
    document: words.meta({ description: 'Manual, drawing or standard' }),
    edition: words.optional(),
    place: words.optional().meta({ description: 'Page, table or paragraph' }),
  })
  .meta({ description: 'Where the number came from' });

export const PPE = [
  'eye protection',
  'face shield',
  'gloves',
  'heat gloves',
  'hearing protection',
  'safety footwear',
  'helmet',
  'respirator',
  'apron',
  'harness',
] as const;
export const ppe = z.array(z.enum(PPE)).meta({ description: 'Personal protective equipment' });
