/** Assembly preload and torque against the VDI 2230 tables: 90 % of Rp0.2 in combined stress. */

import { describe, expect, test } from 'vitest';
import { bearingOf, strengthOf } from '../../src/fasteners/index.ts';
import { longFormTorque, vdiAssemblyPreload } from '../../src/torque/index.ts';
import { grade, halfDigit, readData, thread, value } from './read-data.ts';

/** share: agreement to expect; `digits`: units of the last printed digit allowed where that is more. */
const TABLES = [
  { file: 'vdi-2230-coarse', force: 0.01, torque: 0.011, digits: 1 },
  { file: 'vdi-2230-fine', force: 0.004, torque: 0.012, digits: 1 },
  { file: 'vdi-2230-stainless', force: 0.025, torque: 0.025, digits: 1 },
] as const;

for (const table of TABLES) {
  describe(table.file, () => {
    for (const row of readData(table.file)) {
      test(`${row.text('thread')} ${row.text('class')} at ${row.text('mu')} (${row.text('source')})`, () => {
        const t = thread(row.text('thread'));
        const stainless = table.file === 'vdi-2230-stainless';
        const name = stainless ? `A2-${row.text('class')}` : row.text('class');
        const strength = value(strengthOf(grade(name), t));
        if (stainless) expect(strength.yieldMPa).toBe(row.number('Rp02_MPa'));
        const mu = row.number('mu');
        const F = vdiAssemblyPreload(t, strength.yieldMPa, mu);
        const T = longFormTorque(
          { thread: t, frictionThread: mu, frictionBearing: mu, bearing: bearingOf('hexagon', t) },
          F,
        );
        if (row.has('FM_kN')) near(F / 1000, row.text('FM_kN'), table.force, table.digits);
        near(T, row.text('MA_Nm'), table.torque, table.digits);
      });
    }
  });
}

function near(computed: number, printed: string, share: number, digits: number): void {
  const slack = Math.max(share * Number(printed), 2 * digits * halfDigit(printed));
  expect(Math.abs(computed - Number(printed)), `${computed} against ${printed}`).toBeLessThanOrEqual(slack);
}
