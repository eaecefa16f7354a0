/** Shapes of the registers of document control: outside documents, temporary changes, feedback. */

import { z } from 'zod';
import { benchId, date, docNumber, id, personId, revision, words } from './common.ts';

export const OUTSIDE_KINDS = [
  "maker's manual",
  'drawing',
  'standard',
  'works standard',
  'code or rule',
  'data sheet',
] as const;

export const outsideShape = z
  .record(
    id,
    z.strictObject({
      document: words.meta({ description: 'Name of the document, as sources name it' }),
      kind: z.enum(OUTSIDE_KINDS),
      edition: words.meta({ description: 'Edition that the shop holds now' }),
      owner: personId.meta({ description: 'Who watches for new editions' }),
      received: date.optional(),
      kept: words.optional().meta({ description: 'Where it is kept' }),
      confirmed: z
        .record(docNumber, z.strictObject({ by: personId, on: date, finding: words }))
        .optional()
        .meta({
          description: 'Procedures that were compared with the present edition although they name an older one',
        }),
    }),
  )
  .meta({ title: 'Outside documents' });

const scopeShape = z.strictObject({
  benches: z.array(benchId).min(1).optional(),
  variants: z.array(id).min(1).optional().meta({ description: 'Variants as in addresses: large, large-left' }),
  serials: z.strictObject({ from: z.int().min(0), to: z.int().min(0) }).optional(),
});

export const temporaryShape = z
  .record(
    docNumber,
    z.strictObject({
      doc: docNumber,
      rev: revision.meta({ description: 'Issue that it changes' }),
      step: z.int().min(1).meta({ description: 'Number of the step before which it is shown' }),
      text: words.meta({ description: 'What is done otherwise' }),
      reason: words,
      scope: scopeShape.optional().meta({ description: 'Where it holds; everywhere, unless said' }),
      author: personId,
      approver: personId,
      approved: date,
      from: date,
      until: date.meta({ description: 'Last day on which it holds' }),
    }),
  )
  .meta({ title: 'Temporary changes' });

export const feedbackShape = z
  .record(
    docNumber,
    z.strictObject({
      doc: docNumber,
      rev: revision,
      step: z.int().min(1).optional(),
      from: words.meta({ description: 'Who says it' }),
      on: date,
      text: words,
      answer: z.strictObject({ by: personId, on: date, text: words }).optional(),
    }),
  )
  .meta({ title: 'Feedback' });
