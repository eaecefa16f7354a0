/** A joint of one variant: content with its `when` taken in, every number read, and everything computed from them. */

import type { Range } from '../diagnostics/index.ts';
import { socketOutsideMm } from '../fasteners/index.ts';
import {
  acrossMm,
  checkFeatures,
  checkPattern,
  compareWithRound,
  loosening,
  looseningRounds,
  neighbourChordMm,
  type Pattern,
  patternCount,
  patternHoles,
  type Sequence,
  type SequenceOptions,
  sequenceFault,
  tighteningSequence,
} from '../geometry/index.ts';
import { type At, type Entry, field, items, type MachineContent, optional } from '../model/index.ts';
import { findCondition, type JointCondition } from '../torque/index.ts';
import { type Context, lookUp } from './context.ts';
import { effectiveJoint, type JointContent, type JointEntry } from './joint-content.ts';
import { readJointDemands } from './joint-demands.ts';
import { type JointFastener, readFastener } from './joint-fastener.ts';
import { jointInteraction } from './joint-interaction.ts';
import { type PlacedFeature, readFeatures, readJacking, readMm, readPattern } from './joint-pattern.ts';
import { planTightening, readTorqueValues } from './joint-torque.ts';
import { defined, plainText, rangeOf, readSource } from './quantities.ts';
import { READ_FROM } from './read-from.ts';
import { conditionHint } from './registers.ts';
import type { Choice, Consumable, JointPlan, Tool } from './types.ts';

/** Computes a joint for one variant; undefined when its content has faults (each reported at its place). */
export function planJoint(
  context: Context,
  machine: Entry<MachineContent>,
  joint: JointEntry,
  choices: readonly Choice[],
): JointPlan | undefined {
  const at = effectiveJoint(joint, choices);
  const v = at.value;
  const named = lookUpNames(context, machine, at);
  const fastener = readFastener(context, at);
  const face = readFace(context, at, fastener?.thread.diameterMm);
  const wrench = usableWrench(context, at);
  const values = readTorqueValues(context, at, context.tools.get(v.wrench));
  const wallMm = readMm(context, optional(at, 'wall'));
  if (!named || !fastener || !face || !wrench || !values) return undefined;
  if (v.wall !== undefined && wallMm === undefined) return undefined;
  const tightening = planTightening(context, at, fastener, named.condition, values, wrench);
  if (tightening === undefined) return undefined;
  const { pattern, sequence } = face;
  const interaction = jointInteraction(context, at, fastener, pattern, sequence, tightening.rounds);
  return {
    machine: machine.key,
    id: joint.key,
    name: v.name,
    fastener: v.fastener,
    fastenerName: named.fastenerName,
    also: v.also ?? [],
    head: v.head,
    ...fastener,
    condition: named.condition,
    view: v.view,
    ...face,
    ...socketRoom(fastener, named.socket),
    ...tightening,
    wrench: v.wrench,
    wrenchName: wrench.name,
    range: joint.keyRange,
    ranges: rangesOf(at),
    [READ_FROM]: at.node,
    ...readJointDemands(context, machine, at),
    ...defined({
      lubricant: v.lubricant,
      lubricantName: named.lubricant?.name,
      where: v.where,
      top: v.top,
      source: readSource(v.source),
      reason: plainText(v.reason),
      socket: v.socket,
      socketName: named.socket?.name,
      wallMm,
      interaction,
      note: plainText(v.note),
    }),
  };
}

function rangesOf(at: At<JointContent>): Readonly<Record<string, Range>> {
  return Object.fromEntries((at.node.kind === 'map' ? at.node.entries : []).map((e) => [e.key, e.value.range]));
}

interface Names {
  readonly fastenerName: string;
  readonly condition: JointCondition;
  readonly lubricant?: Consumable;
  readonly socket?: Tool;
}

/** Everything that the joint calls by an id; undefined when one of them is not known. */
function lookUpNames(context: Context, machine: Entry<MachineContent>, at: At<JointContent>): Names | undefined {
  const { content, report } = context;
  const v = at.value;
  const parts = {
    entries: new Map(Object.entries(machine.value.parts)),
    faulty: machine.dropped,
    unread: false,
    file: machine.node.range.file,
  };
  const fastener = lookUp(context, 'part', parts, v.fastener, rangeOf(at, 'fastener'));
  const also = optional(at, 'also');
  const alsoFound =
    also === undefined ? [] : items(also).map((p) => lookUp(context, 'part', parts, p.value, p.node.range));
  const condition = findCondition(v.condition);
  if (condition === undefined)
    report('FLD004', rangeOf(at, 'condition'), `\`${v.condition}\` is not a joint condition`, {
      hint: conditionHint(v.condition),
    });
  const isKnown = (key: 'lubricant' | 'socket'): boolean => {
    const id = v[key];
    if (id === undefined) return true;
    return key === 'lubricant'
      ? lookUp(context, 'consumable', content.consumables, id, rangeOf(at, key)) !== undefined
      : lookUp(context, 'tool', content.tools, id, rangeOf(at, key)) !== undefined;
  };
  const known = [isKnown('lubricant'), isKnown('socket')].every(Boolean);
  if (!fastener || !condition || !known || alsoFound.some((p) => p === undefined)) return undefined;
  const lubricant = v.lubricant === undefined ? undefined : context.consumables.get(v.lubricant);
  return {
    fastenerName: fastener.name,
    condition: withOwnNutFactor(condition, lubricant),
    ...defined({ lubricant, socket: v.socket === undefined ? undefined : context.tools.get(v.socket) }),
  };
}

