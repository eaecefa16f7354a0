/** A warning that stands as a note, as a step or as what to do when out of limit. */

import type { Range } from '../../diagnostics/index.ts';
import { isWritten, placeOf, type Step } from '../../resolve/index.ts';
import type { Check, Fault } from '../check.ts';
import { eachStep } from '../rule.ts';
import { injuryIn } from './harm-words.ts';
import { inEnglish, sentencesOf, textOf } from './words.ts';

/** A signal word that opens a sentence and is set off as one: `Caution tape` and `Warning lamp` are not. */
const SIGNAL =
  /^(?:(danger|warning|caution|notice(?=\s*[:!])|attention)(?:\s*[:!]|\s+[–—-]\s|[.,]\s|\s+of\b)|(beware|be careful|take care|watch out|look out|mind (?:your|the) \w+)\b)/iu;

export const hiddenWarning: Check = {
  code: 'SAF005',
  name: 'hidden-warning',
  severity: 'warning',
  title: 'A note, a step or an instruction for out of limit is a warning in disguise.',
  why: 'A note is printed small and after the step; the hand is already there when it says that the pipe is hot.',
  sources: [
    'DOE-STD-1029-92: a warning stands before the step that it guards (memory)',
    'ASD-STE100: a note gives information only (read in summary)',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Wipe both faces with a <consumable:wipe>.
`,
        to: `      - do: Wipe both faces with a <consumable:wipe>.
        note: «Caution! The faces are sharp and cut fingers.»
`,
      },
    ],
    good: [
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Wipe both faces with a <consumable:wipe>.
`,
        to: `      - do: Wipe both faces with a <consumable:wipe>.
        warn:
          level: caution
          hazard: The faces are sharp and cut fingers.
          avoid: Gloves stay on, and the wipe is folded double.
`,
      },
    ],
  },
  found: eachStep(function* (step, { shop }): Iterable<Fault> {
    if (!inEnglish(shop)) return;
    const text = signalIn(textOf(step.text));
    if (text !== undefined) yield fault(placeOf(step, 'do'), `this step begins like a warning, with \`${text}\``);
    if (step.note !== undefined) {
      const signal = signalIn(textOf(step.note));
      const injury = injuryIn(textOf(step.note));
      if (signal !== undefined) yield fault(placeOf(step, 'note'), `this note is a warning: it says \`${signal}\``);
      else if (injury !== undefined)
        yield fault(placeOf(step, 'note'), `this note is a warning: it says \`${injury}\``);
    }
    for (const [i, m] of step.measures.entries()) {
      const signal = signalIn(textOf(m.ifOut));
      if (signal !== undefined)
        yield fault(ifOutPlace(step, i), `what to do when out of limit begins like a warning, with \`${signal}\``);
    }
  }),
};

function fault(range: Range, message: string): Fault {
  return {
    range,
    message,
    hint: 'write it as `warn:` with `level`, `hazard` and `avoid`; it is then printed before the step, with its signal word',
  };
}

/** Nothing that `SIGNAL` finds is without one of these. */
const QUICK = /danger|warning|caution|notice|attention|beware|be careful|take care|watch out|look out|mind /iu;

function signalIn(text: string): string | undefined {
  if (!QUICK.test(text)) return undefined;
  for (const sentence of sentencesOf(text)) {
    const found = SIGNAL.exec(sentence);
    if (found !== null) return found[1] ?? found[2];
  }
  return undefined;
}

/** Measurements of other variants are not among the step's own; where some are left out, the place is that of them all. */
function ifOutPlace(step: Step, i: number): Range {
  const all = isWritten(step, 'measure', step.measures.length - 1) && !isWritten(step, 'measure', step.measures.length);
  return all ? placeOf(step, 'measure', i, 'if out') : placeOf(step, 'measure');
}
