/** Standard unified sizes and their threads per inch. */

export interface UnifiedSize {
  /** As printed: `#10`, `5/8`, `1 1/8`. */
  readonly size: string;
  readonly diameterIn: number;
  /** Threads per inch by series: `UNC`, `UNF`, `UNEF`, `8UN`, `UNS`. */
  readonly tpi: Readonly<Record<string, number>>;
}

function fraction(size: string): number {
  return size.split(' ').reduce((sum, part) => {
    const [top = '', bottom = '1'] = part.split('/');
    return sum + Number(top) / Number(bottom);
  }, 0);
}

/** ASME B1.1: numbered sizes, diameter 0.060 + 0.013 N in. */
function numbered(number: number, tpi: UnifiedSize['tpi']): UnifiedSize {
  return { size: `#${number}`, diameterIn: Number((0.06 + 0.013 * number).toFixed(3)), tpi };
}

function inch(size: string, tpi: UnifiedSize['tpi']): UnifiedSize {
  return { size, diameterIn: fraction(size), tpi };
}

/**
 * ASME B1.1 Table 1 (UNC, UNF, UNEF and the constant-pitch series 8UN to 4 in). memory, apart from the pairs that stand
 * in the check values (Shigley Table 8-2, Machinery's Handbook 31st ed. Table 5c, ASTM A574 and SAE J429 load tables).
 * 1-8 is UNC and never 8UN; 1-14 is UNS, since UNF at 1 in is 12.
 */
export const UNIFIED_SIZES: readonly UnifiedSize[] = [
  numbered(0, { UNF: 80 }),
  numbered(1, { UNC: 64, UNF: 72 }),
  numbered(2, { UNC: 56, UNF: 64 }),
  numbered(3, { UNC: 48, UNF: 56 }),
  numbered(4, { UNC: 40, UNF: 48 }),
  numbered(5, { UNC: 40, UNF: 44 }),
  numbered(6, { UNC: 32, UNF: 40 }),
  numbered(8, { UNC: 32, UNF: 36 }),
  numbered(10, { UNC: 24, UNF: 32 }),
  numbered(12, { UNC: 24, UNF: 28, UNEF: 32 }),
  inch('1/4', { UNC: 20, UNF: 28, UNEF: 32 }),
  inch('5/16', { UNC: 18, UNF: 24, UNEF: 32 }),
  inch('3/8', { UNC: 16, UNF: 24, UNEF: 32 }),
  inch('7/16', { UNC: 14, UNF: 20, UNEF: 28 }),
  inch('1/2', { UNC: 13, UNF: 20, UNEF: 28 }),
  inch('9/16', { UNC: 12, UNF: 18, UNEF: 24 }),
  inch('5/8', { UNC: 11, UNF: 18, UNEF: 24 }),
  inch('11/16', { UNEF: 24 }),
  inch('3/4', { UNC: 10, UNF: 16, UNEF: 20 }),
  inch('13/16', { UNEF: 20 }),
  inch('7/8', { UNC: 9, UNF: 14, UNEF: 20 }),
  inch('15/16', { UNEF: 20 }),
  inch('1', { UNC: 8, UNF: 12, UNEF: 20, UNS: 14 }),
  inch('1 1/16', { UNEF: 18, '8UN': 8 }),
  inch('1 1/8', { UNC: 7, UNF: 12, UNEF: 18, '8UN': 8 }),
  inch('1 3/16', { UNEF: 18, '8UN': 8 }),
  inch('1 1/4', { UNC: 7, UNF: 12, UNEF: 18, '8UN': 8 }),
  inch('1 5/16', { UNEF: 18, '8UN': 8 }),
  inch('1 3/8', { UNC: 6, UNF: 12, UNEF: 18, '8UN': 8 }),
  inch('1 7/16', { UNEF: 18, '8UN': 8 }),
  inch('1 1/2', { UNC: 6, UNF: 12, UNEF: 18, '8UN': 8 }),
  inch('1 9/16', { UNEF: 18, '8UN': 8 }),
  inch('1 5/8', { UNEF: 18, '8UN': 8 }),
  inch('1 11/16', { UNEF: 18, '8UN': 8 }),
  inch('1 3/4', { UNC: 5, '8UN': 8 }),
  inch('1 13/16', { '8UN': 8 }),
  inch('1 7/8', { '8UN': 8 }),
  inch('1 15/16', { '8UN': 8 }),
  inch('2', { UNC: 4.5, '8UN': 8 }),
  inch('2 1/8', { '8UN': 8 }),
  inch('2 1/4', { UNC: 4.5, '8UN': 8 }),
  inch('2 3/8', { '8UN': 8 }),
  inch('2 1/2', { UNC: 4, '8UN': 8 }),
  inch('2 5/8', { '8UN': 8 }),
  inch('2 3/4', { UNC: 4, '8UN': 8 }),
  inch('2 7/8', { '8UN': 8 }),
  inch('3', { UNC: 4, '8UN': 8 }),
  inch('3 1/8', { '8UN': 8 }),
  inch('3 1/4', { UNC: 4, '8UN': 8 }),
  inch('3 3/8', { '8UN': 8 }),
  inch('3 1/2', { UNC: 4, '8UN': 8 }),
  inch('3 5/8', { '8UN': 8 }),
  inch('3 3/4', { UNC: 4, '8UN': 8 }),
  inch('3 7/8', { '8UN': 8 }),
  inch('4', { UNC: 4, '8UN': 8 }),
];
