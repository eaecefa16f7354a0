/** A joint of one variant: content with its `when` taken in, every number read, and everything computed from them. */

import type { z } from 'zod';
import type { Range } from '../diagnostics/index.ts';
import {
  bearingOf,
  driveOf,
  type Grade,
  parseGrade,
  parseThread,
  type Strength,
  strengthOf,
  type Thread,
} from '../fasteners/index.ts';
import {
  balance,
  checkPattern,
  neighbourChordMm,
  type Pattern,
  patternCount,
  patternHoles,
  tighteningSequence,
} from '../geometry/index.ts';
import { type At, type Entry, field, items, type MachineContent, optional } from '../model/index.ts';
import type { machineShape } from '../model/shapes/machine.ts';
import { computeTorque, findCondition, inOtherUnit, planRounds } from '../torque/index.ts';
import { neededDecimals, type Parsed, quantity, type Torque, valueIn } from '../units/index.ts';
import type { Context } from './context.ts';
import { lookUp } from './context.ts';
import { defined, plainText, readQuantity, readSource } from './quantities.ts';
import { conditionHint } from './registers.ts';
import type { Choice, JointPlan, PlannedRound, Tool } from './types.ts';
import { holdsFor } from './variants.ts';

type JointContent = NonNullable<z.output<typeof machineShape>['joints']>[string];
export type JointEntry = Entry<JointContent>;

/** 75 % of proof load: usual for joints that are taken apart again (textbook practice; Shigley ch. 8, memory). */
const USUAL_PRELOAD = 0.75;
/** Snug, 30, 70, 100 %: the shares of ASME PCC-1-2010 as read in an installation sheet. */
const USUAL_ROUNDS: readonly number[] = [0.3, 0.7, 1];
/** kgf·m and the like are read, and cards show N·m and lbf units only. */
const SECOND_UNIT: Readonly<Record<string, string>> = {
  N·m: 'lbf·ft',
  kN·m: 'lbf·ft',
  lbf·ft: 'N·m',
  lbf·in: 'N·m',
  kgf·m: 'N·m',
  kgf·cm: 'N·m',
  dN·m: 'lbf·in',
};

/** The content of the joint as it stands for `choices`: later `when` entries win over earlier ones. */
export function effectiveJoint(joint: JointEntry, choices: readonly Choice[]): At<JointContent> {
  const when = optional(joint, 'when');
  if (when === undefined) return joint;
  let value: JointContent = joint.value;
  let { node } = joint;
  for (const w of items(when)) {
    if (!holdsFor(w.value.only, choices)) continue;
    const { only: _, ...changes } = w.value;
    value = { ...value, ...defined(changes) } as JointContent;
    if (node.kind === 'map' && w.node.kind === 'map') {
      const changed = new Set(Object.keys(changes));
      const own = w.node;
      node = {
        ...node,
        entries: [...node.entries.filter((e) => !changed.has(e.key)), ...own.entries.filter((e) => changed.has(e.key))],
      };
    }
  }
  return { value, node };
}

/** The axes that change a joint. */
export function jointAxes(joint: JointEntry): readonly string[] {
  return [
    ...new Set([
      ...Object.keys(joint.value.only ?? {}),
      ...(joint.value.when ?? []).flatMap((w) => Object.keys(w.only)),
    ]),
  ];
}

