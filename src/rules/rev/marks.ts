/** The two ways in which a shop names its revisions, and what comes next in each. */

import type { ControlRules } from '../../resolve/index.ts';

/** A to Z without I, O, Q, S, X and Z: ASME Y14.35 (memory). */
const LETTERS = 'ABCDEFGHJKLMNPRTUVWY';

/** Whether the mark is one of the scheme. Letters that are read as figures are of the scheme: they have a check of their own. */
export function isOfScheme(mark: string, scheme: ControlRules['scheme']): boolean {
  return scheme === 'letters' ? /^[A-Z]+$/.test(mark) : /^(?:0|[1-9]\d*)$/.test(mark);
}

/** Below zero when `a` comes before `b`; both are of the scheme. */
export function compareMarks(a: string, b: string, scheme: ControlRules['scheme']): number {
  if (scheme === 'numbers') return Number(a) - Number(b);
  return a.length - b.length || (a < b ? -1 : a > b ? 1 : 0);
}

/** `D` after `C`, `AA` after `Y`, `4` after `3`; the first mark when there is none before. */
export function nextMark(before: string | undefined, scheme: ControlRules['scheme']): string {
  if (scheme === 'numbers') return before === undefined ? '1' : String(Number(before) + 1);
  const signs = [...(before ?? '')];
  for (let i = signs.length - 1; i >= 0; i -= 1) {
    const following = [...LETTERS].find((l) => l > (signs[i] ?? ''));
    if (following !== undefined) {
      signs[i] = following;
      return signs.join('');
    }
    signs[i] = 'A';
  }
  return `A${signs.join('')}`;
}
