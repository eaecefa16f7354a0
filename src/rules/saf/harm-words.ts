/** English words that say what a hazard does to people or things. Verbs are listed by their first form. */

import { remembered } from './words.ts';

const REGULAR = [
  // to people
  'kill|maim|injure|hurt|harm|wound|crush|pinch|trap|nip|squeeze|jam|cut|slice|slash|gash|sever|shear|amputate|burn|scald|blister',
  'freeze|shock|electrocute|blind|deafen|poison|choke|smother|suffocate|asphyxiate|drown|stun|irritate|infect|fester|bruise',
  'strain|sprain|stab|pierce|puncture|inject|scratch|bite|sting|numb|sicken|faint|paralyse|disable|lose|swallow',
  // how it moves
  'drop|slip|trip|swing|jump|kick|shoot|throw|whip|lash|fling|hurl|roll|tip|topple|collapse|sweep|strike|hit|knock|drag|pull|push',
  'slam|snap|snatch|grab|jolt|lurch|recoil|rebound|sag|slide|slew|buckle|catch|tumble|dart|creep|close on|bear down',
  // how it comes out
  'burst|explode|rupture|detonate|ignite|flash|flare|spray|squirt|spurt|spit|leak|flood|spill|splash|escape|blow|hammer|gush|erupt|weep',
  // to things
  'damage|ruin|wreck|destroy|spoil|crack|bend|warp|distort|seize|gall|score|groove|wear|swell|rot|corrode|rust|strip|stretch|tear',
  'overload|overheat|loosen|fail|sink|contaminate|dissolve|soften|harden|mushroom|unwind|pit|chip|dent|split|shatter|clog|block|taint',
  'starve|sensitise|sensitize|attack|fray|itch|eject|shorten|interfere|impair|brinell|overflow|overheat|cause|lead to|result in',
  'scrape|shave|slit|nick|mar|deform|overstretch|tighten|let go|give way',
].join('|');

const IRREGULAR = [
  'dead|death|deadly|lethal|fatal|fatally|dies?|dying|died|injur(?:y|ies)|lost|loss(?:es)?|wounds?|harmful|drows(?:y|iness)|dizz(?:y|iness)',
  'unconscious|cancer|allerg(?:y|ies)|dermatitis|rash|asthma|amputation|fractures?|broke|broken|breaks?|breaking|falls?|fell|falling|fallen',
  'fl(?:y|ies|ew|own|ying)|thrown|threw|tore|torn|bent|bitten|stung|struck|swung|swept|shot|sprang|sprung|froze|frozen|frostbite|blew|blown',
  'ran away|runs? (?:away|out|down|off|over|dry)|running away|springs? (?:back|out|off|up|apart|open)|comes? (?:out|off|down|back|loose|apart|in)',
  'takes? (?:fingers?|hands?|an? |arms?|feet|off|in )|draws? in|pulls? in|opens? up|shuts? off|starts? (?:up|by|on|without|moving|turning)',
  'drawn in(?:to)?|sick(?:ness)?|takes? away|gets? (?:under|into)',
  'cracks|leaves|eats|stops? (?:a heart|the heart|breathing)|catch(?:es)? fire|takes? fire|on fire|turns? (?:by itself|over|without)',
  'lets? (?:in|out|go)|sets? .{1,40} (?:free|going|moving|off)|(?:stops?|keeps?|prevents?) .{1,40} from \\w+ing',
  'by itself|by themselves|on its own|without warning|without notice|suddenly|unexpectedly|in(?:to)? (?:your|the) (?:face|eyes?|lungs?|skin)',
  'uses? up (?:the )?oxygen|displaces (?:the )?air|poison(?:s|ing|ed)|goes through|passes through skin|no longer (?:holds|seals)',
].join('|');

