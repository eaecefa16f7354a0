/** Every number that a joint's torque rests on, with where it comes from. */

import { HEADS } from '../../fasteners/index.ts';
import type { JointPlan } from '../../resolve/types.ts';
import { figures, givenFigures, type SymbolName, symbolName } from '../../torque/formula/index.ts';
import type { Band } from '../../torque/index.ts';
import { formatQuantity } from '../../units/index.ts';
import { sentence, sourceText } from '../card/source-text.ts';

export const INPUT_GROUPS = ['fastener', 'strength', 'friction', 'torque', 'wrench'] as const;
export type InputGroup = (typeof INPUT_GROUPS)[number];

export interface JointInput {
  readonly group: InputGroup;
  /** The letter under which the working uses it. */
  readonly symbol?: SymbolName;
  readonly name: string;
  /** Number and unit joined by a no-break space. */
  readonly value: string;
  /** Document, edition, table, or who stated it. */
  readonly origin: string;
}

const SHOP = 'stated by the shop';
const MPA_PER_KSI = 6.894757293168361;

/** Inputs of a joint in the order in which its working needs them. Words are the same on page and paper. */
export function jointInputs(plan: JointPlan): readonly JointInput[] {
  return [
    ...fastenerInputs(plan),
    ...strengthInputs(plan),
    ...frictionInputs(plan),
    ...torqueInputs(plan),
    ...wrenchInputs(plan),
  ];
}

function row(group: InputGroup, name: string, value: string, origin: string, symbol?: string): JointInput {
  return symbol === undefined
    ? { group, name, value, origin }
    : { group, name, value, origin, symbol: symbolName(symbol) };
}

function fastenerInputs(plan: JointPlan): JointInput[] {
  const { thread, drive, bearing, head, turned } = plan;
  const metric = thread.system === 'metric';
  const standard = metric ? 'ISO 261 and ISO 724' : 'ASME B1.1';
  const headName = HEADS.find((h) => h.id === head)?.name ?? head;
  const face = /^face: (.*); hole: (.*)$/u.exec(bearing.source);
  return [
    row('fastener', 'thread', metric ? `${thread.designation}, metric ${thread.series}` : thread.designation, standard),
    row('fastener', 'nominal diameter', mm(thread.diameterMm), standard, 'd'),
    thread.tpi === undefined
      ? row('fastener', 'pitch', mm(thread.pitchMm), standard, 'P')
      : row('fastener', 'threads an inch', String(thread.tpi), standard, 'n'),
    row('fastener', 'head', head === 'stud' ? headName : `${headName}, ${turned} turned`, SHOP),
    row(
      'fastener',
      drive.kind === 'key' ? 'key' : 'width across flats',
      formatQuantity(drive.size),
      drive.source.includes(drive.standard) ? drive.source : `${drive.standard}; ${drive.source}`,
    ),
    row('fastener', 'bearing face, outside', `${figures(bearing.faceMm)}\u00a0mm`, face?.[1] ?? bearing.source, 'd_w'),
    row('fastener', 'hole under it', `${figures(bearing.holeMm)}\u00a0mm`, face?.[2] ?? bearing.source, 'd_h'),
  ];
}

function strengthInputs(plan: JointPlan): JointInput[] {
  const { grade, strength, nut, preloadShare, result, ranges } = plan;
  const stress = (value: number): string =>
    plan.thread.system === 'metric' ? mpa(value) : `${mpa(value)} (${figures(value / MPA_PER_KSI)}\u00a0ksi)`;
  const kind = strength.yieldKind;
  const rows = [
    row(
      'strength',
      'property class or grade',
      grade.id,
      strength.caution === undefined ? grade.standard : strength.caution,
    ),
    strength.proofMPa === undefined
      ? row('strength', 'proof stress', 'none', 'the specification gives no proof stress: preload rests on yield')
      : row('strength', 'proof stress', stress(strength.proofMPa), strength.source, 'S_p'),
    row('strength', `yield stress (${kind})`, stress(strength.yieldMPa), strength.source, 'R_e'),
  ];
  if (nut !== undefined) {
    const reason = nut.reason === undefined ? '' : `; ${nut.reason}`;
    rows.push(
      row(
        'strength',
        'nut',
        `${nut.grade.id}, proof stress ${mpa(nut.strength.proofMPa)}`,
        `${nut.strength.source}${reason}`,
      ),
    );
  }
  rows.push(
    row(
      'strength',
      `share of the ${result.preloadBasis} load`,
      givenFigures(preloadShare),
      ranges['preload'] === undefined ? 'usual, textbook practice (memory)' : SHOP,
      's',
    ),
  );
  return rows;
}

