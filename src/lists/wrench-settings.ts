/** What a torque wrench is set to over several cards. */

import type { Document, JointPlan, Step, Tool } from '../resolve/types.ts';
import { convert, formatNumber, formatQuantity, neededDecimals, type Quantity, type Torque } from '../units/index.ts';

export interface WrenchSettings {
  /** Lowest and highest setting, in the unit of the scale. */
  readonly low: Torque;
  readonly high: Torque;
  /** `20 to 86 N·m`, `22 N·m`. */
  readonly text: string;
}

interface Using {
  readonly document: Pick<Document, 'doc'>;
  readonly variant: {
    readonly joints: readonly Pick<JointPlan, 'id' | 'wrench' | 'rounds'>[];
    readonly stages: readonly { readonly steps: readonly Pick<Step, 'tighten' | 'measures'>[] }[];
  };
}

/**
 * Over every round of every joint that the wrench tightens, and over torques that are measured with it. Undefined when no
 * card says what it is set to.
 */
export function wrenchSettings(
  { id, range }: Pick<Tool, 'id' | 'range'>,
  cards: readonly Using[],
): WrenchSettings | undefined {
  const found = cards.flatMap((c) => settingsOn(id, c.variant));
  const scale = (range?.max ?? range?.min)?.unit ?? found[0]?.unit;
  const [first] = found;
  if (first === undefined || scale === undefined) return undefined;
  const low = found.reduce((least, q) => (q.si < least.si ? q : least), first);
  const high = found.reduce((most, q) => (q.si > most.si ? q : most), first);
  const [from, to] = [inUnit(low, scale), inUnit(high, scale)];
  const isOne = formatNumber(from) === formatNumber(to);
  return { low: from, high: to, text: isOne ? formatQuantity(to) : `${formatNumber(from)} to ${formatQuantity(to)}` };
}

function settingsOn(wrench: string, { joints, stages }: Using['variant']): readonly Torque[] {
  return stages
    .flatMap((s) => s.steps)
    .flatMap((step): readonly Torque[] => [
      ...joints
        .filter((j) => j.id === step.tighten && j.wrench === wrench)
        .flatMap((j) => j.rounds.map((r) => r.setting)),
      ...step.measures
        .filter((m) => m.tool === wrench)
        .flatMap((m) => [m.limit.min, m.limit.max].filter((q) => q !== undefined).filter(isTorque)),
    ]);
}

function isTorque(q: Quantity): q is Torque {
  return q.dimension === 'torque';
}

/** As written when the unit is the scale's own; else with the digits that it needs, at most one after the point. */
function inUnit(q: Torque, unit: string): Torque {
  if (q.unit === unit) return q;
  const turned = convert(q, unit, 1);
  return { ...turned, decimals: neededDecimals(turned.value, 1) };
}
