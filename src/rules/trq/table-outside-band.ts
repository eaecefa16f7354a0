/** Cells of a torque table typed from a manual that lie outside the computed band. */

import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { isFarOff } from './table-far-off.ts';

/** With more cells than this outside, the heading of the table is the one fault. */
const HALF = 0.5;

export const tableOutsideBand: Check = {
  code: 'TRQ016',
  name: 'table-outside-band',
  severity: 'warning',
  title: 'A cell of a torque table typed from a manual lies outside the computed band.',
  why: 'The manual perhaps means another lubricant or class than the heading that was typed over the table.',
  sources: ['nut factor of the condition, lowest to highest: textbook and trade ranges, named beside each table'],
  example: {
    bad: [
      {
        file: 'tables/pump-screws.yaml',
        to: 'id: «pump-screws»\ntitle: Screws of the pump\nsource: { document: Pump manual, edition: "3", place: page 14 }\ncondition: wax\npreload: 70 %\nrows:\n  M8: { "8.8": 19 N·m }\n  M10: { "8.8": 38 N·m }\n  M12: { "8.8": 66 N·m }\n  M16: { "8.8": 163 N·m }\n  M20: { "8.8": 330 N·m }\n',
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
      if (table.reason !== undefined || isFarOff(table)) continue;
      const { cells } = table.comparison;
      const outside = cells.flatMap((cell, i) => (cell.verdict === 'outside the band' ? [{ cell, i }] : []));
      const [first] = outside;
      if (first === undefined) continue;
      if (outside.length > HALF * cells.length) {
        const message = `table \`${table.id}\`: ${outside.length} of ${cells.length} cells lie outside the computed band, the first is ${first.cell.problem ?? ''}`;
        tell(table.range, message, {
          related: [{ range: placeOf(table, 'condition'), message: 'condition of the table' }],
          hint: first.cell.hint ?? 'compare the heading with the manual; if it stands there so, say why in `reason`',
        });
        continue;
      }
      for (const { cell, i } of outside) {
        tell(table.ranges[i] ?? table.range, `table \`${table.id}\`: ${cell.problem ?? ''}`, {
          hint:
            cell.hint ??
            'compare heading and cell with the manual; if it stands there so, say why in `reason` of the table',
        });
      }
    }
  },
};