function frictionInputs(plan: JointPlan): JointInput[] {
  const { condition, lubricantName, where, result } = plan;
  const on = where === undefined ? '' : ` on ${where}`;
  const [name, origin] =
    lubricantName === undefined
      ? [condition.name, SHOP]
      : [`${lubricantName}${on}`, `${SHOP}; reckoned as ${condition.name}`];
  const K = result.nutFactorFrom === 'long form' ? 'worked out from the friction by the long form' : condition.source;
  const mu =
    result.frictionFrom === 'condition' && result.nutFactorFrom === 'condition'
      ? 'as the nut factor'
      : condition.source;
  const rows = [
    row('friction', 'condition', name, origin),
    row('friction', 'nut factor', range(result.nutFactor), K, 'K'),
  ];
  if (sameBand(result.friction.thread, result.friction.bearing)) {
    rows.push(row('friction', 'friction, thread and face', range(result.friction.thread), mu, 'µ_G, K'));
  } else {
    rows.push(
      row('friction', 'friction in the thread', range(result.friction.thread), mu, 'µ_G'),
      row('friction', 'friction under the face', range(result.friction.bearing), mu, 'µ_K'),
    );
  }
  return rows;
}

function torqueInputs(plan: JointPlan): JointInput[] {
  const { target, targetSecond, origin, source, reason } = plan;
  const from =
    origin === 'computed'
      ? 'computed by the short form, set down to a mark of the wrench'
      : source === undefined
        ? 'stated'
        : sourceText(source);
  const rows = [
    row('torque', `${origin} torque`, `${formatQuantity(target)} (${formatQuantity(targetSecond)})`, from, 'T'),
  ];
  if (reason !== undefined) rows.push(row('torque', 'reason', sentence(reason), SHOP));
  return rows;
}

function wrenchInputs(plan: JointPlan): JointInput[] {
  const { wrenchName, result, runDown, adapter } = plan;
  const rows = [
    row('wrench', 'torque wrench', wrenchName, 'tool register of the shop'),
    row(
      'wrench',
      'deviation of the wrench',
      `±\u00a0${givenFigures(100 * result.wrenchDeviation)}\u00a0%`,
      'ISO 6789',
      'e',
    ),
  ];
  if (runDown !== undefined) {
    rows.push(
      row('wrench', 'run-down torque', formatQuantity(runDown), `${SHOP}; added as of FAA AC 43.13-1B`, 'T_run'),
    );
  }
  if (adapter !== undefined) {
    rows.push(
      row('wrench', 'wrench lever, square to grip', formatQuantity(adapter.lever), 'tool register of the shop', 'L'),
      row('wrench', 'adapter, square to bolt', formatQuantity(adapter.length), SHOP, 'E'),
      row(
        'wrench',
        'adapter, angle to the handle',
        `${givenFigures(adapter.angleDeg)}°`,
        `${SHOP}; 0° is straight on`,
        'φ',
      ),
    );
  }
  return rows;
}

function mm(value: number): string {
  return `${givenFigures(value)}\u00a0mm`;
}

function mpa(value: number): string {
  return `${figures(value)}\u00a0MPa`;
}

/** `0.16 (0.13 to 0.20)`, hundredths at least. */
function range(band: Band): string {
  const text = (value: number): string => (Number.isInteger(value * 100) ? value.toFixed(2) : givenFigures(value));
  return sameBand(band, { low: band.nominal, nominal: band.nominal, high: band.nominal })
    ? text(band.nominal)
    : `${text(band.nominal)} (${text(band.low)} to ${text(band.high)})`;
}

function sameBand(a: Band, b: Band): boolean {
  return a.low === b.low && a.nominal === b.nominal && a.high === b.high;
}
