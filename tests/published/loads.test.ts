/** Stress area times strength against the printed proof and tensile loads of ISO 898-1, SAE J429 and ASTM A574. */

import { describe, expect, test } from 'vitest';
import { strengthOf } from '../../src/fasteners/index.ts';
import { grade, readData, thread, value } from './read-data.ts';

const NEWTON_PER_LBF = 4.4482216152605;

const TABLES = [
  {
    file: 'iso-898-loads',
    grade: 'class',
    proof: 'proof_load_N',
    tensile: 'min_tensile_load_N',
    newton: 1,
    tensileShare: 0.009,
  },
  {
    file: 'inch-loads',
    grade: 'grade',
    proof: 'proof_load_lbf',
    tensile: 'min_tensile_load_lbf',
    newton: NEWTON_PER_LBF,
    tensileShare: 0.007,
  },
] as const;

for (const table of TABLES) {
  describe(table.file, () => {
    for (const row of readData(table.file)) {
      const standard = table.file === 'inch-loads' ? row.text('standard') : 'ISO 898-1';
      const name = `${standard} ${row.text(table.grade)}`;
      test(`${row.text('thread')} ${name} (${row.text('source')})`, () => {
        const t = thread(row.text('thread'));
        const s = value(strengthOf(grade(name), t));
        if (row.has(table.proof)) {
          const load = ((s.proofMPa ?? 0) * t.stressAreaMm2) / table.newton;
          expect(Math.abs(load / row.number(table.proof) - 1)).toBeLessThanOrEqual(0.007);
        }
        if (row.has(table.tensile)) {
          const load = (s.tensileMPa * t.stressAreaMm2) / table.newton;
          expect(Math.abs(load / row.number(table.tensile) - 1)).toBeLessThanOrEqual(table.tensileShare);
        }
      });
    }
  });
}