/** A last consonant may be doubled, a last `e` falls away: `slip`, `slips`, `slipped`, `slicing`. */
const HARM = new RegExp(`\\b(?:(?:${REGULAR.split('|').map(inflected).join('|')})|${IRREGULAR})\\b`, 'iu');

function inflected(verb: string): string {
  const [word = '', ...rest] = verb.split(' ');
  const tail = rest.length === 0 ? '' : ` ${rest.join(' ')}`;
  const last = word.at(-1) ?? '';
  if (last === 'e') return `${word.slice(0, -1)}(?:e|es|ed|ing)${tail}`;
  if (/[^aeiou]y$/.test(word)) return `${word.slice(0, -1)}(?:y|ies|ied|ying)${tail}`;
  return `${word}(?:s|es|${last}?ed|${last}?ing)?${tail}`;
}

/** Whether the text says what happens: to people, to things, or how the hazard moves. */
export function saysHarm(text: string): boolean {
  return HARM.test(text);
}

const STATES =
  'is|are|was|were|be|been|has|have|had|contains?|weighs?|remains?|stays?|stands?|lies|hangs?|holds?|carries|exists?|needs?|requires?|works?|operates?';
const STATIC = new RegExp(`\\b(?:${STATES}|there)\\b`, 'iu');
/** A word before an article that is neither preposition, conjunction nor verb of state does something to what follows. */
const DOES =
  /\b([a-z]+) (?:the|an?|your|its?|itself|them|you)\b|\b([a-z]+s) (?:like|to (?:the )?(?:skin|hands?|eyes?))\b/giu;
const IS_DONE =
  /\b(?:is|are|gets?) (?!driven|controlled|operated|held|fed)\w+(?:ed|n|ung|t) (?:by|off|out|at|apart|away|over|into|open|down)\b/iu;
const DOES_NOT = new RegExp(
  `^(?:${STATES}|in|on|at|of|by|to|into|onto|under|over|above|below|behind|before|after|beside|between|across|along|around|round|through|near|inside|outside|within|without|with|from|for|against|towards?|until|during|off|out|up|down|per|past|via|as|than|and|or|but|nor|if|when|while|where|whenever|because|since|so|though|although|that|which|once|unless|all|both|half|not|only|also|still|even)$`,
  'iu',
);

/** So few words without a word of harm are the name of a thing: `Sharp edges on the plate`. */
const NAME = 5;

/** Whether the text only says what is there: no word of harm, and a verb that tells of a state or no verb at all. */
export const onlyNames = remembered((text): boolean => {
  if (saysHarm(text) || IS_DONE.test(text) || doesSomething(text)) return false;
  return STATIC.test(text) || text.split(' ').length <= NAME;
});

function doesSomething(text: string): boolean {
  for (const [, verb, other] of text.matchAll(DOES)) if (!DOES_NOT.test(verb ?? other ?? '')) return true;
  return false;
}

const PERSON =
  '(?:hands?|fingers?|thumbs?|arms?|feet|foot|toes?|legs?|skin|eyes?|face|lungs?|head|hair|body|anyone|anybody|you|your \\w+|people|a person|the fitter|the mechanic)';
const VERBS =
  '(?:crush(?:es)?|pinch(?:es)?|cuts?|burns?|scalds?|injures?|hurts?|severs?|takes? off|blinds?|poisons?|smothers?|strikes?|traps?|irritates?|breaks?|stabs?|pierces?)';
const INJURY = new RegExp(
  `\\b(?:kills?|maims?|electrocutes?|suffocates?|injur(?:e|es|y|ies))\\b|\\b${VERBS}\\s+(?:(?:the|a|an|your|bare|both|off)\\s+){0,2}${PERSON}\\b|\\b(?:burns?|scalds?|cuts?|crushing) to (?:the )?${PERSON}\\b`,
  'iu',
);

/** The words that speak of a person being hurt; undefined where none do. */
export const injuryIn = remembered((text): string | undefined => INJURY.exec(text)?.[0]);
