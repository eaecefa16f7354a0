/** What is tightened: thread, grade, nut, wrench size and bearing face of a joint. */

import {
  type Bearing,
  type Drive,
  type Flange,
  type Grade,
  nutStrengthOf,
  parseFlange,
  parseGrade,
  parseNut,
  parseThread,
  type Strength,
  strengthOf,
  type Thread,
  turnedOf,
} from '../fasteners/index.ts';
import { type At, field, optional } from '../model/index.ts';
import type { Parsed } from '../units/index.ts';
import type { Context } from './context.ts';
import type { JointContent } from './joint-content.ts';
import { defined, plainText } from './quantities.ts';
import type { JointNut } from './types.ts';

export interface JointFastener {
  readonly thread: Thread;
  readonly grade: Grade;
  readonly strength: Strength;
  readonly turned: 'head' | 'nut';
  readonly drive: Drive;
  readonly bearing: Bearing;
  readonly nut?: JointNut;
  readonly flange?: Flange;
}

type FaultCode = 'FLD009' | 'FLD010' | 'FLD012' | 'TRQ009';

/** Everything about the fastener that tables know; undefined when one of its values has a fault, each reported. */
export function readFastener(context: Context, at: At<JointContent>): JointFastener | undefined {
  const v = at.value;

  function read<T>(code: FaultCode, place: At<unknown>, parsed: Parsed<T>): T | undefined {
    if (parsed.ok) return parsed.value;
    context.report(code, place.node.range, parsed.problem, { hint: parsed.hint });
    return undefined;
  }

  const thread = read('FLD009', field(at, 'thread'), parseThread(v.thread));
  const grade = read('FLD010', field(at, 'grade'), parseGrade(v.grade));
  const strength = thread && grade && read('FLD010', field(at, 'grade'), strengthOf(grade, thread));
  const own = thread && turnedOf({ head: v.head, turned: v.turned, heavyNut: v.nut?.heavy, thread, grade });
  const byNut = own?.turned === 'nut' && v.head !== 'stud' && v.nut !== undefined;
  const drive = own && read('TRQ009', byNut ? field(at, 'nut') : field(at, 'head'), own.drive);
  const nutAt = optional(at, 'nut');
  const nut = nutAt === undefined || thread === undefined ? undefined : readNut(context, nutAt, thread);
  const flangeAt = optional(at, 'flange');
  const flange = flangeAt === undefined ? undefined : read('FLD012', flangeAt, parseFlange(flangeAt.value));
  if (!thread || !grade || !strength || !own || !drive) return undefined;
  if ((nutAt !== undefined && nut === undefined) || (flangeAt !== undefined && flange === undefined)) return undefined;
  return {
    thread,
    grade,
    strength,
    turned: own.turned,
    drive,
    bearing: own.bearing,
    ...defined({ nut, flange }),
  };
}

function readNut(context: Context, at: At<NonNullable<JointContent['nut']>>, thread: Thread): JointNut | undefined {
  const place = field(at, 'grade').node.range;
  const grade = parseNut(at.value.grade);
  if (!grade.ok) {
    context.report('FLD010', place, grade.problem, { hint: grade.hint });
    return undefined;
  }
  const strength = nutStrengthOf(grade.value, thread, defined({ heavy: at.value.heavy }));
  if (!strength.ok) {
    context.report('FLD010', place, strength.problem, { hint: strength.hint });
    return undefined;
  }
  return {
    grade: grade.value,
    strength: strength.value,
    ...defined({ reason: plainText(at.value.reason) }),
  };
}
