/** The next name in a shop's scheme of revisions. */

import type { ControlRules } from '../resolve/types.ts';

/** Letters that are not read as figures or as each other (ASME Y14.35, from memory). */
const LETTERS = 'ABCDEFGHJKLMNPRTUVWY';

/** `B` after `A`, `AA` after `Y`; `4` after `3`. Undefined when the name does not follow the scheme. */
export function nextRevision(rev: string, scheme: ControlRules['scheme']): string | undefined {
  if (scheme === 'numbers') return /^\d+$/.test(rev) ? String(Number(rev) + 1) : undefined;
  const digits = [...rev].map((c) => LETTERS.indexOf(c));
  if (digits.includes(-1) || digits.length === 0) return undefined;
  for (let i = digits.length - 1; i >= 0; i--) {
    const next = (digits[i] ?? 0) + 1;
    if (next < LETTERS.length) {
      digits[i] = next;
      return digits.map((d) => LETTERS[d] ?? '').join('');
    }
    digits[i] = 0;
  }
  return `A${digits.map((d) => LETTERS[d] ?? '').join('')}`;
}
