/** The parts list against the joints that its fasteners hold together: how many, which thread, which grade. */

import type { Report } from '../diagnostics/index.ts';
import { parseGrade, parseNut, parseThread } from '../fasteners/index.ts';
import { type At, type Entry, field, optional } from '../model/index.ts';
import type { Parsed } from '../units/index.ts';
import { effectiveJoint, type JointEntry } from './joint-content.ts';
import { fastenedBy, type PartContent } from './parts.ts';
import type { Choice } from './types.ts';
import { holdsFor, variantLabel } from './variants.ts';

/** Kinds that carry the thread of the joint; the grade of a screw or stud is the joint's, that of a nut the nut's. */
const BOLTS: readonly string[] = ['screw', 'stud'];
const THREADED: readonly string[] = [...BOLTS, 'nut'];

/** Reports a count that differs in a variant. */
export function checkCount(
  report: Report,
  part: Entry<PartContent>,
  joints: readonly JointEntry[],
  all: readonly (readonly Choice[])[],
): void {
  const stated = part.value.quantity;
  if (stated === undefined) return;
  const having = all.filter((choices) => holdsFor(part.value.only, choices));
  const faults = new Map<string, { readonly fasteners: ReturnType<typeof fastenedBy>; readonly labels: string[] }>();
  for (const choices of having) {
    const fasteners = fastenedBy(part.key, joints, choices);
    if (fasteners.length === 0 || stated === countOf(fasteners)) continue;
    const key = fasteners.map((f) => `${f.joint.key} ${f.count}`).join();
    const known = faults.get(key);
    if (known === undefined) faults.set(key, { fasteners, labels: [variantLabel(choices)] });
    else known.labels.push(variantLabel(choices));
  }
  for (const { fasteners, labels } of faults.values()) {
    const variants = labels.length === having.length ? '' : ` (${labels.join(', ')})`;
    report(
      'PRT001',
      field(part, 'quantity').node.range,
      `the parts list has ${stated} of \`${part.key}\`, and its joints need ${countOf(fasteners)}${variants}`,
      {
        related: fasteners.map((f) => ({
          range: field(f.joint, 'pattern').node.range,
          message: `joint \`${f.joint.key}\` has ${f.count}`,
        })),
        hint: `make the two agree, or leave \`quantity\` out: it then follows from the joints${all.length > 1 ? ' of each variant' : ''}`,
      },
    );
  }
}

function countOf(fasteners: ReturnType<typeof fastenedBy>): number {
  return fasteners.reduce((n, f) => n + f.count, 0);
}

/** What the parts list says of a fastener, as printed; undefined where it says nothing or cannot be read. */
export interface StatedFastener {
  readonly thread?: string;
  readonly grade?: string;
}

/** Reads thread and grade of a part and reports those that differ from a joint of some variant. */
export function checkFastener(
  report: Report,
  part: Entry<PartContent>,
  joints: readonly JointEntry[],
  all: readonly (readonly Choice[])[],
): StatedFastener {
  const threadAt = optional(part, 'thread');
  const gradeAt = optional(part, 'grade');
  const isNut = part.value.kind === 'nut';
  const thread = read(report, 'FLD009', threadAt, parseThread, (t) => t.designation);
  const grade = isNut
    ? read(report, 'FLD010', gradeAt, parseNut, (g) => g.id)
    : read(report, 'FLD010', gradeAt, parseGrade, (g) => g.id);
  const told = new Set<string>();
  for (const choices of THREADED.includes(part.value.kind) ? all : []) {
    if (!holdsFor(part.value.only, choices)) continue;
    for (const { joint } of fastenedBy(part.key, joints, choices)) {
      const at = effectiveJoint(joint, choices);
      const own = parseThread(at.value.thread);
      if (thread !== undefined && threadAt !== undefined && own.ok && own.value.designation !== thread) {
        tell(report, told, part, 'thread', threadAt, thread, joint, field(at, 'thread'), own.value.designation);
      }
      const wanted = isNut ? nutOf(at) : { at: field(at, 'grade'), read: parseGrade(at.value.grade) };
      if (grade === undefined || gradeAt === undefined || wanted === undefined || !wanted.read.ok) continue;
      if (wanted.read.value.id !== grade) {
        tell(report, told, part, 'grade', gradeAt, grade, joint, wanted.at, wanted.read.value.id);
      }
    }
  }
  return { ...(thread === undefined ? {} : { thread }), ...(grade === undefined ? {} : { grade }) };
}

function nutOf(at: ReturnType<typeof effectiveJoint>) {
  const nut = optional(at, 'nut');
  if (nut === undefined) return undefined;
  return { at: field(nut, 'grade'), read: parseNut(nut.value.grade) };
}

function read<T>(
  report: Report,
  code: 'FLD009' | 'FLD010',
  at: At<string> | undefined,
  parse: (text: string) => Parsed<T>,
  print: (value: T) => string,
): string | undefined {
  if (at === undefined) return undefined;
  const parsed = parse(at.value);
  if (parsed.ok) return print(parsed.value);
  report(code, at.node.range, parsed.problem, { hint: parsed.hint });
  return undefined;
}

function tell(
  report: Report,
  told: Set<string>,
  part: Entry<PartContent>,
  what: 'thread' | 'grade',
  at: At<string>,
  own: string,
  joint: JointEntry,
  wantedAt: At<unknown>,
  wanted: string,
): void {
  const key = `${joint.key} ${what} ${wanted}`;
  if (told.has(key)) return;
  told.add(key);
  report(
    'PRT002',
    at.node.range,
    `the parts list has \`${part.key}\` as ${own}, and joint \`${joint.key}\` has ${wanted}`,
    {
      related: [{ range: wantedAt.node.range, message: `${what} of the joint` }],
      hint: 'one of the two was copied wrongly: compare both with the drawing',
    },
  );
}
