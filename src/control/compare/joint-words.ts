/** What a joint says, a short text for each thing that may change in it. */

import type { Feature, Pattern } from '../../geometry/index.ts';
import { jackingText, looseningText } from '../../resolve/joint-words.ts';
import type { JointPlan } from '../../resolve/types.ts';
import { formatDecimal, formatQuantity } from '../../units/index.ts';
import { sourceWords } from './phrases.ts';

const NBSP = '\u00a0';

/** `12 on a circle of 510 mm, the first at 11.25°` */
export function patternWords(p: Pattern): string {
  const hand = p.kind !== 'points' && p.numbering === 'anticlockwise' ? ', counted anticlockwise' : '';
  return shapeWords(p) + hand;
}

function shapeWords(p: Pattern): string {
  switch (p.kind) {
    case 'circle':
      return ringWords(p);
    case 'arc':
      return `${p.count} on an arc of ${degrees(p.spanDeg)} of a circle of ${mm(p.diameterMm)}, the first at ${degrees(p.firstDeg)}`;
    case 'circles':
      return p.circles.map(ringWords).join('; ');
    case 'rectangle':
      return `${p.along} by ${p.across} on a rectangle of ${mm(p.lengthMm)} by ${mm(p.widthMm)}`;
    case 'slot':
      return `${p.count} on a slotted line of ${mm(p.lengthMm)} by ${mm(p.widthMm)}${p.straddle ? ', none at the top' : ', the first at the top'}`;
    case 'points':
      return `${p.points.length} at ${p.points.map((q) => place(q)).join('; ')}`;
  }
}

function ringWords(ring: { readonly count: number; readonly diameterMm: number; readonly firstDeg: number }): string {
  return `${ring.count} on a circle of ${mm(ring.diameterMm)}, the first at ${degrees(ring.firstDeg)}`;
}

function mm(value: number): string {
  return `${trimmed(value, 3)}${NBSP}mm`;
}

function degrees(value: number): string {
  return `${trimmed(value, 3)}°`;
}

function place({ xMm, yMm }: { readonly xMm: number; readonly yMm: number }): string {
  return `${trimmed(xMm, 2)}, ${trimmed(yMm, 2)}${NBSP}mm`;
}

/** Without the noughts that say nothing; engines may differ in the last digits of a computed place. */
function trimmed(value: number, decimals: number): string {
  const text = formatDecimal(value, decimals);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** `dowel 10 mm at 0, 100 mm` for each dowel and mark; jacking screws have their own line. */
export function featureWords(features: readonly Feature[]): string {
  return features
    .filter((f) => f.kind !== 'jacking screw')
    .map((f) => {
      const size = f.diameterMm === undefined ? '' : ` ${mm(f.diameterMm)}`;
      const label = f.label === undefined || f.label === '' ? '' : ` (${f.label})`;
      return `${f.kind}${size}${label} at ${place(f)}`;
    })
    .join('; ');
}

/** Places of the jacking screws and how they are drawn in; empty where there are none. */
export function jackingWords(j: JointPlan): string {
  if (j.jacking === undefined) return '';
  const places = j.features.filter((f) => f.kind === 'jacking screw').map((f) => `${f.label ?? ''} at ${place(f)}`);
  return `${places.join('; ')}. ${jackingText(j)}`;
}

/** `cross, one tool`; the order itself where both issues have the same method. */
export function methodWords({ sequence }: JointPlan): string {
  const tools = sequence.tools === 1 ? 'one tool' : `${sequence.tools} tools`;
  return `${sequence.method}, ${tools}`;
}

/** `1, 5, 3, 7`; holes pulled at the same moment joined: `1+5, 3+7`. */
export function orderWords({ sequence }: JointPlan): string {
  return sequence.moves.map((move) => move.join('+')).join(', ');
}

/** `30, 70 and 100 %, then once from neighbour to neighbour` */
export function roundsWords({ rounds }: JointPlan): string {
  const shares = rounds.filter((r) => r.pass === 'sequence').map((r) => trimmed(r.share * 100, 1));
  return inRounds(`${shares.join(', ')}${NBSP}%`, rounds);
}

/** `48, 112 and 160 N·m, then once from neighbour to neighbour` */
export function settingsWords({ rounds, setting }: JointPlan): string {
  const settings = rounds
    .filter((r) => r.pass === 'sequence')
    .map((r) => formatDecimal(r.setting.value, r.setting.decimals));
  return inRounds(`${settings.join(', ')}${NBSP}${setting.unit}`, rounds);
}

function inRounds(values: string, rounds: JointPlan['rounds']): string {
  const passes = rounds.filter((r) => r.pass === 'circular').length;
  const often = passes === 1 ? 'once' : `${passes} times`;
  return passes === 0 ? values : `${values}, then ${often} from neighbour to neighbour`;
}

/** Whether each round has the same share, or the same setting, and none came or went. */
export function sameRounds(a: JointPlan, b: JointPlan): boolean {
  return (
    a.rounds.length === b.rounds.length &&
    a.rounds.every((r, i) => {
      const other = b.rounds[i];
      if (other === undefined || other.pass !== r.pass) return false;
      return Math.abs(other.share - r.share) < 5e-4 || formatQuantity(other.setting) === formatQuantity(r.setting);
    })
  );
}

export function adapterWords({ adapter }: JointPlan): string {
  if (adapter === undefined) return '';
  return `${formatQuantity(adapter.length)} at ${degrees(adapter.angleDeg)} on a lever of ${formatQuantity(adapter.lever)}`;
}

/** Where the torque comes from. */
export function originWords(j: JointPlan): string {
  return j.origin === 'computed' ? 'computed by the shop' : sourceWords(j.source);
}

/** `0.13 to 0.20, mostly 0.16`: K of the condition, or of the lubricant's own maker. */
export function nutFactorWords({ condition }: JointPlan): string {
  const { low, nominal, high } = condition.nutFactor;
  return `${trimmed(low, 3)} to ${trimmed(high, 3)}, mostly ${trimmed(nominal, 3)}`;
}

export function clampWords({ clamp }: JointPlan): string {
  return clamp === undefined ? '' : `${formatQuantity(clamp.force)} (${sourceWords(clamp.source)})`;
}

export function bearingWords({ bearingLimit }: JointPlan): string {
  return bearingLimit === undefined
    ? ''
    : `${formatQuantity(bearingLimit.pressure)} (${sourceWords(bearingLimit.source)})`;
}

export function gasketLoadWords({ gasketLoad }: JointPlan): string {
  if (gasketLoad === undefined) return '';
  const { area, seating, most, source } = gasketLoad;
  return [
    `area ${formatQuantity(area)}`,
    ...(seating === undefined ? [] : [`seating ${formatQuantity(seating)}`]),
    ...(most === undefined ? [] : [`at most ${formatQuantity(most)}`]),
    sourceWords(source),
  ].join(', ');
}

/** How it comes apart, jacking apart. */
export function loosenWords(j: JointPlan): string {
  return looseningText(j);
}
