/** Property classes and grades: their printed names and the spellings under which people know them. */

export interface Grade {
  /** Printed form: `8.8`, `A2-70`, `SAE 5`, `ASTM A193 B7`. */
  readonly id: string;
  /** Standard that defines it: `ISO 898-1`, `SAE J429`, `ASTM A193`. */
  readonly standard: string;
}

export interface KnownGrade extends Grade {
  /** Folded spellings (see `foldGrade`). */
  readonly aliases: readonly string[];
}

/** Lower case, decimal comma to point, the words that carry nothing dropped, no blanks, hyphens or slashes. */
export function foldGrade(text: string): string {
  const words = text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(/\b(?:en\s+)?iso\s*(?:898(?:-1)?|3506(?:-1)?)\b/g, ' ')
    .replace(/\bastm\b|\btype\s*1\b/g, ' ')
    .replace(/\b(a193|a320|a449|a574)(?:\/a\d+m|m)\b/g, '$1 ')
    .replace(/\b(?:sae\s*)?j\s?429\b/g, ' sae ')
    .replace(/\b(?:property\s+)?cl(?:ass)?\.?\s*(?=\d+\.\d)/g, ' ')
    .replace(/\bcl(?:ass)?\.?\s*(?=\d)/g, 'class')
    .replace(/\bgrp\.?\s*(?=\d)/g, 'group')
    .trim();
  const plainGrade = /^(?:grade|gr)\.?\s*(\d(?:\.\d)?)$/.exec(words)?.[1];
  if (plainGrade !== undefined) return ISO_898.includes(plainGrade) ? plainGrade : `sae${plainGrade}`;
  return words.replace(/\b(?:grade|gr)\b\.?/g, ' ').replace(/[\s\-_/(),]+/g, '');
}

/** ISO 898-1:2013. */
const ISO_898 = ['4.6', '4.8', '5.6', '5.8', '6.8', '8.8', '9.8', '10.9', '12.9'];

/** ISO 3506-1:2020 (memory for the list; austenitic classes as in the check values). */
const ISO_3506 = [
  ...['A1', 'A2', 'A3', 'A4', 'A5'].flatMap((steel) => ['50', '70', '80'].map((c) => `${steel}-${c}`)),
  'A4-100',
  'A5-100',
  ...['D2', 'D4', 'D6', 'D8'].flatMap((steel) => ['70', '80', '100'].map((c) => `${steel}-${c}`)),
  'C1-50',
  'C1-70',
  'C1-110',
  'C3-80',
  'C4-50',
  'C4-70',
  'F1-45',
  'F1-60',
];

/** SAE J429 (Grade 7 in older editions only). */
const SAE = ['1', '2', '4', '5', '5.2', '7', '8', '8.1', '8.2'];

/** ASTM A193/A193M and A320/A320M: the grades of general use. */
const A193 = [
  'B5',
  'B6',
  'B7',
  'B7M',
  'B16',
  ...['B8', 'B8C', 'B8M', 'B8T'].flatMap((g) => [`${g} class 1`, `${g} class 2`]),
];
const A320 = ['L7', 'L7M', 'L43', ...['B8', 'B8C', 'B8M', 'B8T'].flatMap((g) => [`${g} class 1`, `${g} class 2`])];

/** ASTM F593: alloy group 1 is the 304 family, group 2 the 316 family. The letter is the head mark. */
const F593: readonly (readonly [condition: string, mark?: string])[] = [
  ['group 1 A', 'F593B'],
  ['group 1 CW1', 'F593C'],
  ['group 1 CW2', 'F593D'],
  ['group 2 A', 'F593F'],
  ['group 2 CW1', 'F593G'],
  ['group 2 CW2', 'F593H'],
];

function entry(id: string, standard: string, aliases: readonly string[] = []): KnownGrade {
  return { id, standard, aliases: [...new Set([id, ...aliases].map(foldGrade))] };
}

/** Every grade with a strength table here, in the order in which people should be shown them. */
export const KNOWN_GRADES: readonly KnownGrade[] = [
  ...ISO_898.map((c) => entry(c, 'ISO 898-1', c === '12.9' ? ['12.9_'] : [])),
  ...ISO_3506.map((c) => entry(c, 'ISO 3506-1')),
  ...SAE.map((g) => entry(`SAE ${g}`, 'SAE J429')),
  entry('ASTM A449', 'ASTM A449'),
  entry('ASTM A574', 'ASTM A574', ['A574 socket head', 'A574 socket head cap screw']),
  ...A193.map((g) => entry(`ASTM A193 ${g}`, 'ASTM A193', [g])),
  ...A320.map((g) => entry(`ASTM A320 ${g}`, 'ASTM A320', g.startsWith('L') ? [g] : [])),
  ...F593.map(([c, mark]) => entry(`ASTM F593 ${c}`, 'ASTM F593', mark === undefined ? [] : [mark, `F593 alloy ${c}`])),
];

/** Every known grade as plain data. */
export const GRADES: readonly Grade[] = KNOWN_GRADES.map(({ id, standard }) => ({ id, standard }));
