/** Lubricants on one joint that do not go together, each fault under one name only. */

import type { Consumable } from '../../resolve/index.ts';
import type { Fault } from '../check.ts';
import { lookUp, onceACard, type Scene } from '../rule.ts';
import { type Applied, type JointLubrication, lubricationOf } from './lubrication.ts';

export interface LubricantFault {
  /** Locker with oil or grease; two conditions over the steps; one that is not the joint's. */
  readonly kind: 'locker with oil' | 'two conditions' | 'other condition';
  readonly at: JointLubrication;
  readonly applied: Applied;
  /** With what it does not go together. */
  readonly against?: { readonly range: Fault['range']; readonly consumable: Consumable };
}

export const lubricantFaults = onceACard((scene): readonly LubricantFault[] =>
  lubricationOf(scene).flatMap((at) => [...faultsOf(at, scene)]),
);

const LOCKER = 'threadlocker';
const RUINS_LOCKER: ReadonlySet<string> = new Set(['lubricant', 'anti-seize']);

function* faultsOf(at: JointLubrication, { shop }: Scene): Generator<LubricantFault> {
  const { plan } = at.life;
  const own = plan.lubricant === undefined ? undefined : lookUp(shop).consumable(plan.lubricant);
  const stated = own === undefined ? [] : [{ range: plan.ranges['lubricant'] ?? plan.range, consumable: own }];
  const applied = [...at.applied, ...at.late];
  const everything = [...applied, ...stated];
  const lockers = everything.filter((a) => a.consumable.kind === LOCKER);
  const oils = everything.filter((a) => RUINS_LOCKER.has(a.consumable.kind));
  const [locker] = lockers;
  const [oil] = oils;
  if (locker !== undefined && oil !== undefined) {
    // What the joint is reckoned for is right; the other one is the slip.
    const meantLocked = plan.condition.id === 'threadlocked';
    const wrong = applied.filter((a) =>
      meantLocked ? RUINS_LOCKER.has(a.consumable.kind) : a.consumable.kind === LOCKER,
    );
    const against = meantLocked ? locker : oil;
    for (const a of wrong) yield { kind: 'locker with oil', at, applied: a, against };
    if (wrong.length > 0) return;
  }
  const other = applied.filter(
    ({ consumable }) =>
      consumable.condition !== undefined &&
      consumable.condition !== plan.condition.id &&
      // Where the joint itself names it, joint and lubricant are compared there.
      consumable.id !== plan.lubricant,
  );
  for (const a of other) {
    const differs = applied.find(
      (b) => b.consumable.condition !== undefined && b.consumable.condition !== a.consumable.condition,
    );
    yield differs === undefined
      ? { kind: 'other condition', at, applied: a }
      : { kind: 'two conditions', at, applied: a, against: differs };
  }
}
