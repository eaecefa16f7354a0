/** Thread, grade, nut, wrench size and bearing face from the fields; each part that can be read stands alone. */

import {
  type Bearing,
  type Drive,
  type Flange,
  type Grade,
  HEADS,
  type Head,
  type NutGrade,
  type NutStrength,
  nutStrengthOf,
  parseFlange,
  parseGrade,
  parseNut,
  parseThread,
  type Strength,
  strengthOf,
  type Thread,
  turnedOf,
} from '../../../fasteners/index.ts';
import { type Band, findCondition, type JointCondition } from '../../../torque/index.ts';
import { defined, fault, isFilled, type Reader, take } from './fault.ts';

export interface Fastener {
  readonly thread?: Thread;
  readonly grade?: Grade;
  readonly strength?: Strength;
  readonly head: Head;
  readonly turned: 'head' | 'nut';
  readonly drive?: Drive;
  readonly bearing?: Bearing;
  readonly nut?: { readonly grade: NutGrade; readonly strength: NutStrength };
  readonly condition?: JointCondition;
  readonly flange?: Flange;
}

/** Reads everything about the fastener; what has a fault, and what rests on it, is absent. */
export function readFastener(reader: Reader): Fastener {
  const { inputs } = reader;
  const head = HEADS.find((h) => h.id === inputs.head)?.id ?? 'hexagon';
  const thread = take(reader, 'thread', parseThread(inputs.thread));
  const grade = take(reader, 'grade', parseGrade(inputs.grade));
  const strength = thread && grade && take(reader, 'grade', strengthOf(grade, thread));
  const heavyNut = inputs.heavy === 'yes';
  const byNut = head === 'stud' || inputs.turned === 'nut';
  const own = thread && turnedOf({ head, turned: byNut ? 'nut' : 'head', heavyNut, thread, grade });
  // A stud without a heavy nut is read from its head field.
  const drive = own && take(reader, byNut && (head !== 'stud' || heavyNut) ? 'turned' : 'head', own.drive);
  return {
    head,
    turned: byNut ? 'nut' : 'head',
    ...defined({
      thread,
      grade,
      strength,
      drive,
      bearing: own?.bearing,
      nut: thread && readNut(reader, thread),
      condition: readCondition(reader),
      flange: isFilled(reader, 'flange') ? take(reader, 'flange', parseFlange(inputs.flange)) : undefined,
    }),
  };
}

function readNut(reader: Reader, thread: Thread): Fastener['nut'] {
  if (!isFilled(reader, 'nut')) return undefined;
  const grade = take(reader, 'nut', parseNut(reader.inputs.nut));
  const strength = grade && take(reader, 'nut', nutStrengthOf(grade, thread, { heavy: reader.inputs.heavy === 'yes' }));
  return grade && strength && { grade, strength };
}

/** The condition of the list, with the lubricant maker's own nut factor where one is typed. */
function readCondition(reader: Reader): JointCondition | undefined {
  const condition = findCondition(reader.inputs.condition);
  if (condition === undefined || !isFilled(reader, 'k')) return condition;
  const nutFactor = readNutFactor(reader);
  return nutFactor && { ...condition, nutFactor, source: `K: as typed here; mu: ${condition.source}` };
}

/** Above 1 a nut factor is a slip of the point: the worst dry, galling joints lie near 0.5. Practice. */
const MOST_K = 1;

function readNutFactor(reader: Reader): Band | undefined {
  const text = reader.inputs.k.trim();
  const values = text
    .split(/[\s/;]+/u)
    .map((t) => (/^\d*[.,]?\d+$/.test(t) ? Number(t.replace(',', '.')) : Number.NaN));
  const [low, nominal, high] = values;
  if (
    low === undefined ||
    nominal === undefined ||
    high === undefined ||
    values.length !== 3 ||
    values.some(Number.isNaN)
  ) {
    return fault(reader, 'k', `\`${text}\` is not three nut factors`, 'write low, nominal and high: `0.11 0.13 0.16`');
  }
  if (!(low > 0 && low <= nominal && nominal <= high && high <= MOST_K)) {
    return fault(
      reader,
      'k',
      `\`${text}\` is no band of nut factors`,
      `write them rising, above 0 and at most ${MOST_K}`,
    );
  }
  return { low, nominal, high };
}
