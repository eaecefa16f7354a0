/** Shapes of the lines of the ledger. */

import { z } from 'zod';
import type { Entry } from './types.ts';

const hex = z.string().regex(/^[0-9a-f]{64}$/);
const day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const text = z.string().min(1);
const file = z.string().regex(/^[A-Z0-9-]+\/[A-Z0-9]+(\.changes)?\.json$/);

const base = {
  seq: z.int().min(1),
  prev: hex,
  seal: hex,
  recorded: day,
  signature: z.strictObject({ by: text, key: z.string().regex(/^[0-9a-f]{16}$/), value: text }).optional(),
};
const distribution = z.array(z.strictObject({ bench: text, copy: z.int().min(1) }));
const sealed = { file, sha256: hex };

const issue = z.strictObject({
  ...base,
  kind: z.literal('issue'),
  distribution,
  doc: text,
  rev: text,
  title: text,
  change: z.strictObject({ class: z.enum(['major', 'minor']), what: text, why: text }),
  affects: z.array(text),
  author: text,
  approver: text,
  approved: day,
  effective: day,
  snapshot: z.strictObject({ ...sealed, format: z.int().min(1), engine: text }),
  comparison: z.strictObject(sealed).optional(),
  cards: z
    .array(
      z.strictObject({
        variant: z.string(),
        label: z.string(),
        path: text,
        fingerprint: z.string().regex(/^[0-9A-F]{8}$/),
        digest: hex,
        sides: z.int().min(1),
      }),
    )
    .min(1),
});
const suspend = z.strictObject({
  ...base,
  kind: z.literal('suspend'),
  distribution,
  doc: text,
  reason: text,
  by: text,
});
const reinstate = z.strictObject({
  ...base,
  kind: z.literal('reinstate'),
  distribution,
  doc: text,
  reason: text,
  by: text,
  approver: text,
});
const withdraw = z.strictObject({
  ...base,
  kind: z.literal('withdraw'),
  distribution,
  doc: text,
  reason: text,
  by: text,
  approver: text,
  effective: day,
  replacement: text.optional(),
});
const temporary = z.strictObject({
  ...base,
  kind: z.literal('temporary'),
  distribution,
  number: text,
  doc: text,
  rev: text,
  step: z.int().min(1),
  text,
  reason: text,
  scope: z.strictObject({
    benches: z.array(text).min(1).optional(),
    variants: z.array(text).min(1).optional(),
    serials: z.strictObject({ from: z.int(), to: z.int() }).optional(),
  }),
  author: text,
  approver: text,
  approved: day,
  from: day,
  until: day,
});
const temporaryEnd = z.strictObject({
  ...base,
  kind: z.literal('temporary-end'),
  distribution,
  number: text,
  reason: text,
  by: text,
});
const receipt = z.strictObject({
  ...base,
  kind: z.literal('receipt'),
  notice: text,
  bench: text,
  copy: z.int().min(1),
  by: text,
  on: day,
});
const review = z.strictObject({
  ...base,
  kind: z.literal('review'),
  doc: text,
  rev: text,
  by: text,
  on: day,
  finding: text,
});

const entry = z.discriminatedUnion('kind', [
  issue,
  suspend,
  reinstate,
  withdraw,
  temporary,
  temporaryEnd,
  receipt,
  review,
]);

/** The value as a line of the ledger, or what is wrong with it in a few words. */
export function readEntry(value: unknown): { readonly entry: Entry } | { readonly wrong: string } {
  const read = entry.safeParse(value);
  // Optional keys that are absent stay absent: the two types differ in name only.
  if (read.success) return { entry: read.data as Entry };
  const [first] = read.error.issues;
  const where = first === undefined || first.path.length === 0 ? '' : ` at \`${first.path.join('.')}\``;
  return { wrong: `${first?.message ?? 'unknown'}${where}` };
}
