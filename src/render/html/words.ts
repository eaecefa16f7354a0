/** Small phrases that pages need again and again. */

import { NO_BREAK_SPACE, UNITS } from '../../units/index.ts';

/** `1 step`, `12 steps`; number and noun joined by a no-break space. */
export function count(n: number, one: string, many: string = `${one}s`): string {
  return `${n}${NO_BREAK_SPACE}${n === 1 ? one : many}`;
}

/** `a`, `a and b`, `a, b and c`. */
export function list(items: readonly string[]): string {
  if (items.length < 2) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} and ${items[items.length - 1]}`;
}

/** Step numbers with runs drawn together: `3, 5 to 8, 12`. */
export function ranges(numbers: readonly number[]): string {
  const sorted = [...new Set(numbers)].sort((a, b) => a - b);
  const out: string[] = [];
  for (let i = 0; i < sorted.length; ) {
    let j = i;
    while (sorted[j + 1] === (sorted[j] ?? 0) + 1) j++;
    const from = sorted[i];
    const to = sorted[j];
    if (j - i >= 2) out.push(`${from} to ${to}`);
    else for (let k = i; k <= j; k++) out.push(String(sorted[k]));
    i = j + 1;
  }
  return out.join(', ');
}

/** `45 min`, `2 h`, `2 h 15 min`, `3 d` from seconds; empty for none. Under a minute in seconds. */
export function duration(seconds: number): string {
  if (seconds <= 0) return '';
  const s = NO_BREAK_SPACE;
  if (seconds < 60) return `${Math.round(seconds)}${s}s`;
  const minutes = Math.round(seconds / 60);
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (hours === 0) return `${rest}${s}min`;
  return rest === 0 ? `${hours}${s}h` : `${hours}${s}h${s}${rest}${s}min`;
}

/** First letter as a capital: register entries are written in lower case where they stand in a sentence. */
export function capital(text: string): string {
  const first = [...text][0] ?? '';
  return first.toLocaleUpperCase('en') + text.slice(first.length);
}

const UNIT_AFTER_NUMBER = new RegExp(
  String.raw`(\d) (${UNITS.map((u) => u.symbol.replaceAll('/', String.raw`\/`)).join('|')})(?![\p{L}\p{N}])`,
  'gu',
);

/** Joins number and unit in words that came as plain text, such as the name `24 mm socket`. */
export function joinUnits(text: string): string {
  return text.replace(UNIT_AFTER_NUMBER, `$1${NO_BREAK_SPACE}$2`);
}
