/** A step of work that hides in a warning. */

import { type Prose, placeOf } from '../../resolve/index.ts';
import type { Check, Fault } from '../check.ts';
import { eachStep } from '../rule.ts';
import { inEnglish, sentencesOf, textOf } from './words.ts';

const VERBS =
  'close|open|shut|drain|vent|release|lock|unlock|switch|turn|stop|start|wait for|remove|take|check|measure|use|hold|support|sling|read|disconnect|connect|isolate|loosen|tighten|lift|lower|put|set|fit|wipe|clean|press|push|pull|hang|place|stand|inspect|test|verify';
/** A verb and what it is done to; `Open gear teeth` and `Drain water` have no article. */
const ORDER = new RegExp(
  `^(?:always|never|do not|don['’]t|make sure|ensure|be sure|keep|wear|see that|let the|(?:${VERBS})(?: off| out| up| down| on)? (?:the|a|an|all|each|every|both|your|its|it|them|any))\\b`,
  'iu',
);
const WORK =
  /^(?:then |first |next )?(?:remove|loosen|tighten|fit|refit|unscrew|take (?:off|out)|lift off|dismantle|replace|renew|measure|lubricate|unbolt)\b/iu;
const TORQUE = /^(?:then |first )?(?:re)?tighten\b.*\d\s*(?:N·?m|Nm|lbf|ft[-·]?lbf?)\b/iu;

export const actionInWarning: Check = {
  code: 'SAF019',
  name: 'action-in-warning',
  severity: 'warning',
  title: 'A warning holds an order that belongs elsewhere: in its hazard, or a numbered step in its avoidance.',
  why: 'What stands in a warning has no number and no box; it is read as advice, not done, and nobody sees that it is missing.',
  sources: ['DOE-STD-1029-92: a warning holds no action step (memory)'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '          hazard: Trapped water scalds the hands.\n',
        to: '          hazard: «Open the vent, or trapped water scalds the hands.»\n',
      },
    ],
  },
  found: eachStep(
    function* (step, { shop }): Iterable<Fault> {
      if (!inEnglish(shop)) return;
      for (const warning of step.warnings) {
        const order = sentencesOf(textOf(warning.hazard)).find((s) => ORDER.test(s));
        if (order !== undefined) {
          yield {
            range: placeOf(warning, 'hazard'),
            message: `the hazard gives an order: \`${firstWords(order)}\``,
            hint: 'say in `hazard` what hurts and how; move the order into `avoid`, or into a step of its own before this one',
          };
        }
        const sentences = sentencesOf(textOf(warning.avoid));
        const work = sentences.find((s) => TORQUE.test(s) || (WORK.test(s) && namesThing(warning.avoid, s)));
        if (work !== undefined) {
          yield {
            range: placeOf(warning, 'avoid'),
            message: `the avoidance holds a step of work: \`${firstWords(work)}\``,
            hint: 'make it a numbered step before this one, and keep in `avoid` where to stand, what to wear, what to wait for',
          };
        }
      }
    },
    ({ warnings }) => warnings.length > 0,
  ),
};

function firstWords(sentence: string): string {
  const words = sentence.replace(/[.!]$/u, '').split(' ');
  return words.length <= 4 ? words.join(' ') : `${words.slice(0, 4).join(' ')} …`;
}

/** Whether the sentence names a part or a joint by reference: then it is work on it, not a way to stand. */
function namesThing(prose: Prose, sentence: string): boolean {
  return prose.some((p) =>
    p.runs.some((r) => (r.ref?.kind === 'part' || r.ref?.kind === 'joint') && sentence.includes(r.text)),
  );
}
