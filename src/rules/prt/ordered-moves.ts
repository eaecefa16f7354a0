/** Parts that the words of a step order off or on: the verb first, the part as its object. */

import type { Prose } from '../../resolve/index.ts';
import { onceAText, refersToKind } from '../once.ts';
import { PART_SIGN, TOOL_OR_CONSUMABLE, type Words, wordsOf } from './step-words.ts';

export interface Order {
  readonly kind: 'off' | 'on';
  readonly part: string;
  /** `remove`, `lift off`: as in the text, in lower case. */
  readonly verb: string;
}

const any = (...words: readonly string[]): string => words.join('|');

const FILLER = `(?:(?:${any('the each every both all any its their of one two three four six eight half halves pieces'.replaceAll(' ', '|'), 'old|new|other|last|first|worn|used|remaining|outer|inner|upper|lower|front|rear|left|right|complete|whole')}) )`;
/** A thing without a reference may stand among the objects: `the nuts, the washers and the old gasket`. */
const PLAIN = `(?:${FILLER}{0,3}[a-z-]+(?:, | and ))`;
const AND = '(?:,? and then |, then |,? and |, )';
const OBJECTS = `${PLAIN}{0,3}${FILLER}{0,4}${PART_SIGN}s?(?:${AND}${FILLER}{0,4}${PART_SIGN}s?)*`;

const OFF_STRONG = any(
  'remove|unscrew|withdraw|extract|detach|unbolt|unclip|take away',
  '(?:take|lift|pull|slide|prise|draw) (?:off|out)',
  '(?:drive|press|knock|push|tap) out',
);
const OFF_WEAK = 'take|lift|pull|draw|slide|drive|press|knock|prise|push|tap|pick|swing';
const ON_STRONG = any(
  'fit|refit|install|reinstall|insert|mount',
  '(?:put|screw|slide|bolt|lay|push|press|clip|set) (?:on|in|back)',
);
const ON_WEAK = 'put|screw|slide|lay|push|press|drive|set|hang|seat|bolt|clip|lower|drop|roll|tap|stretch';
/** What follows the object and makes a weak verb a move: `off the shaft`, `into the cover`. */
const OFF_AFTER = ',? (?:[^.;:]*? )?(?:off|out|away|clear)\\b';
const ON_AFTER = ',? (?:[^.;:]*? )?(?:in|into|on|onto|over|(?<!and )back|home)\\b';
/** Places that are not the machine. */
const ASIDE = new RegExp(
  `\\b(?:in|into|on|onto|over|to|under|between|against) (?:(?:a|an|the|its|two|clean|dry|wooden|soft) ){0,3}(?:${TOOL_OR_CONSUMABLE}|${any(
    'bench|vice|rack|table|blocks?|stands?|floor|box|bin|tray|shelf|wood|timber|mat|cloth|rag|side|glass|surface plate|face plate',
    'deck|press|staging|trolley|centres|lathe|paper|bag|wipe|cardboard|pallet|jaws|heater|oven|bath',
  )})`,
);

interface Pattern {
  readonly kind: Order['kind'];
  readonly pattern: RegExp;
}

const PATTERNS: readonly Pattern[] = [
  { kind: 'off', pattern: new RegExp(`^(${OFF_STRONG}) (${OBJECTS})`) },
  { kind: 'off', pattern: new RegExp(`^(draw) (${OBJECTS})(?=[.,;]|$)(?!.* (?:up|in|on|into|onto|together)\\b)`) },
  { kind: 'off', pattern: new RegExp(`^(${OFF_WEAK}) (${OBJECTS})${OFF_AFTER}`) },
  { kind: 'on', pattern: new RegExp(`^(${ON_STRONG}) (${OBJECTS})`) },
  { kind: 'on', pattern: new RegExp(`^(${ON_WEAK}) (${OBJECTS})${ON_AFTER}`) },
];

/** How the verbs of the patterns begin: no pattern is tried on another clause. */
const VERBS_FIRST: ReadonlySet<string> = new Set([OFF_STRONG, OFF_WEAK, ON_STRONG, ON_WEAK].join('|').match(/[a-z]+/g));
const FIRST_WORD = /^[a-z]+/;

const SIGN = new RegExp(PART_SIGN, 'g');
const HAS_SIGN = new RegExp(PART_SIGN);
const CONDITION = /^(?:when|once|after|before|while|with|from|by|using|as soon as|on|at)\b[^,]*, /;
const ADVERB = /^(?:now|then|next|carefully|slowly|gently|by hand|again),? /;
/** What hangs on a condition of the part itself may not be done at all; what is tried is undone again. */
const MAYBE =
  /\bif\b|\bwhere (?:fitted|there)\b|\b(?:that|which) (?:is|are|has|have|binds?)\b|\bfor (?:a )?trial\b|\bdo not\b|\bnever\b/;
const CLAUSES = new RegExp(`,? (?:and|then) (?=(?:${any(OFF_WEAK, ON_WEAK)}|${any(OFF_STRONG, ON_STRONG)})\\b)`);

const NONE: readonly Order[] = [];

/** Orders in the text, each part once a direction. Only English is read. */
export function ordersOf(prose: Prose): readonly Order[] {
  return refersToKind(prose, 'part') ? readOnce(prose) : NONE;
}

const readOnce = onceAText((prose) => read(wordsOf(prose)));

function read(words: Words): readonly Order[] {
  const found: Order[] = [];
  for (const sentence of words.text.split(/(?<=[.;:!?]) /)) {
    if (!HAS_SIGN.test(sentence)) continue;
    for (const clause of sentence.replace(CONDITION, '').split(CLAUSES)) {
      const orders = ordersIn(clause.replace(ADVERB, ''), words);
      if (orders.length > 0 && MAYBE.test(sentence)) break;
      for (const order of orders) {
        if (!found.some((f) => f.part === order.part && f.kind === order.kind)) found.push(order);
      }
    }
  }
  return found;
}

function ordersIn(clause: string, words: Words): readonly Order[] {
  if (!VERBS_FIRST.has(FIRST_WORD.exec(clause)?.[0] ?? '')) return NONE;
  for (const { kind, pattern } of PATTERNS) {
    const match = pattern.exec(clause);
    if (match === null) continue;
    const [, verb = '', objects = ''] = match;
    if (kind === 'on' && ASIDE.test(clause.slice(verb.length + 1 + objects.length))) return [];
    return (objects.match(SIGN) ?? []).flatMap((sign) => {
      const part = words.partOf(sign);
      return part === undefined ? [] : [{ kind, part, verb }];
    });
  }
  return [];
}
