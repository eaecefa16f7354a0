/** Shapes of the shop's own registers: shop, people, benches, tools, consumables. */

import { z } from 'zod';
import {
  benchId,
  CHANGE_CLASSES,
  date,
  docNumber,
  id,
  limit,
  personId,
  ppe,
  quantity,
  source,
  words,
} from './common.ts';

const days = z.int().min(1).max(3650);

const controlShape = z.strictObject({
  revisions: z
    .enum(['letters', 'numbers'])
    .optional()
    .meta({ description: 'How revisions are named: A, B, C without those that are read as figures, or 1, 2, 3' }),
  signed: z
    .array(z.enum(CHANGE_CLASSES))
    .optional()
    .meta({ description: 'Classes of change whose approval must carry a signature' }),
  signed_since: date.optional().meta({ description: 'First day of that rule: acts before it need no signature' }),
  receipts: z
    .strictObject({ suspension: days.optional(), major: days.optional(), minor: days.optional() })
    .optional()
    .meta({ description: 'Days within which a bench confirms; else 1, 3 and 7' }),
  temporary: z
    .strictObject({
      most: z.int().min(1).max(9).optional().meta({ description: 'Most that may be open on one document; else 2' }),
      days: days.optional().meta({ description: 'Longest that one may hold; else 90' }),
    })
    .optional()
    .meta({ description: 'Limits of temporary changes' }),
  due_soon: days.optional().meta({ description: 'Days before a review is due that it is called due soon; else 60' }),
  fresh: days.optional().meta({ description: 'Days after which an answer of the site is too old; else 30' }),
});

export const shopShape = z
  .strictObject({
    name: words,
    address: z
      .string()
      .regex(/^https?:\/\/\S+$/)
      .meta({ description: 'Web address at which the site is served, such as https://binder.example/' }),
    language: z
      .string()
      .regex(/^[a-z]{2}(-[A-Z]{2})?$/)
      .default('en')
      .meta({ description: 'Language of the texts, two letters: en, or en-GB' }),
    torque: z
      .strictObject({
        leading: z.enum(['N·m', 'lbf·ft']).meta({ description: 'Unit that stands first' }),
        second: z.enum(['N·m', 'lbf·ft']).meta({ description: 'Unit in brackets' }),
      })
      .meta({ description: 'Units in which torques are shown' }),
    card: z.strictObject({ format: z.enum(['A4', 'A5', 'Letter']) }).meta({ description: 'Card format' }),
    safety: words.meta({
      description: "The shop's own words: maker's manual, lockout, codes and licensed practice govern",
    }),
    stored_energy: words
      .optional()
      .meta({ description: "What the shop's lockout procedure is called and where it hangs" }),
    report: words.optional().meta({ description: 'Whom to tell when a card is wrong' }),
    limits: z
      .strictObject({
        lift_alone: quantity('Heaviest part that one person lifts').optional(),
        heat: quantity('Highest temperature to which a part may be heated').optional(),
      })
      .optional()
      .meta({ description: "The shop's own limits, where they differ from 23 kg and 120 degC" }),
    tables: z
      .array(
        z.strictObject({
          grade: words,
          series: z.enum(['coarse', 'fine', 'UNC', 'UNF', 'UNEF', '8UN']),
          from: words.optional().meta({ description: 'Smallest thread wanted, such as M6 or 1/2-13' }),
          to: words.optional().meta({ description: 'Largest thread wanted' }),
          condition: id,
          preload: quantity('Share of the proof load (of the yield load where there is no proof load)'),
        }),
      )
      .optional()
      .meta({ description: 'Torque tables that the shop wants computed' }),
    control: controlShape.optional().meta({ description: "The shop's own rules of document control" }),
  })
  .meta({ title: 'Shop' });

export const peopleShape = z
  .record(
    personId,
    z.strictObject({ name: words, role: words, approves: z.array(z.enum(['major', 'minor'])).optional() }),
  )
  .meta({ title: 'People' });

