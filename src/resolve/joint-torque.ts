/** How tight, with what: stated or computed torque, wrench with adapter, rounds. */

import { type At, field, items, optional } from '../model/index.ts';
import {
  type Adapter,
  adapterFault,
  isoWrenchDeviation,
  type JointCondition,
  type Tightening,
  tighten,
  usualGraduation,
} from '../torque/index.ts';
import { quantity, type Ratio, type Torque } from '../units/index.ts';
import type { Context } from './context.ts';
import type { JointContent } from './joint-content.ts';
import type { JointFastener } from './joint-fastener.ts';
import { readDeg } from './joint-pattern.ts';
import { defined, rangeOf, readQuantity } from './quantities.ts';
import type { JointAdapter, Tool } from './types.ts';

/** 75 % of proof load: usual for joints that are taken apart again (textbook practice; Shigley ch. 8, memory). */
const USUAL_PRELOAD = 0.75;
/** A wrench whose largest marking is not known is taken to be of the common size. Practice. */
const USUAL_MOST = 100;
/** Snug, 30, 70, 100 %: the shares of ASME PCC-1-2010 as read in an installation sheet. */
const USUAL_ROUNDS: readonly number[] = [0.3, 0.7, 1];
/** Torque values as the author wrote them, read; each fault is reported at its place. */
export interface TorqueValues {
  readonly preloadShare: number;
  readonly stated?: Torque;
  /** A number is a share of the target. */
  readonly rounds: readonly (number | Torque)[];
  readonly runDown?: Torque;
  readonly adapter?: JointAdapter;
}

/** Undefined when a value cannot be used. `wrench` is undefined where it is not in the register. */
export function readTorqueValues(
  context: Context,
  at: At<JointContent>,
  wrench: Tool | undefined,
): TorqueValues | undefined {
  const { report } = context;
  const v = at.value;
  const preload = readPreload(context, at);
  const stated = readQuantity(report, optional(at, 'torque'), 'torque');
  const runDown = readQuantity(report, optional(at, 'run_down'), 'torque');
  const adapter = readAdapter(context, at, wrench);
  const roundsAt = optional(at, 'rounds');
  const rounds = roundsAt === undefined ? USUAL_ROUNDS : items(roundsAt).map((r) => readRound(context, r));
  if (v.torque !== undefined && v.source === undefined) {
    report('TRQ010', rangeOf(at, 'torque'), `the torque \`${v.torque}\` does not say where it comes from`, {
      hint: 'add `source: { document: …, edition: …, place: … }` as you read it, or leave the torque out to have it computed',
    });
  }
  const read = rounds.filter((r) => r !== undefined);
  const complete =
    preload !== 'faulty' &&
    adapter !== 'faulty' &&
    read.length === rounds.length &&
    (v.torque === undefined || stated !== undefined) &&
    (v.run_down === undefined || runDown !== undefined);
  if (!complete) return undefined;
  return { preloadShare: preload?.si ?? USUAL_PRELOAD, rounds: read, ...defined({ stated, runDown, adapter }) };
}

function readPreload(context: Context, at: At<JointContent>): Ratio | undefined | 'faulty' {
  const written = optional(at, 'preload');
  const preload = readQuantity(context.report, written, 'ratio');
  if (written !== undefined && preload === undefined) return 'faulty';
  if (preload === undefined || preload.si <= 1) return preload;
  context.report('FLD005', rangeOf(at, 'preload'), `a preload of \`${at.value.preload}\` is more than the whole load`, {
    hint: 'joints that are taken apart again are usually set to 60 to 75 %',
  });
  return 'faulty';
}

function readRound(context: Context, at: At<string>): number | Torque | undefined {
  const read = readQuantity(context.report, at, ['ratio', 'torque']);
  return read?.dimension === 'torque' ? (read as Torque) : read?.si;
}

function readAdapter(
  context: Context,
  at: At<JointContent>,
  wrench: Tool | undefined,
): JointAdapter | undefined | 'faulty' {
  const adapter = optional(at, 'adapter');
  if (adapter === undefined) return undefined;
  const length = readQuantity(context.report, field(adapter, 'length'), 'length');
  const angleDeg = readDeg(context, field(adapter, 'angle'));
  if (length === undefined || angleDeg === undefined || wrench === undefined) return 'faulty';
  if (wrench.lever === undefined) {
    context.report(
      'TRQ013',
      adapter.node.range,
      `\`${wrench.id}\` has no \`lever\`, so its setting cannot be corrected`,
      {
        hint: `measure from the square to the middle of the grip and add \`lever:\` to \`${wrench.id}\` in tools.yaml`,
      },
    );
    return 'faulty';
  }
  const read: JointAdapter = { length, angleDeg, lever: wrench.lever };
  const fault = adapterFault(adapterOf(read));
  if (fault === undefined) return read;
  context.report('TRQ013', adapter.node.range, fault.problem, { hint: fault.hint });
  return 'faulty';
}

function adapterOf({ length, angleDeg, lever }: JointAdapter): Adapter {
  return { lengthMm: length.si * 1000, angleDeg, leverMm: lever.si * 1000 };
}

/** Torque, rounds and preload of a joint. Reports rounds that do not rise to the target, and then gives nothing. */
export function planTightening(
  context: Context,
  at: At<JointContent>,
  fastener: JointFastener,
  condition: JointCondition,
  values: TorqueValues,
  wrench: Tool,
): (Tightening & Pick<TorqueValues, 'preloadShare' | 'runDown' | 'adapter'>) | undefined {
  const { thread, strength, bearing } = fastener;
  const { preloadShare, stated, runDown, adapter, rounds } = values;
  const unit = scaleUnit(wrench) ?? context.info.leadingTorque;
  const planned = tighten({
    input: {
      thread,
      strength,
      condition,
      bearing,
      preloadShare,
      ...defined({
        prevailingNm: runDown?.si,
        adapter: adapter === undefined ? undefined : adapterOf(adapter),
        wrenchDeviation: deviationOf(wrench),
      }),
    },
    scale: { unit, step: graduation(wrench, unit) },
    rounds,
    circularPasses: at.value.circular_passes ?? 0,
    ...defined({ stated }),
  });
  if (typeof planned !== 'string') return { ...planned, preloadShare, ...defined({ runDown, adapter }) };
  context.report('TRQ008', rangeOf(at, 'rounds'), planned, {
    hint: 'write them rising, the last one `100 %` or the torque itself; further passes are `circular_passes`',
    ...(stated === undefined ? {} : { related: [{ range: rangeOf(at, 'torque'), message: 'torque of the joint' }] }),
  });
  return undefined;
}

/** ISO 6789 classes a wrench by the largest torque of its range. */
function deviationOf(wrench: Tool): number | undefined {
  const max = wrench.range?.max;
  return max === undefined ? undefined : isoWrenchDeviation(max.si);
}

/** The unit of the wrench's own scale: what is printed large is what the mechanic sets. */
function scaleUnit(wrench: Tool): string | undefined {
  return (wrench.range?.max ?? wrench.range?.min)?.unit;
}

/** Graduation of the wrench in the unit of its scale; without one, the last digit that such a wrench can show. */
function graduation(wrench: Tool, unit: string): number {
  if (wrench.step !== undefined) return Number((wrench.step.si / quantity('torque', 1, unit).si).toPrecision(6));
  return usualGraduation(wrench.range?.max?.value ?? USUAL_MOST);
}
