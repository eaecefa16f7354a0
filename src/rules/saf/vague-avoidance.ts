/** An avoidance that only asks for care. */

import { placeOf } from '../../resolve/index.ts';
import type { Check, Fault } from '../check.ts';
import { eachStep } from '../rule.ts';
import { inEnglish, remembered, textOf } from './words.ts';

const VAGUE = new RegExp(
  `^(?:always |please |so |and |then )?(?:${[
    '(?:be|stay|remain) (?:very |extremely |especially )?(?:careful|cautious|alert|aware|vigilant|attentive|safe)',
    '(?:take|use|exercise|with) (?:great |extra |due |extreme |special |proper |all )?(?:care|caution|precautions?)',
    'pay (?:close |full )?attention',
    '(?:work|proceed|handle|act|lift|move|open|operate)(?: it| them| this)? (?:safely|carefully|with (?:care|caution)|cautiously)',
    '(?:follow|observe|obey|heed|apply) (?:all |the |any |usual |normal |general )*(?:safety |site |shop )?(?:rules?|precautions?|instructions?|regulations?|practices?)',
    '(?:wear|use) (?:the |all )?(?:appropriate|proper|suitable|correct|necessary|required|adequate|right) (?:ppe|protection|(?:personal )?protective (?:equipment|clothing)|equipment|gear|clothing|tools?)',
    'watch out|look out|mind yourself|use common sense|avoid (?:injury|accidents?|danger|the hazard|contact if possible)|safety first|caution',
  ].join('|')})(?<rest>.*)$`,
  'iu',
);
/** What follows and makes it an instruction after all: `take care that the sling sits at the mark`. */
const CONCRETE =
  /^\s*(?::|that|to (?!avoid (?:injury|accidents?)|prevent (?:injury|accidents?))\w+|not to (?!(?:get )?(?:burn|hurt|injure|cut|scald|harm|crush))\w+|of (?:the|a|an)\b)/iu;

export const vagueAvoidance: Check = {
  code: 'SAF007',
  name: 'vague-avoidance',
  severity: 'warning',
  title: 'How to avoid a hazard says no more than to be careful.',
  why: 'Everyone means to be careful; where to stand, what to open first and what to wear is what keeps the hand whole.',
  sources: ['ANSI Z535.6: a safety message says how the hazard is avoided (memory)', 'common practice'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '          avoid: Open the vent first.\n',
        to: '          avoid: «Be careful when the joint is opened.»\n',
      },
    ],
  },
  found: eachStep(
    function* (step, { shop }): Iterable<Fault> {
      if (!inEnglish(shop)) return;
      for (const warning of step.warnings) {
        if (!isVague(textOf(warning.avoid))) continue;
        yield {
          range: placeOf(warning, 'avoid'),
          message: 'this asks for care, and does not say what to do',
          hint: 'say what keeps the hazard away: where to stand, what is shut or opened first, what is worn, who holds what',
        };
      }
    },
    ({ warnings }) => warnings.length > 0,
  ),
};

/** Whether every clause only asks for care. */
export const isVague = remembered((text): boolean => {
  const clauses = text
    .split(/[.;!]+(?:\s+|$)|,\s+(?:and\s+)?|\s+and\s+(?=(?:be|take|use|follow|observe|wear|work|pay)\b)/iu)
    .map((c) => c.trim())
    .filter((c) => c !== '');
  let last = false;
  return (
    clauses.length > 0 &&
    clauses.every((clause) => {
      const rest = VAGUE.exec(clause)?.groups?.['rest'];
      // `Be careful when it is opened, when it is closed`: the second part only says when.
      const vague =
        rest === undefined ? last && /^(?:when|while|if|at all times|during)\b/iu.test(clause) : !CONCRETE.test(rest);
      last = vague;
      return vague;
    })
  );
});
