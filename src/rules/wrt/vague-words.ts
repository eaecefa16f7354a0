/** Words that hide a missing limit. */

import type { Step } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { eachText, type Finding, KIND_NAMES, type Kind } from './fields.ts';
import { headFrom, heads } from './heads.ts';
import type { Reading } from './reading.ts';
import { VAGUE } from './vague.ts';

/** Tried where a word begins. */
const ANY = new RegExp(`(?:${VAGUE.map((v) => `(${v.pattern})`).join('|')})(?![\\w-])`, 'iy');
const HEADS = heads(VAGUE.map((v) => v.pattern));
/** The value of these stands in the step itself when it tightens, measures or heats. */
const TOLD_ELSEWHERE = /^(?:specified|recommended|required|prescribed|stated|correct|right) /i;

export function* vagueWordsIn({ typed }: Reading, kind: Kind): Generator<Finding> {
  for (let at = headFrom(HEADS, typed, 0); at < typed.length; at = headFrom(HEADS, typed, at)) {
    ANY.lastIndex = at;
    const match = ANY.exec(typed);
    at = match === null ? at + 1 : at + match[0].length;
    if (match === null) continue;
    const words = match[0].trimEnd();
    // What ought to be belongs to warnings and to actions out of limit; in a step it is an order that may be refused.
    if (/^should$/i.test(words) && kind !== 'do') continue;
    const which = match.slice(1).findIndex((group) => group !== undefined);
    yield {
      message: `\`${words}\` in the ${KIND_NAMES[kind]} leaves the limit to the reader`,
      hint: VAGUE[which]?.instead ?? '',
      start: match.index,
      end: match.index + words.length,
    };
  }
}

/** Whether the step gives the value that `the specified torque` and its like point at. */
function isToldElsewhere(step: Step, { message }: Finding): boolean {
  const words = message.slice(1);
  return (
    TOLD_ELSEWHERE.test(words) && (step.tighten !== undefined || step.measures.length > 0 || step.heat !== undefined)
  );
}

export const vagueWords: Check = {
  code: 'WRT003',
  name: 'vague-words',
  severity: 'warning',
  title: 'A step, an avoidance or an action out of limit says `as required`, `properly` or the like.',
  why: 'Two mechanics read two limits into it, and the one who is wrong learns it from the machine.',
  sources: [
    "DOE-STD-1029-92 Writer's guide for technical procedures: no vague adverbs, limits as figures (memory)",
    '10 CFR 50 appendix B criterion V: acceptance criteria in figures or in signs that can be seen',
    'the list of words is common practice of technical editors',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: Wipe both faces «thoroughly» with a <consumable:wipe>, «if necessary» twice.\n',
      },
    ],
    good: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: Wipe both faces with a <consumable:wipe> until the wipe stays white.\n',
      },
    ],
  },
  found: eachText(['do', 'if out', 'avoid'], vagueWordsIn, isToldElsewhere),
};