/** Computes a joint for one variant; undefined when its content has faults (each reported at its place). */
export function planJoint(
  context: Context,
  machine: Entry<MachineContent>,
  joint: JointEntry,
  choices: readonly Choice[],
): JointPlan | undefined {
  const { report, content } = context;
  const at = effectiveJoint(joint, choices);
  const v = at.value;
  const place = (key: keyof JointContent & string): Range => (optional(at, key) ?? field(at, key)).node.range;

  function author<T>(
    code: 'FLD009' | 'FLD010' | 'TRQ009',
    key: keyof JointContent & string,
    parsed: Parsed<T>,
  ): T | undefined {
    if (parsed.ok) return parsed.value;
    report(code, place(key), parsed.problem, { hint: parsed.hint });
    return undefined;
  }

  const parts = {
    entries: new Map(Object.entries(machine.value.parts)),
    faulty: machine.dropped,
    unread: false,
    file: machine.node.range.file,
  };
  const fastener = lookUp(context, 'part', parts, v.fastener, place('fastener'));
  const also = optional(at, 'also');
  const alsoFound =
    also === undefined ? [] : items(also).map((p) => lookUp(context, 'part', parts, p.value, p.node.range));
  const condition = findCondition(v.condition);
  if (condition === undefined)
    report('FLD004', place('condition'), `\`${v.condition}\` is not a joint condition`, {
      hint: conditionHint(v.condition),
    });
  const lubricant =
    v.lubricant === undefined
      ? undefined
      : lookUp(context, 'consumable', content.consumables, v.lubricant, place('lubricant'));
  const wrenchFound = lookUp(context, 'tool', content.tools, v.wrench, place('wrench'));
  const socketFound =
    v.socket === undefined ? undefined : lookUp(context, 'tool', content.tools, v.socket, place('socket'));
  const wrench = context.tools.get(v.wrench);

  const thread: Thread | undefined = author('FLD009', 'thread', parseThread(v.thread));
  const grade: Grade | undefined = author('FLD010', 'grade', parseGrade(v.grade));
  const strength: Strength | undefined = thread && grade && author('FLD010', 'grade', strengthOf(grade, thread));
  const drive = thread && author('TRQ009', 'head', driveOf(v.head, thread, grade));
  const pattern = readPattern(context, field(at, 'pattern'));
  const holeFaults = pattern === undefined ? [] : checkPattern(pattern, thread?.diameterMm);
  for (const f of holeFaults) report('BLT001', place('pattern'), f.problem, { hint: f.hint });
  const preload = readQuantity(report, optional(at, 'preload'), 'ratio');
  if (preload !== undefined && preload.si > 1) {
    report('FLD005', place('preload'), `a preload of \`${v.preload}\` is more than the whole load`, {
      hint: 'joints that are taken apart again are usually set to 60 to 75 %',
    });
    return undefined;
  }
  const stated = readQuantity(report, optional(at, 'torque'), 'torque');
  const rounds = optional(at, 'rounds');
  const shares = rounds === undefined ? USUAL_ROUNDS : items(rounds).map((r) => readQuantity(report, r, 'ratio')?.si);
  if (v.torque !== undefined && v.source === undefined) {
    report('TRQ010', place('torque'), `the torque \`${v.torque}\` does not say where it comes from`, {
      hint: 'add `source:` with document, edition and place, or leave the torque out to have it computed',
    });
  }
  // A range that is written and cannot be read has its own report, in the register.
  if (wrenchFound?.value.range !== undefined && wrench?.range === undefined) return undefined;
  if (wrench !== undefined && (wrench.kind !== 'torque wrench' || wrench.range === undefined)) {
    report(
      'TRQ005',
      place('wrench'),
      `\`${wrench.id}\` is ${wrench.kind === 'torque wrench' ? 'a torque wrench without a range' : `a ${wrench.kind}`}`,
      { hint: 'name a tool of kind `torque wrench` that has a `range:`' },
    );
    return undefined;
  }
  const sharesRead = shares.filter((s) => s !== undefined);
  if (!rising(sharesRead)) {
    report('TRQ008', place('rounds'), `the rounds ${v.rounds?.join(', ') ?? ''} do not rise to 100 %`, {
      hint: 'write them rising, the last one `100 %`; further passes at 100 % are `circular_passes`',
    });
    return undefined;
  }
  const complete =
    fastener &&
    condition &&
    wrench &&
    wrenchFound &&
    thread &&
    grade &&
    strength &&
    drive &&
    pattern &&
    holeFaults.length === 0 &&
    alsoFound.every((p) => p !== undefined) &&
    (v.lubricant === undefined || lubricant) &&
    (v.socket === undefined || socketFound) &&
    (v.torque === undefined || stated) &&
    (v.preload === undefined || preload) &&
    sharesRead.length === shares.length;
  if (!complete) return undefined;

  const bearing = bearingOf(v.head, thread);
  const preloadShare = preload?.si ?? USUAL_PRELOAD;
  const input = { thread, strength, condition, bearing, preloadShare };
  const unit = scaleUnit(wrench) ?? context.info.leadingTorque;
  const step = graduation(wrench, unit);
  // A computed torque is set on the wrench's own scale; the result is then computed again for what is really set.
  const target =
    stated === undefined ? computedTarget(computeTorque(input).targetNm, unit, step) : settable(stated, unit);
  const result = computeTorque({ ...input, statedNm: target.si });
  const secondUnit = SECOND_UNIT[unit] ?? 'N·m';
  const planned: readonly PlannedRound[] = planRounds(target, sharesRead, v.circular_passes ?? 0, step).map((r, i) => ({
    ...r,
    number: i + 1,
    second: inOtherUnit(r.torque, secondUnit),
  }));
  const sequence = tighteningSequence(pattern);
  const ranges = Object.fromEntries((at.node.kind === 'map' ? at.node.entries : []).map((e) => [e.key, e.value.range]));
  return {
    machine: machine.key,
    id: joint.key,
    name: v.name,
    fastener: v.fastener,
    fastenerName: fastener.name,
    also: v.also ?? [],
    count: patternCount(pattern),
    thread,
    grade,
    strength,
    head: v.head,
    drive,
    bearing,
    condition,
    pattern,
    view: v.view,
    holes: patternHoles(pattern),
    sequence,
    balance: balance(pattern, sequence.order),
    chordMm: neighbourChordMm(pattern),
    target,
    targetSecond: inOtherUnit(target, secondUnit),
    origin: stated === undefined ? 'computed' : 'stated',
    preloadShare,
    result,
    rounds: planned,
    wrench: v.wrench,
    wrenchName: wrench.name,
    range: joint.keyRange,
    ranges,
    ...defined({
      lubricant: v.lubricant,
      lubricantName: lubricant?.value.name,
      where: v.where,
      top: v.top,
      source: readSource(v.source),
      reason: plainText(v.reason),
      socket: v.socket,
      socketName: socketFound?.value.name,
      note: plainText(v.note),
    }),
  };
}

