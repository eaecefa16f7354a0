/** Running text: joins numbers to their units and prints units in their one form. */

import { NO_BREAK_SPACE } from './format.ts';
import { UNITS } from './unit-table.ts';

/** Spellings that can mean nothing else in running text; the others are left as the author wrote them. */
const REWRITTEN: Readonly<Record<string, string>> = {
  'N.m': 'N·m',
  Nm: 'N·m',
  'kN.m': 'kN·m',
  'lbf.ft': 'lbf·ft',
  'ft-lbf': 'lbf·ft',
  'lbf.in': 'lbf·in',
  'in-lbf': 'lbf·in',
  'kgf.m': 'kgf·m',
  degC: '°C',
  degF: '°F',
  deg: '°',
};

const SYMBOLS = [...UNITS.map((u) => u.symbol), ...Object.keys(REWRITTEN)]
  .sort((a, b) => b.length - a.length)
  .map((s) => s.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&'))
  .join('|');
const NUMBER_AND_UNIT = new RegExp(String.raw`(\d) ?(${SYMBOLS})(?![\p{L}\p{N}/])`, 'gu');
/** `M16 × 1.5`, `1 1/8`: never parted either. */
const MIXED_FRACTION = /(\d) (\d+\/\d+)/g;

/** `Heat to 110 degC.` becomes `Heat to 110 °C.` with a no-break space before the unit. */
export function joinUnits(text: string): string {
  if (!/\d/.test(text)) return text;
  return text
    .replace(NUMBER_AND_UNIT, (_, digit: string, symbol: string) => {
      const unit = REWRITTEN[symbol] ?? symbol;
      return `${digit}${unit === '°' || unit === '"' ? '' : NO_BREAK_SPACE}${unit}`;
    })
    .replace(MIXED_FRACTION, `$1${NO_BREAK_SPACE}$2`);
}
