/** The fields of the worksheet: the names that stand in the address, what they start with, and how they are shown. */

import { HEADS } from '../../../fasteners/index.ts';
import { CONDITIONS } from '../../../torque/index.ts';

export interface Option {
  readonly id: string;
  readonly name: string;
}

export interface Field {
  readonly label: string;
  /** What the field holds when the address says nothing of it; such a value is left out of the address. */
  readonly initial: string;
  /** Shown under the label. */
  readonly help?: string;
  /** `count`: whole number. `decimal`: a number whose unit may be left out. `text`: anything with its unit. */
  readonly kind: 'text' | 'count' | 'decimal' | 'choice' | 'lines';
  /** Choices only. */
  readonly options?: readonly Option[];
  /** Suggestions to pick from. */
  readonly list?: 'threads' | 'grades' | 'nuts';
  /** As wide as the form: its texts are long. */
  readonly isWide?: true;
  /** Patterns for which the field is asked; absent for all. */
  readonly patterns?: readonly string[];
}

export const PATTERNS: readonly Option[] = [
  { id: 'circle', name: 'circle' },
  { id: 'arc', name: 'arc' },
  { id: 'circles', name: 'concentric circles' },
  { id: 'rectangle', name: 'rectangle' },
  { id: 'slot', name: 'slot' },
  { id: 'points', name: 'listed points' },
];

const NUMBERING: readonly Option[] = [
  { id: 'clockwise', name: 'clockwise' },
  { id: 'anticlockwise', name: 'anticlockwise' },
];

const METHODS: readonly Option[] = [
  { id: 'usual', name: 'usual for the pattern' },
  { id: 'cross', name: 'cross' },
  { id: 'spiral', name: 'from the centre outwards' },
  { id: 'quadrants', name: 'quadrant by quadrant' },
  { id: 'in turn', name: 'in turn, neighbour to neighbour' },
];

const TOOLS: readonly Option[] = [
  { id: '1', name: '1' },
  { id: '2', name: '2, opposite' },
  { id: '4', name: '4, crosswise' },
];

const FACES: readonly Option[] = [
  { id: 'metal to metal', name: 'metal to metal' },
  { id: 'sheet gasket', name: 'sheet gasket' },
  { id: 'rubber gasket', name: 'rubber gasket' },
];

const TURNED: readonly Option[] = [
  { id: 'head', name: 'the head' },
  { id: 'nut', name: 'the nut' },
];

const NO_YES: readonly Option[] = [
  { id: 'no', name: 'no' },
  { id: 'yes', name: 'yes' },
];

const ROUND = ['circle', 'arc', 'circles'];
const COUNTED = [...ROUND, 'slot'];
const SIDED = ['rectangle', 'slot'];