export const benchesShape = z
  .record(
    benchId,
    z.strictObject({
      name: words,
      place: words,
      lead: personId.optional(),
      binder: z.array(docNumber).min(1).meta({ description: 'Documents that hang at this bench, in order' }),
      copy: z.int().min(1).max(999).optional().meta({ description: 'Number of the controlled copies that hang here' }),
    }),
  )
  .meta({ title: 'Benches' });

export const TOOL_KINDS = [
  'hand tool',
  'socket',
  'key',
  'torque wrench',
  'measuring tool',
  'special tool',
  'lifting gear',
  'heating gear',
  'power tool',
  'stand',
  'lockout',
  'vessel',
] as const;

export const toolsShape = z
  .record(
    id,
    z.strictObject({
      name: words,
      kind: z.enum(TOOL_KINDS),
      size: quantity('Wrench, socket or key size').optional(),
      drive: quantity('Square drive').optional(),
      range: limit.optional().meta({ description: 'Measuring or torque range' }),
      step: quantity('Graduation of the scale').optional(),
      lever: quantity('Torque wrench: from the square to the middle of the grip').optional(),
      outside: quantity('Socket: outside diameter at the bolt end').optional(),
      capacity: quantity('Safe working load').optional(),
      serial: words.optional(),
      calibration_due: date.optional(),
      uncalibrated: words.optional().meta({
        description: 'Measuring tool: why it needs no calibration, such as: only shows that there is pressure',
      }),
      fixed_at: z
        .array(benchId)
        .min(1)
        .optional()
        .meta({ description: 'Benches at which it stands, when it cannot be carried to another' }),
      kept: words.optional().meta({ description: 'Where it is kept' }),
      also_called: z.array(words).optional().meta({ description: 'Other words by which people search for it' }),
      note: words.optional(),
    }),
  )
  .meta({ title: 'Tools' });

/** What meets an elastomer: the columns of the compatibility table. */
export const MEDIA = [
  'mineral oil',
  'PAO oil',
  'ester oil',
  'PAG oil',
  'silicone',
  'PFPE',
  'brake fluid',
  'water-glycol',
  'isopropanol',
  'mineral spirits',
  'ketone',
  'chlorinated cleaner',
] as const;

export const CONSUMABLE_KINDS = [
  'lubricant',
  'anti-seize',
  'threadlocker',
  'sealant',
  'cleaner',
  'fluid',
  'gas',
  'abrasive',
  'wipe',
  'packing',
  'marking',
  'adhesive',
  'protection',
] as const;

export const consumablesShape = z
  .record(
    id,
    z.strictObject({
      name: words,
      kind: z.enum(CONSUMABLE_KINDS),
      number: words.optional().meta({ description: 'Stock number' }),
      pack: quantity('Pack').optional(),
      condition: id
        .optional()
        .meta({ description: 'Joint condition that it gives: oiled, anti-seize, moly, wax, threadlocked' }),
      nut_factor: z
        .strictObject({
          low: z.number().positive().max(1),
          nominal: z.number().positive().max(1),
          high: z.number().positive().max(1),
          source,
        })
        .optional()
        .meta({ description: "The lubricant maker's own nut factor K, instead of that of the condition" }),
      hazards: z.array(words).optional(),
      ppe: ppe.optional(),
      safety_data: words.optional().meta({ description: 'Where the safety data sheet is' }),
      shelf_life: words.optional(),
      cure: quantity('Time until it holds').optional(),
      medium: z.enum(MEDIA).optional().meta({ description: 'What it is made of, for seals that it meets' }),
      lead: quantity('Delivery time').optional(),
      waste: words.optional().meta({ description: 'How it is disposed of' }),
      also_called: z.array(words).optional(),
      note: words.optional(),
    }),
  )
  .meta({ title: 'Consumables' });
