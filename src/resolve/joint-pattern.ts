/** Where the bolts of a joint stand, and the dowels, jacking screws and clocking mark beside them. */

import { parseThread } from '../fasteners/index.ts';
import { type Feature, jackingFault, jackingPlan, type Pattern, parseTurn, placeOn } from '../geometry/index.ts';
import { type At, field, items, optional } from '../model/index.ts';
import { valueIn } from '../units/index.ts';
import type { Context } from './context.ts';
import type { JointContent } from './joint-content.ts';
import { defined, plainText, readQuantity } from './quantities.ts';
import type { JointJacking } from './types.ts';

type PatternContent = JointContent['pattern'];
type Branch<K extends string> = Extract<PatternContent, Record<K, unknown>>;

/** The pattern with every length read; undefined when one could not be (each is reported at its place). */
export function readPattern(context: Context, at: At<PatternContent>): Pattern | undefined {
  const { value } = at;
  const numbering = 'numbering' in value ? defined({ numbering: value.numbering }) : {};
  if ('circle' in value) {
    const circle = readCircle(context, at as At<Branch<'circle'>>);
    return circle && { kind: 'circle', ...circle, ...numbering };
  }
  if ('arc' in value) {
    const arc = at as At<Branch<'arc'>>;
    const diameterMm = readMm(context, field(arc, 'arc'));
    const firstDeg = readFirst(context, optional(arc, 'first'));
    const spanDeg = readDeg(context, field(arc, 'span'));
    if (diameterMm === undefined || firstDeg === undefined || spanDeg === undefined) return undefined;
    return { kind: 'arc', diameterMm, count: arc.value.count, firstDeg, spanDeg, ...numbering };
  }
  if ('circles' in value) {
    const circles = items(field(at as At<Branch<'circles'>>, 'circles')).map((c) => readCircle(context, c));
    const read = circles.filter((c) => c !== undefined);
    return read.length === circles.length ? { kind: 'circles', circles: read, ...numbering } : undefined;
  }
  if ('rectangle' in value) {
    const sides = readSides(context, field(at as At<Branch<'rectangle'>>, 'rectangle'));
    return sides && { kind: 'rectangle', ...sides, along: value.along, across: value.across, ...numbering };
  }
  if ('slot' in value) {
    const sides = readSides(context, field(at as At<Branch<'slot'>>, 'slot'));
    return sides && { kind: 'slot', ...sides, count: value.count, straddle: value.straddle ?? false, ...numbering };
  }
  const points = items(field(at as At<Branch<'points'>>, 'points')).map((p) => readPlace(context, p));
  const read = points.filter((p) => p !== undefined);
  return read.length === points.length ? { kind: 'points', points: read } : undefined;
}

interface CircleContent {
  readonly circle: string;
  readonly count: number;
  readonly first?: string | undefined;
}

function readCircle(context: Context, at: At<CircleContent>) {
  const diameterMm = readMm(context, field(at, 'circle'));
  const firstDeg = readFirst(context, optional(at, 'first'));
  if (diameterMm === undefined || firstDeg === undefined) return undefined;
  return { diameterMm, count: at.value.count, firstDeg };
}

function readSides(context: Context, at: At<readonly [string, string]>) {
  const [lengthMm, widthMm] = items(at).map((q) => readMm(context, q));
  return lengthMm === undefined || widthMm === undefined ? undefined : { lengthMm, widthMm };
}

function readPlace(context: Context, at: At<readonly string[]>) {
  const [xMm, yMm] = items(at).map((q) => readMm(context, q, false));
  return xMm === undefined || yMm === undefined ? undefined : { xMm, yMm };
}

/** A length in mm. */
export function readMm(context: Context, at: At<string> | undefined, positive = true): number | undefined {
  const read = readQuantity(context.report, at, 'length', { positive });
  return read === undefined ? undefined : read.si * 1000;
}

/** Degrees; zero and negative angles are angles too. */
export function readDeg(context: Context, at: At<string> | undefined): number | undefined {
  const read = readQuantity(context.report, at, 'angle', { positive: false });
  return read === undefined ? undefined : valueIn(read, '°');
}

