/** Torque tables typed from manuals: slips in single cells, and cells outside the computed band. */

import type { StatedTable } from '../../resolve/index.ts';
import { formatDecimal } from '../../units/index.ts';
import type { Rule } from '../rule.ts';

/** A whole table beyond this ratio to the computed torques, or below its inverse, is no matter of friction. Practice. */
const FAR = 2;

function isFarOff({ reason, comparison: { medianRatio } }: StatedTable): boolean {
  return reason === undefined && (medianRatio > FAR || medianRatio < 1 / FAR);
}

export const tableSlip: Rule = {
  code: 'TRQ015',
  why: 'A table on the wall is copied more often than any card; one wrong cell spreads over the shop.',
  check: (shop, report) => {
    for (const table of shop.statedTables) {
      if (isFarOff(table)) {
        const times = formatDecimal(table.comparison.medianRatio, 2);
        const hint = table.comparison.cells.find((c) => c.verdict === 'outside the band')?.hint;
        report('TRQ015', table.range, `table \`${table.id}\`: its torques are about ${times} times those computed`, {
          hint:
            hint ??
            'check unit, condition and share of preload of the heading; if the manual wants it so, say why in `reason`',
        });
      }
      table.comparison.cells.forEach((cell, i) => {
        if (cell.verdict === 'holds' || cell.verdict === 'outside the band') return;
        // A maker's table may have a step of its own; a slip that has a name is never meant.
        if (cell.verdict === 'stands out' && table.reason !== undefined) return;
        report('TRQ015', table.ranges[i] ?? table.range, `table \`${table.id}\`: ${cell.problem ?? ''}`, {
          hint: cell.hint ?? 'compare with the manual, digit by digit',
        });
      });
    }
  },
};

/** With more cells than this outside, the heading of the table is the one fault. */
const HALF = 0.5;

export const tableOutsideBand: Rule = {
  code: 'TRQ016',
  why: 'The manual perhaps means another lubricant or class than the heading that was typed over the table.',
  check: (shop, report) => {
    for (const table of shop.statedTables) {
      if (table.reason !== undefined || isFarOff(table)) continue;
      const { cells } = table.comparison;
      const outside = cells.flatMap((cell, i) => (cell.verdict === 'outside the band' ? [{ cell, i }] : []));
      const [first] = outside;
      if (first === undefined) continue;
      if (outside.length > HALF * cells.length) {
        const message = `table \`${table.id}\`: ${outside.length} of ${cells.length} cells lie outside the computed band, the first is ${first.cell.problem ?? ''}`;
        report('TRQ016', table.range, message, {
          hint: first.cell.hint ?? 'say in `reason` why the manual wants it so',
        });
        continue;
      }
      for (const { cell, i } of outside) {
        report('TRQ016', table.ranges[i] ?? table.range, `table \`${table.id}\`: ${cell.problem ?? ''}`, {
          hint: cell.hint ?? 'say in `reason` of the table why the manual wants it so',
        });
      }
    }
  },
};
