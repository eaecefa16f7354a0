/** What can be wrong with a cell of a stated table, one finder a fault, in words for the one who typed it. */

import { formatDecimal, formatQuantity, quantity, valueIn } from '../units/index.ts';
import { within } from './band.ts';
import { digitSlip } from './digits.ts';
import { factorSlip } from './slips.ts';
import { nameOf, type PlacedCell, printedIn } from './stated-cell.ts';
import { apart, inStep, type Keeping, strayed } from './stated-keeping.ts';
import { type Column, copiedFrom, neighbourSlip } from './stated-neighbours.ts';
import { halfDigitNm, unitPairAgrees } from './unit-pair.ts';

export interface CellFault {
  readonly verdict: 'units differ' | 'unit slip' | 'digit slip' | 'stands out' | 'does not rise' | 'outside the band';
  readonly problem: string;
  readonly hint?: string;
}

/** Do the two printed units of a cell say the same? */
export function unitsFault(cell: PlacedCell, { expected }: Keeping): CellFault | undefined {
  const { stated, second, statedNm } = cell;
  if (second === undefined) return undefined;
  const secondNm = valueIn(second, 'N·m');
  if (unitPairAgrees(statedNm, secondNm, halfDigitNm(stated), halfDigitNm(second))) return undefined;
  const aim = expected * cell.computed.nominal;
  const nearer = apart(statedNm, aim) <= apart(secondNm, aim) ? stated : second;
  return {
    verdict: 'units differ',
    problem: `${nameOf(cell)}: ${formatQuantity(stated)} and ${formatQuantity(second)} are not the same torque`,
    hint: `${formatQuantity(nearer)} is the one in line with ${printedIn(cell, aim)}, which the rest of the table asks for`,
  };
}

/**
 * The likeliest slip behind a cell that strays: exchanged or shifted cells, a decimal point, a unit, a copied neighbour, a
 * digit; else the cell just stands out. Nothing for a cell that keeps its ratio, or that keeps another one together with
 * its neighbours.
 */
export function slipFault(
  cell: PlacedCell,
  cells: readonly PlacedCell[],
  column: Column,
  keeping: Keeping,
): CellFault | undefined {
  if (!strayed(cell, keeping)) return undefined;
  const { expected, fit } = keeping;
  const aim = expected * cell.computed.nominal;
  const alone = !Number.isFinite(keeping.spread);
  const problem =
    `${nameOf(cell)}: ${formatQuantity(cell.stated)} stands out;` +
    ` ${alone ? 'computed is' : 'in line with the others is'} ${printedIn(cell, aim)}`;
  const beside = neighbourSlip(cell, cells, column, expected);
  if (beside !== undefined) return { verdict: 'stands out', problem, hint: beside };
  const digits = digitSlip(cell.stated, valueIn(quantity('torque', aim, 'N·m'), cell.stated.unit));
  const pen = digits === undefined ? '' : `${digits.likely}: ${digits.text} ${cell.stated.unit}?`;
  const factor = factorSlip(cell.ratio / expected, fit + cell.rounding);
  if (factor !== undefined) {
    return { verdict: factor.verdict, problem, hint: `${factor.likely}?${pen === '' ? '' : ` or ${pen}`}` };
  }
  if (inStep(cell, column, keeping)) return undefined;
  const copied = copiedFrom(cell, column);
  if (copied !== undefined) return { verdict: 'stands out', problem, hint: `copied from ${nameOf(copied)}?` };
  if (digits !== undefined) return { verdict: 'digit slip', problem, hint: pen };
  return alone ? undefined : { verdict: 'stands out', problem };
}

/**
 * Cells of a column (sorted by diameter, none of them faulty yet) that do not rise though the computed torque does: of
 * each falling pair the one that is further from the ratio of the table.
 */
export function riseFaults(column: Column, { expected }: Keeping): ReadonlyMap<PlacedCell, CellFault> {
  const faults = new Map<PlacedCell, CellFault>();
  for (const [i, cell] of column.entries()) {
    const before = column[i - 1];
    if (before === undefined || cell.statedNm >= before.statedNm) continue;
    if (cell.thread.diameterMm <= before.thread.diameterMm || cell.computed.nominal <= before.computed.nominal)
      continue;
    const odd = apart(cell.ratio, expected) >= apart(before.ratio, expected) ? cell : before;
    faults.set(odd, {
      verdict: 'does not rise',
      problem:
        `${nameOf(odd)}: ${formatQuantity(cell.stated)} for \`${cell.thread.designation}\` is less than` +
        ` ${formatQuantity(before.stated)} for \`${before.thread.designation}\``,
    });
  }
  return faults;
}

/** Does the torque lie in the band of friction for the asked preload? */
export function bandFault(cell: PlacedCell, keeping: Keeping): CellFault | undefined {
  return within(cell.computed, cell.statedNm) ? undefined : outside(cell, keeping);
}

function outside(cell: PlacedCell, { median }: Keeping): CellFault {
  const { low, nominal, high } = cell.computed;
  const problem =
    `${nameOf(cell)}: ${formatQuantity(cell.stated)} lies outside` +
    ` ${printedIn(cell, low)} to ${printedIn(cell, high)}, computed for the heading of the table`;
  const wholeTable = !within({ low: low / nominal, nominal: 1, high: high / nominal }, median);
  if (!wholeTable) return { verdict: 'outside the band', problem };
  const slip = factorSlip(median, 0.03);
  const likely = slip === undefined ? 'is the heading right: grade, condition, share of preload?' : `${slip.likely}?`;
  return {
    verdict: 'outside the band',
    problem,
    hint: `the whole table is near ${formatDecimal(median, 2)} times the computed torque: ${likely}`,
  };
}