/** An angle that may be left out and is then zero; undefined when it is written and cannot be read. */
function readFirst(context: Context, at: At<string> | undefined): number | undefined {
  return at === undefined ? 0 : readDeg(context, at);
}

/** Dowels, jacking screws and clocking mark with the index of their entry: for faults at the author's place. */
export interface PlacedFeature extends Feature {
  readonly at: At<unknown>;
}

/** Everything on the joint face that is not a bolt; what cannot be read is reported and left out. */
export function readFeatures(context: Context, joint: At<JointContent>): readonly PlacedFeature[] {
  const dowels = optional(joint, 'dowels');
  const found = (dowels === undefined ? [] : items(dowels)).flatMap((d): PlacedFeature[] => {
    const place = 'circle' in d.value ? readOnCircle(context, d as At<OnCircle>) : readAt(context, d as At<AtPoint>);
    const diameterMm = readMm(context, field(d, 'diameter'));
    return place === undefined || diameterMm === undefined ? [] : [{ kind: 'dowel', ...place, diameterMm, at: d }];
  });
  const clocking = optional(joint, 'clocking');
  const mark = clocking === undefined ? undefined : readOnCircle(context, clocking);
  if (clocking !== undefined && mark !== undefined) {
    found.push({ kind: 'clocking mark', ...mark, label: plainText(clocking.value.mark) ?? '', at: clocking });
  }
  const jacking = optional(joint, 'jacking');
  if (jacking === undefined) return found;
  const circleMm = readMm(context, field(jacking, 'circle'));
  const first = readFirst(context, optional(jacking, 'first'));
  const thread = parseThread(jacking.value.thread);
  if (circleMm === undefined || first === undefined || !thread.ok) return found;
  const { count } = jacking.value;
  const screws = Array.from({ length: count }, (_, i): PlacedFeature => {
    const place = placeOn(circleMm, first + (360 * i) / count);
    return {
      kind: 'jacking screw',
      ...place,
      diameterMm: thread.value.diameterMm,
      size: thread.value.designation,
      label: `J${i + 1}`,
      at: jacking,
    };
  });
  return [...found, ...screws];
}

interface OnCircle {
  readonly circle: string;
  readonly at: string;
}

interface AtPoint {
  readonly at: readonly [string, string];
}

function readOnCircle(context: Context, at: At<OnCircle>) {
  const diameterMm = readMm(context, field(at, 'circle'));
  const deg = readDeg(context, field(at, 'at'));
  return diameterMm === undefined || deg === undefined ? undefined : placeOn(diameterMm, deg);
}

function readAt(context: Context, at: At<AtPoint>) {
  return readPlace(context, field(at, 'at'));
}

/** How the jacking screws are drawn in; undefined where there are none or one of their values cannot be read. */
export function readJacking(context: Context, joint: At<JointContent>): JointJacking | undefined {
  const jacking = optional(joint, 'jacking');
  if (jacking === undefined) return undefined;
  const { count, turn: written } = jacking.value;
  const thread = parseThread(jacking.value.thread);
  if (!thread.ok) {
    context.report('FLD009', field(jacking, 'thread').node.range, thread.problem, { hint: thread.hint });
  }
  const turn = parseTurn(written);
  if (!turn.ok) context.report('FLD004', field(jacking, 'turn').node.range, turn.problem, { hint: turn.hint });
  const circle = readQuantity(() => undefined, field(jacking, 'circle'), 'length');
  if (!thread.ok || !turn.ok || circle === undefined) return undefined;
  const input = { count, turn: turn.value, pitchMm: thread.value.pitchMm, circleDiameterMm: circle.si * 1000 };
  const fault = jackingFault(input);
  if (fault === undefined) return { thread: thread.value, turn: written, plan: jackingPlan(input) };
  context.report('FLD004', jacking.node.range, fault.problem, { hint: fault.hint });
  return undefined;
}
