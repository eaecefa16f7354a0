/** Whether a nut may carry the full load of its bolt: by the rule of the standards, and by the two loads. */

import { formatDecimal, NO_BREAK_SPACE } from '../units/index.ts';
import type { Grade } from './grade.ts';
import { FULL_NUT_CLASSES, type NutGrade } from './nut-grade.ts';
import type { NutStrength } from './nut-strength.ts';
import type { Strength } from './strength.ts';
import type { Thread } from './thread.ts';

export interface NutMatch {
  /** The rule asks for a stronger nut. Never true where no rule pairs the two standards. */
  readonly weaker: boolean;
  /** Printed form of the weakest nut that the rule accepts; empty where there is no rule. */
  readonly least: string;
  /** The rule and its outcome, or that there is none, in one sentence without a full stop. */
  readonly sentence: string;
}

interface Rule {
  readonly least: string;
  readonly accepts: (nut: NutGrade) => boolean;
  readonly says: string;
}

/**
 * Compares `nut` with the bolt grade by the rule of its standard: ISO 898-2 (class of the nut at least the first number
 * of the bolt, thin nuts never), ISO 3506-2 (class at least that of the screw), SAE J995, ASTM A563 and A194 (memory),
 * F594.
 */
export function nutMatches(nut: NutGrade, grade: Grade): NutMatch {
  const rule = ruleFor(nut, grade);
  if (rule === undefined) {
    return {
      weaker: false,
      least: '',
      sentence: `no rule known here pairs a nut of ${nut.standard} with a bolt of ${grade.standard}`,
    };
  }
  const weaker = !rule.accepts(nut);
  return {
    weaker,
    least: rule.least,
    sentence: weaker
      ? `the nut ${nut.id} may strip before the bolt ${grade.id} yields: ${rule.says}`
      : `the nut ${nut.id} suits the bolt ${grade.id}: ${rule.says}`,
  };
}

/** What is compared: the two grades and what they carry in the thread that they share. */
export interface NutAndBolt {
  readonly nut: NutGrade;
  readonly nutStrength: NutStrength;
  readonly grade: Grade;
  readonly strength: Strength;
  readonly thread: Thread;
}

export interface NutComparison extends NutMatch {
  /** Proof load of the nut, N. */
  readonly nutN: number;
  /** Proof load of the bolt, or its yield load where the standard has no proof stress, N. */
  readonly boltN: number;
  readonly boltLoad: 'proof' | 'yield';
}

/**
 * The rule of `nutMatches` and the loads together: weaker when the rule says so, or when the proof load of the nut lies
 * below the proof load of the bolt (below its yield load where the standard has no proof stress).
 */
export function nutWeaker({ nut, nutStrength, grade, strength, thread }: NutAndBolt): NutComparison {
  const match = nutMatches(nut, grade);
  const boltLoad = strength.proofMPa === undefined ? 'yield' : 'proof';
  const nutN = nutStrength.proofLoadN;
  const boltN = (strength.proofMPa ?? strength.yieldMPa) * thread.stressAreaMm2;
  const kn = (newton: number) => `${formatDecimal(newton / 1000, 1)}${NO_BREAK_SPACE}kN`;
  const loads = `proof load of the nut ${kn(nutN)}, ${boltLoad} load of the bolt ${kn(boltN)}`;
  // A share of a millionth is the rounding of the two products, not a weaker nut.
  const carries = nutN >= boltN * (1 - 1e-6);
  const sentence =
    carries || match.weaker
      ? `${match.sentence}; ${loads}`
      : `the nut ${nut.id} carries less than the bolt ${grade.id}: ${loads}`;
  return { ...match, weaker: match.weaker || !carries, nutN, boltN, boltLoad, sentence };
}

function ruleFor(nut: NutGrade, grade: Grade): Rule | undefined {
  switch (`${grade.standard} with ${nut.standard}`) {
    case 'ISO 898-1 with ISO 898-2':
      return isoSteel(grade);
    case 'ISO 3506-1 with ISO 3506-2':
      return isoStainless(grade);
    case 'SAE J429 with SAE J995':
    case 'ASTM A449 with SAE J995':
      return ranked(grade, SAE_BY_BOLT, J995_ORDER, 'SAE J995');
    case 'SAE J429 with ASTM A563':
    case 'ASTM A449 with ASTM A563':
      return ranked(grade, A563_BY_BOLT, A563_ORDER, 'ASTM A563');
    case 'ASTM A193 with ASTM A194':
    case 'ASTM A320 with ASTM A194':
      return flangeStud(grade);
    case 'ASTM F593 with ASTM F594':
      return f593(grade);
    default:
      return undefined;
  }
}

/** ISO 898-2:2012 Table 1: full nuts by the first number of the bolt class; 04 and 05 are not for full load. */
function isoSteel(grade: Grade): Rule {
  const first = Number(grade.id.split('.')[0]);
  const least = FULL_NUT_CLASSES.find((c) => Number(c) >= first) ?? '12';
  return {
    least,
    accepts: ({ id }) => !id.startsWith('0') && Number(id) >= first,
    says: `ISO 898-2 asks for class ${least} or above and no thin nut`,
  };
}