function rising(shares: readonly number[]): boolean {
  return (
    shares.length === 0 ||
    (shares.every((s, i) => i === 0 || s > (shares[i - 1] ?? 0)) && Math.abs((shares.at(-1) ?? 0) - 1) < 1e-9)
  );
}

function readPattern(context: Context, at: At<JointContent['pattern']>): Pattern | undefined {
  const { report } = context;
  const mm = (q: { readonly si: number } | undefined): number | undefined =>
    q === undefined ? undefined : q.si * 1000;
  if ('circle' in at.value) {
    const circle = at as At<Extract<JointContent['pattern'], { circle: string }>>;
    const diameterMm = mm(readQuantity(report, field(circle, 'circle'), 'length'));
    const first = readQuantity(report, optional(circle, 'first'), 'angle', { positive: false });
    if (diameterMm === undefined || (circle.value.first !== undefined && first === undefined)) return undefined;
    return {
      kind: 'circle',
      diameterMm,
      count: circle.value.count,
      firstDeg: first === undefined ? 0 : valueIn(first, '°'),
    };
  }
  if ('rectangle' in at.value) {
    const rectangle = at as At<Extract<JointContent['pattern'], { along: number }>>;
    const [length, width] = items(field(rectangle, 'rectangle')).map((q) => mm(readQuantity(report, q, 'length')));
    if (length === undefined || width === undefined) return undefined;
    return {
      kind: 'rectangle',
      lengthMm: length,
      widthMm: width,
      along: rectangle.value.along,
      across: rectangle.value.across,
    };
  }
  const points = at as At<Extract<JointContent['pattern'], { points: unknown }>>;
  const read = items(field(points, 'points')).map((p) => {
    const [xMm, yMm] = items(p as At<readonly string[]>).map((q) =>
      mm(readQuantity(report, q, 'length', { positive: false })),
    );
    return xMm === undefined || yMm === undefined ? undefined : { xMm, yMm };
  });
  const complete = read.filter((p) => p !== undefined);
  return complete.length === read.length ? { kind: 'points', points: complete } : undefined;
}

/** The unit of the wrench's own scale: what is printed large is what the mechanic sets. */
function scaleUnit(wrench: Tool): string | undefined {
  return (wrench.range?.max ?? wrench.range?.min)?.unit;
}

/** Graduation of the wrench in the unit of its scale; without one, the last digit that such a wrench can show. */
function graduation(wrench: Tool, unit: string): number {
  if (wrench.step !== undefined) return Number((wrench.step.si / quantity('torque', 1, unit).si).toPrecision(6));
  const most = wrench.range?.max?.value ?? 100;
  return most <= 25 ? 0.1 : most <= 100 ? 0.5 : 1;
}

/** A stated torque keeps its own number when the wrench reads in its unit; else it is turned into the wrench's unit. */
function settable(stated: Torque, unit: string): Torque {
  return stated.unit === unit ? stated : inOtherUnit(stated, unit);
}

function computedTarget(targetNm: number, unit: string, step: number): Torque {
  const value = targetNm / quantity('torque', 1, unit).si;
  // Nearest mark of the scale, and never above the share asked for: a preload share is an upper aim.
  const marks = Math.floor(value / step + 1e-9);
  const set = Math.max(step, marks * step);
  return quantity('torque', Number(set.toFixed(neededDecimals(step))), unit, neededDecimals(step));
}
