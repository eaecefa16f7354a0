/** The bolt pattern from the fields, its holes, its order and its distances. */

import {
  acrossMm,
  type Balance,
  balance,
  checkPattern,
  circularSequence,
  type Hole,
  type Method,
  type Numbering,
  neighbourChordMm,
  type Pattern,
  patternHoles,
  type Sequence,
  type SequenceOptions,
  sequenceFault,
  tighteningSequence,
} from '../../../geometry/index.ts';
import { valueIn } from '../../../units/index.ts';
import { fault, isFilled, type Reader, readCount, readMm, readQuantity } from './fault.ts';
import type { FieldKey } from './fields.ts';

export interface Layout {
  readonly pattern: Pattern;
  readonly holes: readonly Hole[];
  readonly sequence: Sequence;
  readonly balance: Balance;
  readonly circularBalance: Balance;
  readonly chordMm: number;
  readonly acrossMm: number;
}

/** As many as the content of a shop may have. */
const MOST_BOLTS = 400;
const MOST_ON_SIDE = 100;
/** Beyond this a length is a slip of unit: no joint face is wider. Practice. */
const LONGEST_MM = 100_000;

/** Undefined when the pattern cannot be drawn; an order that the pattern does not allow is reported and the usual one taken. */
export function readLayout(reader: Reader, holeDiameterMm: number | undefined): Layout | undefined {
  const pattern = readPattern(reader);
  if (pattern === undefined) return undefined;
  const faults = checkPattern(pattern, holeDiameterMm);
  for (const f of faults.slice(0, MOST_SHOWN)) fault(reader, sizeField(pattern), f.problem, f.hint);
  if (faults.length > 0) return undefined;
  const sequence = tighteningSequence(pattern, readOptions(reader, pattern));
  return {
    pattern,
    holes: patternHoles(pattern),
    sequence,
    balance: balance(pattern, sequence.order, sequence.moves),
    circularBalance: balance(pattern, circularSequence(pattern).order),
    chordMm: neighbourChordMm(pattern),
    acrossMm: acrossMm(pattern),
  };
}

/** Many holes may overlap at once; the first few tell the story. */
const MOST_SHOWN = 3;

/** The field at which a fault of the whole pattern is shown. */
function sizeField(pattern: Pattern): FieldKey {
  switch (pattern.kind) {
    case 'circle':
    case 'arc':
    case 'circles':
      return 'circle';
    case 'rectangle':
    case 'slot':
      return 'length';
    case 'points':
      return 'points';
  }
}

function readOptions(reader: Reader, pattern: Pattern): SequenceOptions {
  const { inputs } = reader;
  const tools = inputs.tools === '2' ? 2 : inputs.tools === '4' ? 4 : 1;
  const method = METHODS.find((m) => m === inputs.method);
  const options: SequenceOptions = method === undefined ? { tools } : { tools, method };
  const found = sequenceFault(pattern, options);
  if (found === undefined) return options;
  const methodAlone = method !== undefined && sequenceFault(pattern, { method }) !== undefined;
  fault(reader, methodAlone ? 'method' : 'tools', found.problem, found.hint);
  return {};
}

const METHODS: readonly Method[] = ['cross', 'spiral', 'quadrants', 'in turn'];

