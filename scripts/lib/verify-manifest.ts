/** The manifest of a published folder, read as something that somebody may have altered. */

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';
import { UsageFault } from './faults.ts';
import { MANIFEST } from './staging.ts';

const hex = z.string().regex(/^[0-9a-f]{64}$/);

const shape = z.object({
  shop: z.string(),
  asOf: z.string().regex(/^\d{4}-\d{2}-\d{2}$/),
  engine: z.string(),
  ledger: z.object({ entries: z.int().min(0), head: hex }),
  documents: z.array(
    z.object({
      document: z.string(),
      revision: z.string(),
      standing: z.string().optional(),
      effective: z.string(),
      variants: z.array(z.object({ variant: z.string(), path: z.string(), card: z.string(), fingerprint: z.string() })),
    }),
  ),
  files: z.record(z.string(), hex),
});

export type Manifest = z.output<typeof shape>;

/** Something that does not hold. Kind in one word, then what it is about. */
export interface Finding {
  readonly kind: 'differs' | 'missing' | 'surplus' | 'manifest' | 'ledger' | 'out of date';
  readonly words: string;
}

/** The manifest, or why it cannot be believed. Throws UsageFault when the folder is no published one. given: as typed. */
export function readManifest(folder: string, given: string): Manifest | Finding {
  const text = readText(folder, given);
  try {
    const read = shape.safeParse(JSON.parse(text));
    if (read.success) return read.data;
    const where = read.error.issues[0]?.path.join('.') ?? '';
    return {
      kind: 'manifest',
      words: `${MANIFEST} does not say what this version looks for${where === '' ? '' : ` (\`${where}\`)`}: it was altered, or published by an older version`,
    };
  } catch {
    return { kind: 'manifest', words: `${MANIFEST} is not JSON: it was altered after it was published` };
  }
}

function readText(folder: string, given: string): string {
  try {
    return readFileSync(path.join(folder, MANIFEST), 'utf8');
  } catch {
    throw new UsageFault(
      `\`${given}\` is not a published folder: it holds no ${MANIFEST}`,
      'name the folder that `npm run build` has written',
    );
  }
}
