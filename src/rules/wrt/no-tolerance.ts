/** A value to be set that leaves no room. */

import type { Check } from '../check.ts';
import { eachText, type Finding } from './fields.ts';
import { dimensionOf, numberAt } from './measured.ts';
import { furtherOrders, mainVerb } from './orders.ts';
import type { Reading, Word } from './reading.ts';

/** Verbs that bring something to a value. */
const SETS =
  /^(?:set|reset|adjust|shim|space|heat|reheat|preheat|warm|cool|pressuri[sz]e|pump|inflate|charge|fill|refill|tension|regulate|bring|machine|bore|ream|turn|grind|cut|trim|file|hone|lap|mill|skim|dress|lengthen|shorten|stretch|compress|reduce|increase|hold|keep|maintain|make|open|close|position|soak|bake|press)$/;
/** Of lengths these are ways to go, not sizes. */
const MOVES = /^(?:raise|lower|lift)$/;
/** The words before or behind that make a limit of it. */
const LIMIT_BEFORE =
  /^(?:most|least|than|maximum|minimum|max|min|within|below|above|under|over|between|exceeding|nominal|about|±)$/;
const LIMIT_AFTER = /^(?:to|–|-|±|\+|or|maximum|minimum|max|min|at|and|nominal)$/;

function nominalAt(words: readonly Word[], i: number, verb: string): boolean {
  const number = numberAt(words, i);
  if (number === undefined || number.unit === '') return false;
  const dimension = dimensionOf(number.unit);
  const wanted = dimension === 'stress' || dimension === 'temperature' || (dimension === 'length' && !MOVES.test(verb));
  if (!wanted) return false;
  const joint = words[i - 1]?.lower ?? '';
  if (!/^(?:to|at|of)$/.test(joint)) return false;
  const before = words[i - 2];
  if (before === undefined || before.kind === 'number' || LIMIT_BEFORE.test(before.lower)) return false;
  if (before.lower === 'up' && verb !== 'pump') return false;
  // `a gap of 0.3 mm`, and not `a length of 30 mm tube`.
  if (joint === 'of' && !/^(?:gap|clearance|play|pressure|temperature|preload|depth|height)$/.test(before.lower))
    return false;
  const unitApart = !/[^\d.,/]/.test(words[i]?.text ?? '');
  const after = words[i + (unitApart ? 2 : 1)];
  if (after === undefined) return true;
  if (/^[(±+<>≤≥]$/.test(after.text)) return false;
  return !isLimitAfter(words, words.indexOf(after));
}

function isLimitAfter(words: readonly Word[], i: number): boolean {
  const word = words[i];
  const next = words[i + 1];
  if (word === undefined || !LIMIT_AFTER.test(word.lower)) return false;
  if (/^(?:to|and|–|-)$/.test(word.lower)) return next?.kind === 'number';
  if (word.lower === 'or') return /^(?:more|less|above|below|over|under|lower|higher)$/.test(next?.lower ?? '');
  if (word.lower === 'at') return /^(?:most|least)$/.test(next?.lower ?? '');
  return true;
}

export function* noToleranceIn(reading: Reading): Generator<Finding> {
  const { text } = reading;
  if (!/\d/.test(reading.typed) || /±|\+\/-|\btolerance\b/.test(text)) return;
  for (const sentence of reading.sentences) {
    const { words } = sentence;
    const main = mainVerb(sentence);
    if (main < 0) continue;
    const verbs = [main, ...furtherOrders(sentence, main)];
    for (let i = main + 2; i < words.length; i++) {
      const verb = words[verbs.findLast((v) => v < i) ?? main]?.lower ?? '';
      if (!(SETS.test(verb) || MOVES.test(verb)) || !nominalAt(words, i, verb)) continue;
      const number = words[i];
      const unit = /[^\d.,/]/.test(number?.text ?? '') ? number : words[i + 1];
      if (number === undefined || unit === undefined) continue;
      const value = text.slice(number.start, unit.end);
      yield {
        message: `\`${value}\` is to be met exactly: no range and no limit is given`,
        hint: `write the range or the limit that still serves, \`... to ... ${numberAt(words, i)?.unit ?? ''}\` or \`at most ${value}\`, or give the step a \`measure\``,
        start: number.start,
        end: unit.end,
      };
    }
  }
}

export const noTolerance: Check = {
  code: 'WRT005',
  name: 'no-tolerance',
  severity: 'warning',
  title: 'A size, pressure or temperature is ordered without a range or limit.',
  why: 'Nobody hits a figure exactly; how far off is still good is then settled at the bench, differently each time.',
  sources: [
    "DOE-STD-1029-92 Writer's guide for technical procedures: limits as ranges, not as a nominal value alone (memory)",
    '10 CFR 50 appendix B criterion V: quantitative acceptance criteria',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: Wipe both faces with a <consumable:wipe>.\n      - do: Set the gap between the faces to «0.3 mm» with shims.\n',
      },
    ],
    good: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
        to: '      - do: Wipe both faces with a <consumable:wipe>.\n      - do: Set the gap between the faces to 0.25 to 0.35 mm with shims.\n',
      },
    ],
  },
  found: eachText(['do'], noToleranceIn, (step) => step.measures.length > 0 || step.heat !== undefined),
};