/** ISO 3506-2: a full nut of at least the class of the screw; a thin one (class with a leading 0) not for full load. */
function isoStainless(grade: Grade): Rule {
  const wanted = Number(grade.id.split('-')[1]);
  return {
    least: grade.id,
    accepts: ({ id }) => {
      const own = id.split('-')[1] ?? '';
      return !own.startsWith('0') && Number(own) >= wanted;
    },
    says: `ISO 3506-2 asks for class ${wanted} or above and no thin nut`,
  };
}

const J995_ORDER = ['SAE 2', 'SAE 5', 'SAE 8'];
/** SAE J995: the nut grade that is used with the bolt grade of the same strength (memory). */
const SAE_BY_BOLT: Readonly<Record<string, string>> = {
  'SAE 1': 'SAE 2',
  'SAE 2': 'SAE 2',
  'SAE 4': 'SAE 5',
  'SAE 5': 'SAE 5',
  'SAE 5.2': 'SAE 5',
  'SAE 7': 'SAE 8',
  'SAE 8': 'SAE 8',
  'SAE 8.1': 'SAE 8',
  'SAE 8.2': 'SAE 8',
  'ASTM A449': 'SAE 5',
};

const A563_ORDER = ['ASTM A563 A', 'ASTM A563 C', 'ASTM A563 DH'];
/** ASTM A563 Appendix X1, suitable nuts (memory; A449 and A354 BD stand there for SAE 5 and 8). */
const A563_BY_BOLT: Readonly<Record<string, string>> = {
  'SAE 1': 'ASTM A563 A',
  'SAE 2': 'ASTM A563 A',
  'SAE 4': 'ASTM A563 C',
  'SAE 5': 'ASTM A563 C',
  'SAE 5.2': 'ASTM A563 C',
  'SAE 7': 'ASTM A563 DH',
  'SAE 8': 'ASTM A563 DH',
  'SAE 8.1': 'ASTM A563 DH',
  'SAE 8.2': 'ASTM A563 DH',
  'ASTM A449': 'ASTM A563 C',
};

function ranked(
  grade: Grade,
  byBolt: Readonly<Record<string, string>>,
  order: readonly string[],
  standard: string,
): Rule | undefined {
  const least = byBolt[grade.id];
  if (least === undefined) return undefined;
  // C3 and DH3 are the weathering forms of C and DH, of the same strength.
  const rank = (id: string) => order.indexOf(id.replace(/3$/, ''));
  return {
    least,
    accepts: ({ id }) => rank(id) >= rank(least),
    says: `${standard} pairs it with ${least} or above`,
  };
}

const STRONG = ['2H', '4', '7'];
const AUSTENITIC = ['8', '8C', '8M', '8T'];
/**
 * Nuts of ASTM A194 for studs of ASTM A193 and A320, the usual one first (memory, and common practice). A class 2 stud
 * is stronger than its annealed nut in the small sizes: the loads show that.
 */
const A194_BY_STUD: Readonly<Record<string, readonly string[]>> = {
  B5: ['3', ...STRONG],
  B6: ['6', '3', ...STRONG],
  B7: STRONG,
  B16: ['4', '7', '2H'],
  B7M: ['2HM', '7M', ...STRONG],
  L7: ['7', '4', '2H'],
  L43: ['7', '4', '2H'],
  L7M: ['7M', ...STRONG],
  B8: AUSTENITIC,
  B8C: ['8C', '8', '8M', '8T'],
  B8M: ['8M', '8', '8C', '8T'],
  B8T: ['8T', '8', '8C', '8M'],
};

function flangeStud(grade: Grade): Rule | undefined {
  const stud = grade.id.split(' ')[2] ?? '';
  const nuts = A194_BY_STUD[stud];
  if (nuts === undefined) return undefined;
  const [least = ''] = nuts;
  return {
    least: `ASTM A194 ${least}`,
    accepts: ({ id }) => nuts.includes(id.replace('ASTM A194 ', '')),
    says: `${grade.standard} studs ${stud} take ASTM A194 ${listed(nuts)}`,
  };
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}

/** ASTM F594: conditions by rising proof stress; a nut of the bolt's own condition carries it. */
const F594_ORDER = ['AF', 'A', 'CW2', 'CW1'];

function f593(grade: Grade): Rule {
  const conditionOf = (id: string) => id.split(' ').at(-1) ?? '';
  const rank = (id: string) => F594_ORDER.indexOf(conditionOf(id));
  const condition = conditionOf(grade.id);
  const least = grade.id.replace('F593', 'F594');
  return {
    least,
    accepts: ({ id }) => rank(id) >= rank(grade.id),
    says: `ASTM F594 pairs it with condition ${condition} or stronger, of the same alloy group`,
  };
}
