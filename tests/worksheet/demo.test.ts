/** Every joint of the demo, opened in the worksheet by its address, gives the numbers of the build. */

import { describe, expect, test } from 'vitest';
import type { JointPlan } from '../../src/resolve/index.ts';
import { decodeInputs } from '../../src/site/client/worksheet/address.ts';
import { computeWorksheet } from '../../src/site/client/worksheet/compute.ts';
import { worksheetQuery } from '../../src/site/client/worksheet/query-of-joint.ts';
import type { Torque } from '../../src/units/index.ts';
import { demoShop } from '../site/demo.ts';

const shop = demoShop();
const plans = shop.machines.flatMap((m) =>
  m.joints.map((j) => [`${m.id}/${j.plan.id} ${j.variants}`, j.plan] as const),
);

/** Relative: addresses carry twelve figures. */
function near(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b));
}

function printed({ value, unit, decimals }: Torque): string {
  return `${value.toFixed(decimals)} ${unit}`;
}

describe('the worksheet and the build agree', () => {
  test('on a demo of many joints', () => {
    expect(plans.length).toBeGreaterThan(20);
    expect(new Set(plans.map(([, p]) => p.pattern.kind)).size).toBeGreaterThan(2);
  });

  test.each(plans)('for %s', (_name, plan: JointPlan) => {
    const { inputs, faults } = decodeInputs(worksheetQuery(plan, shop.tools));
    expect(faults).toEqual([]);
    const computed = computeWorksheet(inputs);
    expect(computed.faults).toEqual([]);
    const { layout, read, fastener } = computed;
    const { tightening } = read;
    if (layout === undefined || tightening === undefined) throw new Error('the worksheet computed nothing');
    const { result } = tightening;

    expect(fastener.thread).toEqual(plan.thread);
    expect(fastener.strength).toEqual(plan.strength);
    expect(fastener.drive).toEqual(plan.drive);
    expect(fastener.bearing).toEqual(plan.bearing);
    expect(printed(tightening.target)).toBe(printed(plan.target));
    expect(printed(tightening.setting)).toBe(printed(plan.setting));
    expect(tightening.origin).toBe(plan.origin);
    expect(tightening.rounds.map((r) => [printed(r.torque), printed(r.setting), printed(r.second), r.pass])).toEqual(
      plan.rounds.map((r) => [printed(r.torque), printed(r.setting), printed(r.second), r.pass]),
    );
    for (const end of ['low', 'nominal', 'high'] as const) {
      expect(near(result.preloadN[end], plan.result.preloadN[end]), `preload, ${end}`).toBe(true);
      expect(near(result.shortForm[end], plan.result.shortForm[end]), `short form, ${end}`).toBe(true);
      expect(near(result.longForm[end], plan.result.longForm[end]), `long form, ${end}`).toBe(true);
    }
    expect(layout.sequence).toEqual(plan.sequence);
    expect(layout.holes).toHaveLength(plan.count);
    expect(
      layout.holes.every((h, i) => near(h.xMm, plan.holes[i]?.xMm ?? 0) && near(h.yMm, plan.holes[i]?.yMm ?? 0)),
    ).toBe(true);
    expect(near(layout.chordMm, plan.chordMm)).toBe(true);
    // The build lets through only what holds, or what carries a reason there.
    const excused = [
      ...(plan.reason === undefined ? [] : ['Stated torque in the computed band']),
      ...(plan.nut?.reason === undefined ? [] : ['Nut carries the load of the bolt']),
    ];
    const failed = computed.checks.filter((c) => c.verdict === 'does not hold').map((c) => c.name);
    expect(failed.filter((name) => !excused.includes(name))).toEqual([]);
  });
});