/** Figures of the lubricant's maker come before those of the condition. */
function withOwnNutFactor(condition: JointCondition, lubricant: Consumable | undefined): JointCondition {
  const own = lubricant?.nutFactor;
  if (own === undefined || lubricant?.condition !== condition.id) return condition;
  return { ...condition, nutFactor: own.band, source: `K: ${own.source}; mu: ${condition.source}` };
}

/** The torque wrench with its range; anything else is reported. */
function usableWrench(context: Context, at: At<JointContent>): Tool | undefined {
  const id = at.value.wrench;
  const found = lookUp(context, 'tool', context.content.tools, id, rangeOf(at, 'wrench'));
  const wrench = context.tools.get(id);
  if (found === undefined || wrench === undefined) return undefined;
  // A range that is written and cannot be read has its own report, in the register.
  if (found.value.range !== undefined && wrench.range === undefined) return undefined;
  if (wrench.kind === 'torque wrench' && wrench.range !== undefined) return wrench;
  context.report(
    'TRQ005',
    rangeOf(at, 'wrench'),
    `\`${wrench.id}\` is ${wrench.kind === 'torque wrench' ? 'a torque wrench without a range' : `a ${wrench.kind}`}`,
    { hint: 'name a tool of kind `torque wrench` that has a `range:`' },
  );
  return undefined;
}

type Face = Pick<
  JointPlan,
  | 'pattern'
  | 'count'
  | 'holes'
  | 'features'
  | 'sequence'
  | 'balance'
  | 'circularBalance'
  | 'loosening'
  | 'looseningRounds'
  | 'jacking'
  | 'chordMm'
  | 'acrossMm'
>;

/** Pattern, order and what else stands on the joint face; undefined when the bolts have no place. */
function readFace(context: Context, at: At<JointContent>, boltMm: number | undefined): Face | undefined {
  const place = field(at, 'pattern');
  const pattern = readPattern(context, place);
  const jacking = readJacking(context, at);
  const features = readFeatures(context, at);
  if (pattern === undefined) return undefined;
  const faults = checkPattern(pattern, boltMm);
  for (const f of faults) context.report('BLT001', place.node.range, f.problem, { hint: f.hint });
  if (faults.length > 0) return undefined;
  reportFeatures(context, pattern, boltMm, features);
  const sequence = readSequence(context, at, pattern);
  if (sequence === undefined) return undefined;
  const count = patternCount(pattern);
  const balances = compareWithRound(pattern, sequence.order, sequence.moves);
  return {
    pattern,
    count,
    holes: patternHoles(pattern),
    features: features.map(({ at: _, ...feature }) => feature),
    sequence,
    balance: balances.order,
    circularBalance: balances.circular,
    loosening: loosening(sequence),
    looseningRounds: looseningRounds(count),
    chordMm: neighbourChordMm(pattern),
    acrossMm: acrossMm(pattern),
    ...defined({ jacking }),
  };
}

function reportFeatures(
  context: Context,
  pattern: Pattern,
  boltMm: number | undefined,
  features: readonly PlacedFeature[],
): void {
  if (boltMm === undefined) return;
  // Jacking screws share one entry: the first that is in the way says enough.
  const told = new Set<unknown>();
  for (const fault of checkFeatures(pattern, boltMm, features)) {
    const place = features[fault.index]?.at;
    if (place === undefined || told.has(place)) continue;
    told.add(place);
    context.report('BLT005', place.node.range, fault.problem, { hint: fault.hint });
  }
}

function readSequence(context: Context, at: At<JointContent>, pattern: Pattern): Sequence | undefined {
  const asked = optional(at, 'sequence');
  const options: SequenceOptions = defined({ method: asked?.value.method, tools: asked?.value.tools });
  const fault = sequenceFault(pattern, options);
  if (fault === undefined) return tighteningSequence(pattern, options);
  context.report('BLT004', (asked ?? at).node.range, fault.problem, { hint: fault.hint });
  return undefined;
}

/** Room for the socket: its own measure where the register has it, else an estimate from its size. */
function socketRoom(fastener: JointFastener, socket: Tool | undefined) {
  if (socket?.outside !== undefined) {
    return { socketOutsideMm: socket.outside.si * 1000, socketOutsideFrom: `${socket.name}, from the tool register` };
  }
  return {
    socketOutsideMm: socketOutsideMm(fastener.drive),
    socketOutsideFrom: 'estimate from the size across flats, common practice',
  };
}