/** In the order in which they stand in the form and in the address. The start is a plain joint, so that all is filled. */
export const FIELDS = {
  name: { label: 'Name of the joint', initial: '', kind: 'text', help: 'printed on the sheet; may stay empty' },
  thread: { label: 'Thread', initial: 'M16', kind: 'text', list: 'threads', help: 'M16, M16x1.5, 5/8-11 UNC' },
  grade: { label: 'Property class or grade', initial: '8.8', kind: 'text', list: 'grades', help: '8.8, A2-70, SAE 5' },
  head: { label: 'Head', initial: 'hexagon', kind: 'choice', options: HEADS, isWide: true },
  turned: { label: 'The wrench turns', initial: 'head', kind: 'choice', options: TURNED },
  nut: { label: 'Nut', initial: '', kind: 'text', list: 'nuts', help: 'class or grade; empty: not checked' },
  heavy: { label: 'Heavy hexagon nut', initial: 'no', kind: 'choice', options: NO_YES },
  pattern: { label: 'Pattern', initial: 'circle', kind: 'choice', options: PATTERNS },
  n: { label: 'Number of bolts', initial: '8', kind: 'count', patterns: COUNTED },
  circle: { label: 'Bolt circle', initial: '180 mm', kind: 'text', patterns: ROUND, help: 'diameter' },
  first: {
    label: 'Angle of hole 1, °',
    initial: '0',
    kind: 'decimal',
    patterns: ROUND,
    help: 'clockwise from TOP',
  },
  span: { label: 'Span, °', initial: '120', kind: 'decimal', patterns: ['arc'], help: 'first hole to last' },
  n2: { label: 'Bolts on circle 2', initial: '8', kind: 'count', patterns: ['circles'] },
  circle2: { label: 'Circle 2', initial: '120 mm', kind: 'text', patterns: ['circles'], help: 'diameter' },
  first2: { label: 'First hole of circle 2, °', initial: '0', kind: 'decimal', patterns: ['circles'] },
  n3: { label: 'Bolts on circle 3', initial: '', kind: 'count', patterns: ['circles'], help: 'empty: no third circle' },
  circle3: { label: 'Circle 3', initial: '', kind: 'text', patterns: ['circles'], help: 'diameter' },
  first3: { label: 'First hole of circle 3, °', initial: '0', kind: 'decimal', patterns: ['circles'] },
  length: {
    label: 'Length',
    initial: '300 mm',
    kind: 'text',
    patterns: SIDED,
    help: 'across the view, centre to centre',
  },
  width: { label: 'Width', initial: '200 mm', kind: 'text', patterns: SIDED, help: 'up the view, centre to centre' },
  along: {
    label: 'Bolts on a long side',
    initial: '4',
    kind: 'count',
    patterns: ['rectangle'],
    help: 'corners counted',
  },
  across: {
    label: 'Bolts on a short side',
    initial: '3',
    kind: 'count',
    patterns: ['rectangle'],
    help: 'corners counted',
  },
  straddle: {
    label: 'Bolts straddle the top',
    initial: 'no',
    kind: 'choice',
    patterns: ['slot'],
    options: NO_YES,
    help: 'no: hole 1 stands at the top middle',
  },
  points: {
    label: 'Places of the holes',
    initial: '-60 40\n60 40\n60 -40\n-60 -40',
    kind: 'lines',
    isWide: true,
    patterns: ['points'],
    help: 'one a line: across and up from the centre, mm',
  },
  numbering: {
    label: 'Holes are numbered',
    initial: 'clockwise',
    kind: 'choice',
    options: NUMBERING,
    patterns: [...COUNTED, 'rectangle'],
  },
  wall: { label: 'Nearest wall', initial: '', kind: 'text', help: 'from a bolt centre, in mm; empty: not checked' },
  socket: { label: 'Socket, outside diameter', initial: '', kind: 'text', help: 'measured; empty: estimated' },
  flange: { label: 'Standard flange', initial: '', kind: 'text', help: 'to compare: EN 1092-1 DN 100 PN 16' },
  condition: { label: 'Thread and face are', initial: 'oiled', kind: 'choice', options: CONDITIONS, isWide: true },
  k: { label: 'Nut factor K of the lubricant', initial: '', kind: 'text', help: 'low, nominal, high: 0.11 0.13 0.16' },
  preload: { label: 'Preload aimed at, %', initial: '70', kind: 'decimal', help: 'share of proof load' },
  torque: { label: 'Torque stated', initial: '', kind: 'text', help: 'with its unit; empty: computed' },
  'run-down': { label: 'Run-down torque', initial: '', kind: 'text', help: 'of a locking nut, with its unit' },
  rounds: { label: 'Rounds, %', initial: '30, 70, 100', kind: 'text', help: 'or torques with their unit' },
  passes: { label: 'Then all round', initial: '1', kind: 'count', help: 'passes at full torque' },
  method: { label: 'Order', initial: 'usual', kind: 'choice', options: METHODS },
  tools: { label: 'Wrenches at once', initial: '1', kind: 'choice', options: TOOLS },
  face: {
    label: 'Between the faces',
    initial: 'sheet gasket',
    kind: 'choice',
    options: FACES,
    help: 'for the picture of the rounds only',
  },
  wrench: { label: 'Range of the wrench', initial: '', kind: 'text', help: '40 to 200\u00a0N·m; empty: not checked' },
  step: { label: 'Graduation', initial: '', kind: 'text', help: 'of its scale: 1\u00a0N·m' },
  lever: { label: 'Lever', initial: '', kind: 'text', help: 'drive square to middle of the grip' },
  adapter: { label: 'Adapter', initial: '', kind: 'text', help: 'drive square to bolt; empty: none' },
  angle: {
    label: 'Angle of the adapter, °',
    initial: '0',
    kind: 'decimal',
    help: '0 straight on, 90 square, 180 back',
  },
} as const satisfies Readonly<Record<string, Field>>;

/** Name of a field, as it stands in the address. */
export type FieldKey = keyof typeof FIELDS;

/** Every field as typed. */
export type Inputs = Readonly<Record<FieldKey, string>>;

/** The fields in order, each with its name. */
export const FIELD_LIST: readonly (Field & { readonly key: FieldKey })[] = Object.entries(FIELDS).flatMap(
  ([key, field]) => (isFieldKey(key) ? [{ key, ...field }] : []),
);

/** Is this a name that the worksheet knows? */
export function isFieldKey(key: string): key is FieldKey {
  return Object.hasOwn(FIELDS, key);
}

/** What a fresh worksheet holds. */
export const INITIAL: Inputs = inputsFrom((key) => FIELDS[key].initial);

/** A record of all fields, each value asked for by name. */
export function inputsFrom(value: (key: FieldKey) => string): Inputs {
  // `FIELD_LIST` has every key; the compiler cannot see that.
  return Object.fromEntries(FIELD_LIST.map(({ key }) => [key, value(key)])) as Inputs;
}

/** Is the field asked for with this pattern? */
export function isAsked(key: FieldKey, pattern: string): boolean {
  const field: Field = FIELDS[key];
  return field.patterns === undefined || field.patterns.includes(pattern);
}
