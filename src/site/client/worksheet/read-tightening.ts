/** Preload, torque, wrench and rounds from the fields, and what is computed from them. */

import {
  type Adapter,
  adapterFault,
  computeTorque,
  isoWrenchDeviation,
  type Scale,
  type Tightening,
  type TorqueInput,
  tighten,
  usualGraduation,
} from '../../../torque/index.ts';
import { type Length, type Limit, parseLimit, quantity, type Torque, valueIn } from '../../../units/index.ts';
import { defined, fault, isFilled, type Reader, readCount, readQuantity, readText, take } from './fault.ts';
import type { Fastener } from './read-fastener.ts';
import { readDegrees } from './read-pattern.ts';

/** A wrench, as far as the fields tell. */
export interface Wrench {
  readonly range?: Limit<'torque'>;
  readonly step?: Torque;
  readonly lever?: Length;
}

export interface TighteningRead {
  readonly wrench: Wrench;
  readonly adapter?: Adapter;
  readonly runDown?: Torque;
  readonly preloadShare?: number;
  readonly tightening?: Tightening;
}

const MOST_PASSES = 4;
const MOST_ROUNDS = 6;

/** Reads every field of torque and wrench; `tightening` is absent when a value that it needs has a fault. */
export function readTightening(reader: Reader, fastener: Fastener): TighteningRead {
  const faultsBefore = reader.faults.length;
  const wrench = readWrench(reader);
  const adapter = readAdapter(reader, wrench.lever);
  const runDown = isFilled(reader, 'run-down') ? readQuantity(reader, 'run-down', 'torque', { zero: true }) : undefined;
  const stated = isFilled(reader, 'torque') ? readQuantity(reader, 'torque', 'torque') : undefined;
  const preloadShare = readPreload(reader);
  const rounds = readRounds(reader);
  const circularPasses = readCount(reader, 'passes', 0, MOST_PASSES);
  const read = { wrench, ...defined({ adapter, runDown, preloadShare }) };
  const { thread, strength, condition, bearing } = fastener;
  const complete = thread && strength && condition && bearing && preloadShare !== undefined;
  if (!complete || rounds === undefined || circularPasses === undefined) return read;
  // A fault of any of these fields would make the torque another joint's.
  if (reader.faults.length > faultsBefore) return read;
  const prevailingNm = runDown === undefined || runDown.si === 0 ? undefined : runDown.si;
  const input: TorqueInput = {
    thread,
    strength,
    condition,
    bearing,
    preloadShare,
    ...defined({ prevailingNm, adapter, wrenchDeviation: deviationOf(wrench) }),
  };
  const scale = scaleOf(wrench, stated, input);
  const tightening = tighten({ input, scale, rounds, circularPasses, ...defined({ stated }) });
  if (typeof tightening === 'string') {
    fault(reader, 'rounds', tightening, 'write them rising, the last one `100` or the torque itself');
    return read;
  }
  return { ...read, tightening };
}

function readWrench(reader: Reader): Wrench {
  const range = isFilled(reader, 'wrench')
    ? take(reader, 'wrench', parseLimit(reader.inputs.wrench, 'torque'))
    : undefined;
  const ends = [range?.min, range?.max].filter((q) => q !== undefined);
  if (ends.some((q) => q.value <= 0)) {
    fault(
      reader,
      'wrench',
      `\`${reader.inputs.wrench}\` begins at zero or below`,
      'give the marked range: `40 to 200 N·m`',
    );
  }
  const step = isFilled(reader, 'step') ? readQuantity(reader, 'step', 'torque') : undefined;
  const lever = isFilled(reader, 'lever') ? readQuantity(reader, 'lever', 'length', { bare: 'mm' }) : undefined;
  return defined({ range, step, lever });
}

function readAdapter(reader: Reader, lever: Length | undefined): Adapter | undefined {
  if (!isFilled(reader, 'adapter')) return undefined;
  const length = readQuantity(reader, 'adapter', 'length', { bare: 'mm' });
  const angleDeg = readDegrees(reader, 'angle');
  if (!isFilled(reader, 'lever')) {
    return fault(reader, 'lever', 'the lever of the wrench is not given', 'with an adapter the setting depends on it');
  }
  if (length === undefined || angleDeg === undefined || lever === undefined) return undefined;
  const adapter = { lengthMm: length.si * 1000, angleDeg, leverMm: lever.si * 1000 };
  const found = adapterFault(adapter);
  if (found === undefined) return adapter;
  return fault(reader, 'adapter', found.problem, found.hint);
}

function readPreload(reader: Reader): number | undefined {
  const read = readQuantity(reader, 'preload', 'ratio', { bare: '%' });
  if (read === undefined || read.si <= 1) return read?.si;
  const problem = `a preload of \`${reader.inputs.preload}\` is more than the whole load`;
  return fault(reader, 'preload', problem, 'joints that are taken apart again are usually set to 60 to 75 %');
}

function readRounds(reader: Reader): readonly (number | Torque)[] | undefined {
  // `33,3, 66,7, 100` has decimal commas and `30,70,100` has none: a comma with a space parts, else every comma does.
  const text = reader.inputs.rounds;
  const parts = text.split(/,\s|[;\n]/u.test(text) ? /,\s|[;\n]/u : ',').map((t) => t.trim());
  const filled = parts.filter((t) => t !== '');
  if (filled.length === 0 || filled.length > MOST_ROUNDS) {
    return fault(reader, 'rounds', `${filled.length} rounds are given`, `give 1 to ${MOST_ROUNDS}: \`30, 70, 100\``);
  }
  const read = filled.map((t) => readRound(reader, t));
  const rounds = read.filter((r) => r !== undefined);
  return rounds.length === read.length ? rounds : undefined;
}

function readRound(reader: Reader, text: string): number | Torque | undefined {
  const read = readText(reader, 'rounds', text, ['ratio', 'torque'], { bare: '%' });
  if (read?.dimension !== 'torque') return read?.si;
  return quantity('torque', read.value, read.unit, read.decimals);
}

/** ISO 6789 classes a wrench by the largest torque of its range; without one by the torque that is set. */
function deviationOf(wrench: Wrench): number | undefined {
  const max = wrench.range?.max;
  return max === undefined ? undefined : isoWrenchDeviation(max.si);
}

/** The wrench's own unit, else that of the stated torque, else that in which such threads are usually tightened. */
function scaleOf(wrench: Wrench, stated: Torque | undefined, input: TorqueInput): Scale {
  const end = wrench.range?.max ?? wrench.range?.min;
  const unit = end?.unit ?? stated?.unit ?? (input.thread.system === 'metric' ? 'N·m' : 'lbf·ft');
  if (wrench.step !== undefined) {
    return { unit, step: Number((wrench.step.si / quantity('torque', 1, unit).si).toPrecision(6)) };
  }
  const needed = stated ?? quantity('torque', computeTorque(input).targetNm, 'N·m');
  // A wrench with a least value only: as for one up to 100.
  return { unit, step: usualGraduation(wrench.range?.max?.value ?? (end === undefined ? valueIn(needed, unit) : 100)) };
}