function readPattern(reader: Reader): Pattern | undefined {
  const { inputs } = reader;
  const numbering: { readonly numbering?: Numbering } =
    inputs.numbering === 'anticlockwise' ? { numbering: 'anticlockwise' } : {};
  switch (inputs.pattern) {
    case 'arc': {
      const ring = readRing(reader, 'n', 'circle', 'first');
      const spanDeg = readDegrees(reader, 'span');
      return ring && spanDeg !== undefined ? { kind: 'arc', ...ring, spanDeg, ...numbering } : undefined;
    }
    case 'circles': {
      const rings = [readRing(reader, 'n', 'circle', 'first'), readRing(reader, 'n2', 'circle2', 'first2')];
      if (isFilled(reader, 'n3') || isFilled(reader, 'circle3')) {
        rings.push(readRing(reader, 'n3', 'circle3', 'first3'));
      }
      const circles = rings.filter((r) => r !== undefined);
      return circles.length === rings.length ? { kind: 'circles', circles, ...numbering } : undefined;
    }
    case 'rectangle': {
      const along = readCount(reader, 'along', 1, MOST_ON_SIDE);
      const across = readCount(reader, 'across', 1, MOST_ON_SIDE);
      const sides = readSides(reader);
      return sides && along !== undefined && across !== undefined
        ? { kind: 'rectangle', ...sides, along, across, ...numbering }
        : undefined;
    }
    case 'slot': {
      const count = readCount(reader, 'n', 2, MOST_BOLTS);
      const sides = readSides(reader);
      return sides && count !== undefined
        ? { kind: 'slot', ...sides, count, straddle: inputs.straddle === 'yes', ...numbering }
        : undefined;
    }
    case 'points':
      return readPoints(reader);
    default: {
      const ring = readRing(reader, 'n', 'circle', 'first');
      return ring && { kind: 'circle', ...ring, ...numbering };
    }
  }
}

function readRing(reader: Reader, countField: FieldKey, circleField: FieldKey, firstField: FieldKey) {
  const count = readCount(reader, countField, 2, MOST_BOLTS);
  const diameterMm = readLength(reader, circleField);
  const firstDeg = readDegrees(reader, firstField);
  return count === undefined || diameterMm === undefined || firstDeg === undefined
    ? undefined
    : { count, diameterMm, firstDeg };
}

function readSides(reader: Reader) {
  const lengthMm = readLength(reader, 'length');
  const widthMm = readLength(reader, 'width');
  return lengthMm === undefined || widthMm === undefined ? undefined : { lengthMm, widthMm };
}

/** A length in mm that a joint face can have. */
export function readLength(reader: Reader, field: FieldKey): number | undefined {
  const mm = readMm(reader, field);
  if (mm === undefined || mm <= LONGEST_MM) return mm;
  return fault(reader, field, `\`${reader.inputs[field]}\` is more than ${LONGEST_MM / 1000} m`, 'check the unit');
}

/** Degrees; a number alone is degrees. */
export function readDegrees(reader: Reader, field: FieldKey): number | undefined {
  const read = readQuantity(reader, field, 'angle', { bare: '°', any: true });
  if (read === undefined) return undefined;
  const deg = valueIn(read, '°');
  return Math.abs(deg) <= 360
    ? deg
    : fault(reader, field, `\`${reader.inputs[field]}\` is more than one turn`, 'give degrees from -360 to 360');
}

/** One hole a line: two numbers in mm, parted by a space, a comma with a space, or a semicolon. */
function readPoints(reader: Reader): Pattern | undefined {
  const lines = reader.inputs.points.split('\n').filter((line) => line.trim() !== '');
  if (lines.length < 2 || lines.length > MOST_BOLTS) {
    return fault(
      reader,
      'points',
      `${lines.length} places are listed`,
      `give one place a line, 2 to ${MOST_BOLTS} of them`,
    );
  }
  const points: { xMm: number; yMm: number }[] = [];
  for (const [i, line] of lines.entries()) {
    const parts = line.trim().split(/(?:,\s+|[\s;]+)/u);
    const [x, y] = parts.map((t) =>
      /^[+\-−]?\d*[.,]?\d+$/u.test(t) ? Number(t.replace(',', '.').replace('−', '-')) : Number.NaN,
    );
    if (
      x === undefined ||
      y === undefined ||
      parts.length !== 2 ||
      !(Math.abs(x) <= LONGEST_MM && Math.abs(y) <= LONGEST_MM)
    ) {
      return fault(
        reader,
        'points',
        `line ${i + 1}, \`${line.trim().slice(0, 40)}\`, is not a place`,
        'write across and up in mm, such as `-60 40`',
      );
    }
    points.push({ xMm: x, yMm: y });
  }
  return { kind: 'points', points };
}
