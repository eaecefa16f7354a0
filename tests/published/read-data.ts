/** Reads the copied tables of published values: comma-separated, a head line, no quotes, semicolons within a cell. */

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { type Grade, parseGrade, parseThread, type Thread } from '../../src/fasteners/index.ts';
import type { Parsed } from '../../src/units/index.ts';

/** One row by column name; an empty cell means that the source does not give the value. */
export interface Row {
  readonly text: (column: string) => string;
  readonly number: (column: string) => number;
  readonly has: (column: string) => boolean;
}

/** Rows of `data/<name>.csv`. */
export function readData(name: string): readonly Row[] {
  const file = path.join(import.meta.dirname, 'data', `${name}.csv`);
  const [head = '', ...lines] = readFileSync(file, 'utf8').trim().split('\n');
  const columns = head.split(',');
  return lines.map((line) => {
    const cells = line.split(',');
    const get = (column: string) => {
      const at = columns.indexOf(column);
      if (at < 0) throw new RangeError(`${name} has no column ${column}`);
      return cells[at] ?? '';
    };
    return { text: get, number: (column) => Number(get(column)), has: (column) => get(column) !== '' };
  });
}

export function value<T>(parsed: Parsed<T>): T {
  if (!parsed.ok) throw new RangeError(`${parsed.problem}; ${parsed.hint}`);
  return parsed.value;
}

export const thread = (text: string): Thread => value(parseThread(text));
export const grade = (text: string): Grade => value(parseGrade(text));

/** Inches of `1-1/8`, `5/8` or `#10`. */
export function inches(text: string): number {
  if (text.startsWith('#')) return 0.06 + 0.013 * Number(text.slice(1));
  return text.split('-').reduce((sum, part) => {
    const [top = '', bottom = '1'] = part.split('/');
    return sum + Number(top) / Number(bottom);
  }, 0);
}

/** Half a unit of the last digit of a printed number: 0.005 for `1.20`, 0.5 for `86`. */
export function halfDigit(text: string): number {
  return 0.5 * 10 ** -(text.split('.')[1]?.length ?? 0);
}

/** The printed form of the size column: `1-1/8` to `1 1/8`. */
export const printedSize = (text: string): string => text.replace('-', ' ');
