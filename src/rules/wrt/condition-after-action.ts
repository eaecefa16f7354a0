/** The condition of an order that stands behind it. */

import type { Check } from '../check.ts';
import { eachText, type Finding } from './fields.ts';
import { mainVerb } from './orders.ts';
import type { Reading, Word } from './reading.ts';

const CONDITION = /^(?:when|whenever|if|unless|after|provided)$/;
/** `see if it moves`, `the moment when`, `even if`, `as if`, `only once`: no condition of the order. */
const NOT_AFTER =
  /^(?:see|check|ask|test|find|look|feel|tell|note|record|decide|know|whether|even|as|moment|time|point|than|just|soon|shortly|immediately|day|week|that|one|and|;|:)$/;
/** Within these clauses the words speak of something else than the order: `so that it holds when the bolts are out`. */
const SUBORDINATE = /^(?:that|which|who|until|till|because|where|so|what|how|why|before)$/;
const SUBJECT = /^(?:the|a|an|this|that|it|they|all|both|each|every|no|your|its|there|you|everything|nobody|nothing)$/;
/** `if necessary`: no condition at all, and reported as vague. */
const EMPTY = /^(?:required|necessary|needed|applicable|appropriate|possible|practicable|desired|need)$/;
/** `once the drain is dry` against `once more`. */
const ONCE_WITHOUT_CLAUSE = /^(?:more|again|only|a|per|each|every|in|from|by|at|and|or|to|with|through|round)$/;

function isCondition(words: readonly Word[], i: number): boolean {
  const word = words[i];
  const before = words[i - 1];
  const next = words[i + 1];
  if (
    word === undefined ||
    before === undefined ||
    next === undefined ||
    next.kind === 'mark' ||
    EMPTY.test(next.lower)
  )
    return false;
  if (NOT_AFTER.test(before.lower)) return false;
  if (word.lower === 'once') {
    return !ONCE_WITHOUT_CLAUSE.test(next.lower) && (next.kind === 'reference' || SUBJECT.test(next.lower));
  }
  // `one after the other`, `turn after turn`.
  if (
    word.lower === 'after' &&
    (before.lower === next.lower || (next.lower === 'the' && words[i + 2]?.lower === 'other'))
  )
    return false;
  if (word.lower === 'provided') return next.lower === 'that' || SUBJECT.test(next.lower);
  if (word.lower === 'as') return next.lower === 'soon';
  return CONDITION.test(word.lower);
}

/** Last word before the next comma, semicolon or full stop. */
function clauseEnd(words: readonly Word[], from: number): Word | undefined {
  const mark = words.findIndex((w, i) => i > from && /^[,;:.!?]$/.test(w.text));
  return mark < 0 ? words.at(-1) : words[mark - 1];
}

export function* conditionAfterActionIn(reading: Reading): Generator<Finding> {
  if (!/\b(?:when|if|unless|after|once|provided|as soon as)\b/.test(reading.typed)) return;
  for (const sentence of reading.sentences) {
    const { words } = sentence;
    const main = mainVerb(sentence);
    if (main < 0) continue;
    let subordinate = false;
    for (let i = main + 1; i < words.length; i++) {
      const word = words[i];
      if (word === undefined) break;
      if (word.text === ';') subordinate = false;
      if (SUBORDINATE.test(word.lower)) subordinate = true;
      if (subordinate || !isCondition(words, i)) continue;
      const last = clauseEnd(words, i) ?? word;
      yield {
        message: `the condition \`${reading.text.slice(word.start, last.end)}\` stands after \`${words[main]?.text ?? ''}\``,
        hint: 'put the condition first, then a comma, then the order; what ends the action begins with `until`',
        start: word.start,
        end: last.end,
      };
      break;
    }
  }
}

export const conditionAfterAction: Check = {
  code: 'WRT007',
  name: 'condition-after-action',
  severity: 'warning',
  title: 'The condition of an order stands after the order.',
  why: 'The hands have begun before the eye reaches the `when` or `if`, and the bolt is loose while the pressure is still on.',
  sources: [
    'ASD-STE100 Simplified Technical English, section 5: the condition first, then a comma, then the command (rule read in a summary, section from memory)',
    'NUREG-0899 Guidelines for the preparation of emergency operating procedures: conditions before actions (memory)',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: When <step:locked> is done, tighten the <joint:cover>.\n',
        to: '      - do: Tighten the <joint:cover> «after the lock is on the switch».\n',
      },
    ],
    good: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: When <step:locked> is done, tighten the <joint:cover>.\n',
        to: '      - do: When the lock is on the switch, tighten the <joint:cover>.\n',
      },
    ],
  },
  found: eachText(['do', 'if out'], conditionAfterActionIn),
};
