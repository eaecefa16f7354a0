/** Property classes and grades of nuts: their printed names and the spellings under which people know them. */

export interface NutGrade {
  /** Printed form: `8`, `04`, `A2-70`, `SAE 5`, `ASTM A194 2H`, `ASTM A563 DH`. */
  readonly id: string;
  /** Standard that defines it: `ISO 898-2`, `ISO 3506-2`, `SAE J995`, `ASTM A194`. */
  readonly standard: string;
}

export interface KnownNut extends NutGrade {
  /** Folded spellings (see `foldNut`). */
  readonly aliases: readonly string[];
}

/** Lower case, the words that carry nothing dropped, no blanks, hyphens or slashes; `grade 5` becomes `sae5`. */
export function foldNut(text: string): string {
  const words = text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(/\b(?:en\s+)?iso\s*(?:898(?:-2)?|3506(?:-2)?)\b/g, ' ')
    .replace(/\b(?:astm|nuts?|heavy|hex(?:agon)?)\b/g, ' ')
    .replace(/\b(a194|a563)(?:\/a\d+m|m)\b/g, '$1 ')
    .replace(/\b(?:sae\s*)?j\s?995\b/g, ' sae ')
    .replace(/\b(?:property\s+)?cl(?:ass)?\.?\s*(?=\d)/g, ' ')
    .replace(/\bgrp\.?\s*(?=\d)/g, 'group')
    .replace(/\balloy\b/g, ' ')
    .trim();
  const plainGrade = /^(?:grade|gr)\.?\s*(\d)$/.exec(words)?.[1];
  if (plainGrade !== undefined) return `sae${plainGrade}`;
  return words.replace(/\b(?:grade|gr)\b\.?/g, ' ').replace(/[\s\-_/(),]+/g, '');
}

/** ISO 898-2:2012 Table 2; `04` and `05` are thin nuts. */
export const FULL_NUT_CLASSES = ['5', '6', '8', '9', '10', '12'];
const THIN_NUT_CLASSES = ['04', '05'];

/**
 * ISO 3506-2:2020: classes by steel (memory for the list). A class is a tenth of the stress under proof load; one with a
 * leading 0 is a thin nut.
 */
export const STAINLESS_NUTS: readonly string[] = [
  ...['A1', 'A2', 'A3', 'A4', 'A5'].flatMap((steel) =>
    ['50', '70', '80', '025', '035', '040'].map((c) => `${steel}-${c}`),
  ),
  'A4-100',
  'A5-100',
  ...['D2', 'D4', 'D6', 'D8'].flatMap((steel) => ['70', '80', '100', '035', '040', '050'].map((c) => `${steel}-${c}`)),
  'C1-50',
  'C1-70',
  'C1-110',
  'C1-025',
  'C1-035',
  'C1-055',
  'C3-80',
  'C3-040',
  'C4-50',
  'C4-70',
  'C4-025',
  'C4-035',
  'F1-45',
  'F1-60',
  'F1-020',
  'F1-030',
];

const SAE = ['2', '5', '8'];

/** ASTM A194/A194M: the grades of general use. */
const A194 = ['2H', '2HM', '3', '4', '6', '7', '7M', '8', '8C', '8M', '8T'];
const A563 = ['A', 'C', 'C3', 'DH', 'DH3'];

/** ASTM F594: alloy group 1 is the 304 family, group 2 the 316 family. The letter is the mark on the nut. */
const F594: readonly (readonly [condition: string, mark: string])[] = [
  ['group 1 AF', 'F594A'],
  ['group 1 A', 'F594B'],
  ['group 1 CW1', 'F594C'],
  ['group 1 CW2', 'F594D'],
  ['group 2 AF', 'F594E'],
  ['group 2 A', 'F594F'],
  ['group 2 CW1', 'F594G'],
  ['group 2 CW2', 'F594H'],
];

function entry(id: string, standard: string, aliases: readonly string[] = []): KnownNut {
  return { id, standard, aliases: [...new Set([id, ...aliases].map(foldNut))] };
}

/** A bare number is a class of ISO 898-2 or a grade of SAE J995: no alias for `ASTM A194 7`. */
const bare = (grade: string) => (/^\d+$/.test(grade) ? [] : [grade]);

/** Every nut with a strength table here, in the order in which people should be shown them. */
export const KNOWN_NUTS: readonly KnownNut[] = [
  ...[...THIN_NUT_CLASSES, ...FULL_NUT_CLASSES].map((c) => entry(c, 'ISO 898-2')),
  ...STAINLESS_NUTS.map((c) => entry(c, 'ISO 3506-2')),
  ...SAE.map((g) => entry(`SAE ${g}`, 'SAE J995')),
  ...A194.map((g) => entry(`ASTM A194 ${g}`, 'ASTM A194', bare(g))),
  ...A563.map((g) => entry(`ASTM A563 ${g}`, 'ASTM A563', g.startsWith('DH') ? [g] : [])),
  ...F594.map(([condition, mark]) => entry(`ASTM F594 ${condition}`, 'ASTM F594', [mark])),
];

/** Every known nut as plain data. */
export const NUT_GRADES: readonly NutGrade[] = KNOWN_NUTS.map(({ id, standard }) => ({ id, standard }));
