/** A cell of a torque table typed from a manual, beside what is computed for it. */

import type { Grade, Strength, Thread } from '../fasteners/index.ts';
import { formatQuantity, quantity, type Torque, valueIn } from '../units/index.ts';
import { type Band, mapBand, positive } from './band.ts';
import { shortFormTorque } from './formulas.ts';
import { roundingShare, toPrint } from './printed.ts';

export interface StatedCell {
  readonly thread: Thread;
  readonly grade: Grade;
  readonly strength: Strength;
  readonly stated: Torque;
  /** The same torque in a second unit, where the manual prints one. */
  readonly second?: Torque;
}

/** A cell in its place: columns are of one grade and one thread series, rows of one thread. Torques in N·m. */
export interface PlacedCell extends StatedCell {
  readonly column: string;
  readonly statedNm: number;
  /** T = K d F, K low to high. */
  readonly computed: Band;
  /** Stated over nominal. */
  readonly ratio: number;
  /** Share by which printing may have changed the number. */
  readonly rounding: number;
}

/** Throws RangeError on a torque or share that is not above zero. Source of the formula: Shigley ch. 8. */
export function placeCell(cell: StatedCell, nutFactor: Band, preloadShare: number): PlacedCell {
  const { thread, strength, stated } = cell;
  const statedNm = positive('stated torque', valueIn(stated, 'N·m'));
  if (cell.second !== undefined) positive('second stated torque', valueIn(cell.second, 'N·m'));
  const stressMPa = positive('proof or yield stress', strength.proofMPa ?? strength.yieldMPa);
  const F = positive('preload share', preloadShare) * stressMPa * thread.stressAreaMm2;
  const computed = mapBand(nutFactor, (K) => shortFormTorque(K, thread.diameterMm, F));
  return {
    ...cell,
    column: `${cell.grade.id} ${thread.series}`,
    statedNm,
    computed,
    ratio: statedNm / computed.nominal,
    rounding: roundingShare(stated),
  };
}

/** `M10` of `8.8`. */
export function nameOf(cell: StatedCell): string {
  return `\`${cell.thread.designation}\` of \`${cell.grade.id}\``;
}

/** A torque in N·m, printed in the unit of a cell. */
export function printedIn(cell: StatedCell, Nm: number): string {
  return formatQuantity(toPrint(valueIn(quantity('torque', Nm, 'N·m'), cell.stated.unit), cell.stated.unit, 'nearest'));
}
