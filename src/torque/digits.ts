/** A printed number with one slip of the pen: two digits exchanged, or one digit mistyped. */

import type { Torque } from '../units/index.ts';

/** A number that a slip of the pen may have been meant for. */
export interface DigitSlip {
  readonly meant: number;
  /** As it would have been printed: `174`. */
  readonly text: string;
  /** What probably happened: `the 1st and 2nd digit exchanged`. */
  readonly likely: string;
}

/** How near the mended number must come to the expected one, besides half its last digit. Practice. */
export const DIGIT_FIT = 0.03;

/**
 * The number nearest to `expected` (in the unit of `stated`) that comes from `stated` by exchanging two neighbouring
 * digits, else by changing one digit; undefined where none comes within 3 % and half its last digit. The digits are those
 * printed, trailing zeros of the decimals included; a first digit is never made 0.
 */
export function digitSlip(stated: Torque, expected: number): DigitSlip | undefined {
  const text = stated.value.toFixed(stated.decimals);
  const half = 10 ** -stated.decimals / 2;
  return nearest(exchanged(text), expected, half) ?? nearest(changed(text), expected, half);
}

type Candidate = Omit<DigitSlip, 'meant'>;

function nearest(candidates: readonly Candidate[], expected: number, half: number): DigitSlip | undefined {
  const fits = candidates
    .map((c) => ({ ...c, meant: Number(c.text) }))
    .filter((c) => Math.abs(c.meant - expected) <= DIGIT_FIT * expected + half)
    .sort((a, b) => Math.abs(a.meant - expected) - Math.abs(b.meant - expected));
  return fits[0];
}

/** Positions of the digits in a printed number, the point left out. */
function places(text: string): readonly number[] {
  return [...text].flatMap((sign, i) => (sign === '.' ? [] : [i]));
}

function exchanged(text: string): readonly Candidate[] {
  const at = places(text);
  return at.slice(1).flatMap((right, i) => {
    const left = at[i] ?? 0;
    const signs = [...text];
    [signs[left], signs[right]] = [signs[right] ?? '', signs[left] ?? ''];
    const other = signs.join('');
    if (other === text || startsWithNought(other)) return [];
    return [{ text: other, likely: `the ${ordinal(i + 1)} and ${ordinal(i + 2)} digit exchanged` }];
  });
}

function changed(text: string): readonly Candidate[] {
  return places(text).flatMap((place, i) =>
    [...'0123456789'].flatMap((digit) => {
      const other = text.slice(0, place) + digit + text.slice(place + 1);
      if (other === text || startsWithNought(other)) return [];
      return [{ text: other, likely: `the ${ordinal(i + 1)} digit ${text[place]} instead of ${digit}` }];
    }),
  );
}

/** `07` is no printed number, `0.7` is one. */
function startsWithNought(text: string): boolean {
  return /^0\d/.test(text);
}

function ordinal(n: number): string {
  return ['', '1st', '2nd', '3rd'][n] ?? `${n}th`;
}
