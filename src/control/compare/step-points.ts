/** Points of a matched step: hold, witness, lifting, heating, stored energy, close-out; and its times. */

import type { Step } from '../../resolve/types.ts';
import { formatQuantity } from '../../units/index.ts';
import { paired } from './pairing.ts';
import { evenBlanks, quantityArrow, textChange, valueChange } from './phrases.ts';
import type { PartResult, StepPair, Told } from './types.ts';

export function comparePoints({ older, newer }: StepPair): PartResult {
  const told = [
    ...textChange('step', 'hold point', older.hold ?? '', newer.hold ?? ''),
    ...textChange('step', 'witness point', older.witness ?? '', newer.witness ?? ''),
    ...compareEnergy('release', older.release, newer.release),
    ...compareEnergy('proof of absence', older.prove, newer.prove),
    ...compareWords('close-out point', older.closeOut, newer.closeOut),
    ...compareLift(older.lift, newer.lift),
    ...compareHeat(older.heat, newer.heat),
  ];
  return { told, marks: told.length > 0 ? ['points'] : [], swaps: [] };
}

/** `release of stored energy added: water pressure` */
function compareEnergy(
  act: 'release' | 'proof of absence',
  older: readonly string[],
  newer: readonly string[],
): readonly Told[] {
  const { added, removed } = paired(older, newer, evenBlanks);
  const name = `${act} of stored energy`;
  return [
    ...added.flatMap((e) => valueChange('energy', name, '', e)),
    ...removed.flatMap((e) => valueChange('energy', name, e, '')),
  ];
}

function compareWords(name: string, older: readonly string[], newer: readonly string[]): readonly Told[] {
  const { added, removed } = paired(older, newer, evenBlanks);
  return [
    ...added.flatMap((w) => valueChange('step', name, '', w)),
    ...removed.flatMap((w) => valueChange('step', name, w, '')),
  ];
}

function compareLift(before: Step['lift'], after: Step['lift']): readonly Told[] {
  const words = (l: Step['lift']): string => (l === undefined ? '' : `${formatQuantity(l.mass)} by ${l.by}`);
  return valueChange('step', 'lift', words(before), words(after));
}

function compareHeat(before: Step['heat'], after: Step['heat']): readonly Told[] {
  if (before === undefined || after === undefined) {
    const words = (h: Step['heat']): string =>
      h === undefined ? '' : `to ${formatQuantity(h.to)}, never above ${formatQuantity(h.most)}`;
    return valueChange('limit', 'heating', words(before), words(after));
  }
  const { to, most } = { to: [before.to, after.to] as const, most: [before.most, after.most] as const };
  return [
    ...valueChange('limit', 'heat to', formatQuantity(to[0]), formatQuantity(to[1]), quantityArrow(...to)),
    ...valueChange(
      'limit',
      'never heat above',
      formatQuantity(most[0]),
      formatQuantity(most[1]),
      quantityArrow(...most),
    ),
  ];
}

/** Waiting time with its reason, and working time. */
export function compareTimes({ older, newer }: StepPair): PartResult {
  const told = [
    ...compareTime('waiting time', older.wait?.time, newer.wait?.time),
    ...(older.wait === undefined || newer.wait === undefined
      ? []
      : textChange('time', 'reason to wait', older.wait.why, newer.wait.why)),
    ...compareTime('working time', older.time, newer.time),
  ];
  return { told, marks: told.length > 0 ? ['wait'] : [], swaps: [] };
}

export function compareTime(name: string, before: Step['time'], after: Step['time']): readonly Told[] {
  const arrow = before === undefined || after === undefined ? undefined : quantityArrow(before, after);
  const text = (t: Step['time']): string => (t === undefined ? '' : formatQuantity(t));
  return valueChange('time', name, text(before), text(after), arrow);
}
