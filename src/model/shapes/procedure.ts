/** Shapes of procedures and of shared stages. */

import { z } from 'zod';
import {
  CHANGE_CLASSES,
  consumableId,
  date,
  docNumber,
  id,
  jointId,
  limit,
  machineId,
  markdown,
  only,
  partId,
  personId,
  ppe,
  quantity,
  revision,
  source,
  stageId,
  toolId,
  words,
} from './common.ts';

export const SIGNALS = ['danger', 'warning', 'caution', 'notice'] as const;
export const FATES = ['discard', 'inspect', 'reuse'] as const;
export const LEVELS_OF_USE = ['continuous', 'reference', 'information'] as const;

/** What has to be done before a machine is handed back. */
export const CLOSE_OUT = ['turned by hand', 'tools counted', 'guards refitted', 'own locks removed'] as const;

const warnShape = z.strictObject({
  level: z
    .enum(SIGNALS)
    .meta({ description: 'danger: will kill or maim; warning: could; caution: minor injury; notice: damage only' }),
  hazard: markdown.meta({ description: 'The hazard and how it hurts' }),
  avoid: markdown.meta({ description: 'How it is avoided' }),
  only: only.optional(),
});

const measureShape = z.strictObject({
  what: words,
  at: z
    .array(z.union([z.int(), words]))
    .optional()
    .meta({ description: 'Clock positions or places' }),
  limit,
  with: toolId,
  'if out': markdown.meta({ description: 'What to do when out of limit' }),
  record: z.enum(['as found', 'as left']).optional(),
  source: source.optional(),
  condition: id.optional().meta({ description: 'Of a torque: the joint condition for which the limit holds' }),
  only: only.optional(),
});

export const stepShape = z.strictObject({
  do: markdown.meta({ description: 'One action, imperative' }),
  id: id.optional(),
  only: only.optional(),
  warn: z.union([warnShape, z.array(warnShape).min(1)]).optional(),
  note: markdown.optional().meta({ description: 'Information, never an instruction' }),
  with: z.array(toolId).optional().meta({ description: 'Tools used and not named in the text' }),
  use: z
    .union([z.array(consumableId), z.record(consumableId, quantity('Amount'))])
    .optional()
    .meta({
      description: 'Consumables used and not named in the text, or amounts of them',
    }),
  remove: z
    .union([z.record(partId, z.enum(FATES)), z.array(partId).min(1)])
    .optional()
    .meta({ description: 'Parts that come off, and their fate: { gasket: discard, cover: reuse }' }),
  fit: z
    .union([z.array(partId), z.record(partId, z.int().min(1))])
    .optional()
    .meta({ description: 'Parts that go on' }),
  reuse: z
    .record(partId, z.strictObject({ reason: words, source }))
    .optional()
    .meta({ description: 'Why a part that is otherwise renewed may go back' }),
  release: z
    .array(words)
    .min(1)
    .optional()
    .meta({ description: 'Stored energy that this step releases, blocks or restrains' }),
  prove: z.array(words).min(1).optional().meta({ description: 'Stored energy that this step proves to be gone' }),
  close_out: z.array(z.enum(CLOSE_OUT)).min(1).optional().meta({ description: 'Point of the close-out that it does' }),
  facing: z.record(partId, words).optional().meta({ description: 'Which face looks where' }),
  lubricate: z.strictObject({ with: consumableId, where: words }).optional(),
  loosen: jointId.optional(),
  tighten: jointId.optional(),
  measure: z.union([measureShape, z.array(measureShape).min(1)]).optional(),
  record: z
    .union([words, z.array(words).min(1)])
    .optional()
    .meta({ description: 'What else is written down' }),
  wait: z.strictObject({ for: quantity('Waiting time'), why: words }).optional(),
  hold: words.optional().meta({ description: 'Hold point: who releases it' }),
  witness: words.optional().meta({ description: 'Witness point: who is told' }),
  lift: z.strictObject({ mass: quantity('Mass'), by: words.meta({ description: 'How it is lifted' }) }).optional(),
  heat: z.strictObject({ to: quantity('Temperature'), most: quantity('Temperature never exceeded') }).optional(),
  time: quantity('Working time').optional(),
});

const stageShape = z.strictObject({
  title: words,
  intro: markdown.optional(),
  only: only.optional(),
  time: quantity('Working time').optional(),
  steps: z.array(stepShape).min(1),
});

const useShape = z.strictObject({ use: stageId, only: only.optional() });

export const sharedStageShape = z
  .strictObject({
    id: stageId,
    title: words,
    first: z.array(stageId).min(1).optional().meta({ description: 'Shared stages that come before this one' }),
    intro: markdown.optional(),
    time: quantity('Working time').optional(),
    steps: z.array(stepShape).min(1),
  })
  .meta({ title: 'Shared stage' });

const revisionShape = z.strictObject({
  rev: revision,
  effective: date,
  approved: date,
  author: personId,
  approver: personId,
  class: z.enum(CHANGE_CLASSES).optional().meta({ description: 'Class of the change; major, unless said' }),
  affects: z.array(docNumber).min(1).optional().meta({ description: 'Other documents that the change affects' }),
  what: words,
  why: words,
});

export const procedureShape = z
  .strictObject({
    doc: docNumber,
    title: words,
    machine: machineId,
    applies: z.record(id, z.array(id).min(1)).optional().meta({ description: 'Variants for which cards are made' }),
    purpose: markdown,
    owner: personId,
    review: z
      .string()
      .regex(/^[1-9]\d? (months|years)$/)
      .meta({ description: 'Longest time between reviews: 24 months' }),
    level: z.enum(LEVELS_OF_USE).default('continuous').meta({ description: 'Level of use' }),
    energy: z.array(words).optional(),
    ppe: ppe.optional(),
    people: z.int().min(1).max(20).default(1),
    formerly: z.array(words).optional().meta({ description: 'Old document numbers and other words to search for' }),
    sources: z.array(source).optional(),
    revisions: z
      .array(revisionShape)
      .min(1)
      .meta({ description: 'Change records, oldest first; the last one is in force, or is the next to be issued' }),
    stages: z.array(z.union([useShape, stageShape])).min(1),
  })
  .meta({ title: 'Procedure' });
