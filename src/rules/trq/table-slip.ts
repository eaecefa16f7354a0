/** Slips in single cells of a torque table typed from a manual. */

import { formatDecimal } from '../../units/index.ts';
import type { Check } from '../check.ts';
import { isFarOff } from './table-far-off.ts';

export const tableSlip: Check = {
  code: 'TRQ015',
  name: 'table-slip',
  severity: 'error',
  title: 'A cell of a torque table typed from a manual looks like a slip of digit or unit.',
  why: 'A table on the wall is copied more often than any card; one wrong cell spreads over the shop.',
  sources: [
    'common practice: a maker keeps one friction throughout a table',
    'NIST SP 811, Appendix B: factors between units',
  ],
  example: {
    bad: [
      {
        file: 'tables/pump-screws.yaml',
        to: 'id: pump-screws\ntitle: Screws of the pump\nsource: { document: Pump manual, edition: "3", place: page 14 }\ncondition: oiled\npreload: 70 %\nrows:\n  M8: { "8.8": 19 N·m }\n  M10: { "8.8": 38 N·m }\n  M12: { "8.8": «6.6 N·m» }\n  M16: { "8.8": 163 N·m }\n  M20: { "8.8": 330 N·m }\n',
      },
    ],
    good: [
      {
        file: 'tables/pump-screws.yaml',
        to: 'id: pump-screws\ntitle: Screws of the pump\nsource: { document: Pump manual, edition: "3", place: page 14 }\ncondition: oiled\npreload: 70 %\nrows:\n  M8: { "8.8": 19 N·m }\n  M10: { "8.8": 38 N·m }\n  M12: { "8.8": 66 N·m }\n  M16: { "8.8": 163 N·m }\n  M20: { "8.8": 330 N·m }\n',
      },
    ],
  },
  found: (shop, tell) => {
    for (const table of shop.statedTables) {
      if (isFarOff(table)) {
        const times = formatDecimal(table.comparison.medianRatio, 2);
        const hint = table.comparison.cells.find((c) => c.verdict === 'outside the band')?.hint;
        tell(table.range, `table \`${table.id}\`: its torques are about ${times} times those computed`, {
          hint:
            hint ??
            'check unit, condition and share of preload of the heading; if the manual wants it so, say why in `reason`',
        });
      }
      table.comparison.cells.forEach((cell, i) => {
        if (cell.verdict === 'holds' || cell.verdict === 'outside the band') return;
        // A maker's table may have a step of its own; a slip that has a name is never meant.
        if (cell.verdict === 'stands out' && table.reason !== undefined) return;
        tell(table.ranges[i] ?? table.range, `table \`${table.id}\`: ${cell.problem ?? ''}`, {
          hint: `compare with the manual, digit by digit${cell.hint === undefined ? '' : `: ${cell.hint}`}`,
        });
      });
    }
  },
};
