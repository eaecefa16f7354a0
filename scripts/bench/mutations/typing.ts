/** How fingers slip. */

import type { Random } from '../random.ts';

/** One slip in a word: two letters exchanged, one lost, one doubled, or the neighbouring key. */
export function mistyped(random: Random, word: string): string {
  for (let tries = 0; tries < 20; tries += 1) {
    const at = random.whole(word.length);
    const letter = word[at] ?? '';
    if (!/[a-z]/i.test(letter)) continue;
    const next = word[at + 1] ?? '';
    const made = [
      () => (/[a-z]/i.test(next) ? word.slice(0, at) + next + letter + word.slice(at + 2) : word),
      () => word.slice(0, at) + word.slice(at + 1),
      () => word.slice(0, at) + letter + word.slice(at),
      () => word.slice(0, at) + beside(letter) + word.slice(at + 1),
    ][random.whole(4)]?.();
    if (made !== undefined && made !== word && made !== '') return made;
  }
  return `${word}e`;
}

const ROWS = ['qwertyuiop', 'asdfghjkl', 'zxcvbnm'];

function beside(letter: string): string {
  const row = ROWS.find((r) => r.includes(letter.toLowerCase())) ?? 'qw';
  const at = row.indexOf(letter.toLowerCase());
  return row[at + 1] ?? row[at - 1] ?? letter;
}

/** Two neighbouring figures of the number exchanged; undefined where all figures are alike. */
export function transposed(random: Random, number: string): string | undefined {
  const places = [...number].flatMap((d, i) => {
    const next = number[i + 1] ?? '';
    return /\d/.test(d) && /\d/.test(next) && d !== next ? [i] : [];
  });
  if (places.length === 0) return undefined;
  const at = random.pick(places);
  return number.slice(0, at) + (number[at + 1] ?? '') + (number[at] ?? '') + number.slice(at + 2);
}

/** The figure typed one key beside: 4 for 3 or 5. Never 0 for a first figure. */
export function besideFigure(random: Random, figure: string): string {
  const n = Number(figure);
  if (n <= 1) return n === 0 ? '9' : '2';
  if (n === 9) return random.pick(['8', '0']);
  return String(n + random.pick([-1, 1]));
}

/** The decimal point moved by one place: 135 to 13.5 or 1350, 0.05 to 0.5. */
export function moved(number: string, by: 1 | -1): string {
  const decimals = (number.split('.')[1] ?? '').length;
  const value = Number(number) * 10 ** by;
  return value
    .toFixed(Math.max(0, decimals - by))
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');
}
