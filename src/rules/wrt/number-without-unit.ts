/** A measure that is given as a bare number. */

import type { Check } from '../check.ts';
import { eachText, type Finding, KIND_NAMES, type Kind } from './fields.ts';
import { numberAt } from './measured.ts';
import type { Reading, Word } from './reading.ts';

/** What is measured: a bare number after one of these lacks its unit. */
const MEASURED =
  /^(?:gap|gaps|clearance|play|float|backlash|runout|run-out|lift|torque|pressure|temperature|preload|tension|depth|height|width|length|thickness|diameter|distance|stroke|travel|offset|deflection|force|load|voltage|current|resistance|flow|weight|mass|angle|vacuum|interference|protrusion|squeeze|flatness|taper|ovality|speed|viscosity|drag|step|end-play|stretch)$/;
const JOINS =
  /^(?:of|to|at|is|be|by|exceeds?|exceeding|below|above|under|over|within|than|reaches|reads?|=|<|>|≤|≥|±|least|most)$/;
/** `Heat to 110`: the verb says what is measured. */
const MEASURING_VERB =
  /^(?:heat|reheat|preheat|cool|warm|torque|retorque|tighten|retighten|pressuri[sz]e|inflate|charge|tension|preload|shim)$/;
/** `lowered by 10`: how far, not how many. */
const MOVING_VERB = /^(?:rais|lower|lift|jack|shift|slid|mov)(?:e|ed|ing|s|es)?$/;
/** What may follow a number that stands alone; anything else is counted by it: `3 turns`, `8.8 screws`. */
const AFTER_BARE =
  /^(?:and|or|to|in|at|on|with|without|before|after|when|if|for|using|then|by|from|between|across|under|over|around|round|along|as|until|while|all|is|are|that|which|but|against|above|below|maximum|minimum|max|min)$/;
const GAUGES =
  /^(?:feeler|shim|shims|gap|clearance|interference|undersize|oversize|wide|long|deep|thick|high|square|blade|slack|proud|apart)$/;
/** `30 hotter than the shaft`: a difference, not a count of things. */
const COMPARED =
  /^(?:hotter|warmer|colder|cooler|longer|shorter|higher|lower|wider|narrower|thicker|thinner|deeper|heavier|lighter)$/;
/** The number is a name: `class 8.8`, `section 3.2`, `ratio of 1.5`. */
const NAMED =
  /^(?:class|classes|grade|grades|ratio|factor|ph|section|sections|clause|chapter|table|figure|fig|page|pages|edition|version|rev|revision|type|number|no|nos|item|para|paragraph|annex|appendix|part|model|series|code|material|sheet|drawing|form|iso|en|din|astm|bs|sae|k|scale|issue|mark|size|position|positions|certificate)$/;

function isBareMeasure(words: readonly Word[], i: number): boolean {
  const number = numberAt(words, i);
  if (number === undefined || number.unit !== '' || Number(number.digits) === 0) return false;
  const previous = words[i - 1];
  const next = words[i + 1];
  if (endsWithUnit(words, i) || isNamed(words, i)) return false;
  if (next?.kind === 'reference') return false;
  const compared = COMPARED.test(next?.lower ?? '') && words[i + 2]?.lower === 'than';
  if (compared && /^\d/.test(number.digits)) return true;
  const alone = next === undefined || next.kind === 'mark' || AFTER_BARE.test(next.lower);
  if (/^[%°"″×*/]$/.test(next?.text ?? '')) return false;
  if (/^\d+[.,]\d+$/.test(number.digits) && !/^1\.\d{4}$/.test(number.digits))
    return alone || GAUGES.test(next?.lower ?? '');
  if (!alone || !/^\d+$/.test(number.digits) || previous === undefined || !JOINS.test(previous.lower)) return false;
  return measuresBefore(words, i - 1);
}

/** `0.3 to 0.5 mm`, `0.3 or 0.5 mm`, `3 x 5 mm`: the unit at the end serves both. */
function endsWithUnit(words: readonly Word[], i: number, most = 6): boolean {
  const joint = words[i + 1];
  if (joint === undefined || !/^(?:to|or|and|x|by|,|-|–|±|×)$/.test(joint.lower)) return false;
  const next = numberAt(words, i + 2);
  return next !== undefined && (next.unit !== '' || (most > 0 && endsWithUnit(words, i + 2, most - 1)));
}

function isNamed(words: readonly Word[], i: number): boolean {
  for (let k = i - 1; k >= Math.max(0, i - 3); k--) {
    const word = words[k];
    if (word === undefined) break;
    if (NAMED.test(word.lower)) return true;
    if (!/^(?:of|to|and|or|,|\.|-|–|the|is|=)$/.test(word.lower) && word.kind !== 'number') break;
  }
  return false;
}

/** Whether the words up to `joint` say what is measured. */
function measuresBefore(words: readonly Word[], joint: number): boolean {
  for (let k = joint - 1; k >= Math.max(0, joint - 7); k--) {
    const word = words[k];
    if (word === undefined || /^[,;:.]$/.test(word.text)) return false;
    if (MEASURED.test(word.lower)) return true;
    if (words[joint]?.lower === 'by' && MOVING_VERB.test(word.lower)) return true;
    if (/^(?:to|at)$/.test(words[joint]?.lower ?? '') && MEASURING_VERB.test(word.lower)) return true;
  }
  return false;
}

export function* numberWithoutUnitIn(reading: Reading, kind: Kind): Generator<Finding> {
  if (!/\d/.test(reading.typed)) return;
  for (const { words } of reading.sentences) {
    for (const [i, word] of words.entries()) {
      if (word.kind !== 'number' || !isBareMeasure(words, i)) continue;
      yield {
        message: `\`${word.text}\` in the ${KIND_NAMES[kind]} has no unit`,
        hint: 'look its unit up and write it behind the number, in the form `0.05 mm`, `110 degC`, `6 bar`',
        start: word.start,
        end: word.end,
      };
    }
  }
}

export const numberWithoutUnit: Check = {
  code: 'WRT004',
  name: 'number-without-unit',
  severity: 'warning',
  title: 'A measure in a text has no unit.',
  why: 'One mechanic reads millimetres and the next one thousandths of an inch, and both write the same number down.',
  sources: [
    'SI Brochure, 9th edition 2019, section 5.4: a value is a number and its unit',
    "DOE-STD-1029-92 Writer's guide for technical procedures: units with every value (memory)",
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '          if out: Loosen and repeat this stage.\n',
        to: '          if out: Above «0.30», loosen and repeat this stage.\n',
      },
    ],
    good: [
      {
        file: 'procedures/mw-1.yaml',
        from: '          if out: Loosen and repeat this stage.\n',
        to: '          if out: Above 0.30 mm, loosen and repeat this stage.\n',
      },
    ],
  },
  found: eachText(['do', 'note', 'hazard', 'avoid', 'if out'], numberWithoutUnitIn),
};
