/**
 * Which media an elastomer stands: a general table for the bench, by the symbols of ISO 1629. It cannot know grade, time
 * and temperature, so that it only ever warns, and the table of the seal's maker comes before it.
 *
 * ok: stands it. no: swells, softens or is eaten. ask: depends on grade, time or temperature.
 * Every cell is from memory of makers' tables except those in READ, which rest on a text that was read.
 */

import { MEDIA } from '../../model/shapes/registers.ts';

export type Verdict = 'ok' | 'no' | 'ask';

/** Columns of the table: what content may name. Greases and pastes go by their base oil. */
const COLUMNS = MEDIA;

export type Medium = (typeof COLUMNS)[number];

const ROWS = {
  //     mineral PAO   ester PAG   sil.  PFPE  brake w-gly IPA   spir. keton chlor
  NBR: ['ok', 'ok', 'ask', 'ask', 'ok', 'ok', 'no', 'ok', 'ok', 'ok', 'no', 'no'],
  HNBR: ['ok', 'ok', 'ask', 'ask', 'ok', 'ok', 'no', 'ok', 'ok', 'ok', 'no', 'no'],
  FKM: ['ok', 'ok', 'ok', 'ask', 'ok', 'ok', 'no', 'ask', 'ok', 'ok', 'no', 'ok'],
  EPDM: ['no', 'no', 'no', 'ask', 'ok', 'ok', 'ok', 'ok', 'ok', 'no', 'ok', 'no'],
  VMQ: ['ask', 'ask', 'no', 'ask', 'no', 'ok', 'ask', 'ask', 'ok', 'no', 'no', 'no'],
  FVMQ: ['ok', 'ok', 'ask', 'ask', 'ask', 'ask', 'no', 'no', 'ok', 'ok', 'no', 'ask'],
  CR: ['ask', 'ask', 'no', 'ask', 'ok', 'ok', 'ask', 'ask', 'ok', 'ask', 'no', 'no'],
  AU: ['ok', 'ok', 'ask', 'ask', 'ok', 'ok', 'no', 'no', 'ask', 'ok', 'no', 'no'],
  FFKM: ['ok', 'ok', 'ok', 'ok', 'ok', 'ask', 'ok', 'ok', 'ok', 'ok', 'ok', 'ok'],
  PTFE: ['ok', 'ok', 'ok', 'ok', 'ok', 'ok', 'ok', 'ok', 'ok', 'ok', 'ok', 'ok'],
} as const satisfies Readonly<Record<string, Readonly<Record<number, Verdict>> & { readonly length: 12 }>>;

export type Elastomer = keyof typeof ROWS;

const O_RING_BOOK = 'excerpt of an O-ring handbook, section II, on basic elastomers';
const SEAL_GLOSSARY = 'glossary of a seal supplier, seal chemical compatibility: general guide';

/** Cells that rest on a text that was read, with that text. */
export const READ: Readonly<Partial<Record<`${Elastomer}, ${Medium}`, string>>> = {
  'NBR, mineral oil': O_RING_BOOK,
  'NBR, water-glycol': O_RING_BOOK,
  'NBR, ketone': O_RING_BOOK,
  'FKM, mineral oil': 'Materials Research Express, 2018: FKM held in all three lubricants tested (abstract)',
  'FKM, ketone': SEAL_GLOSSARY,
  'EPDM, mineral oil': 'Materials Research Express, 2018: EPDM degraded in mineral engine oil (abstract)',
  'EPDM, brake fluid': 'seal design guide: ethylene-propylene is the choice for glycol brake fluid',
  'EPDM, water-glycol': 'seal design guide: ethylene-propylene is the choice for glycol brake fluid',
  'EPDM, ketone': 'note of a gasket cutter on acetone and rubber: it does not harm EPDM, and swells NBR and FKM',
  'VMQ, silicone': 'TLT, 2016: silicone oil may soften parts of pure silicone',
  'VMQ, mineral spirits': SEAL_GLOSSARY,
};

export const ELASTOMER_SYMBOLS: readonly string[] = Object.keys(ROWS);
export const TABLE_MEDIA: readonly string[] = COLUMNS;

/** What the table says; undefined for an elastomer or a medium that it does not hold. */
export function verdictOf(elastomer: string, medium: string): Verdict | undefined {
  const column = TABLE_MEDIA.indexOf(medium);
  const row = Object.hasOwn(ROWS, elastomer) ? ROWS[elastomer as Elastomer] : undefined;
  return column < 0 ? undefined : row?.[column];
}

/** The text on which the cell rests; undefined where it is from memory. */
export function textBehind(elastomer: string, medium: string): string | undefined {
  return Object.entries(READ).find(([cell]) => cell === `${elastomer}, ${medium}`)?.[1];
}
