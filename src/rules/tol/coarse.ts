/** Graduation of a gauge against the limit that it judges: shared by the error and the warning. */

import { placeOf } from '../../resolve/index.ts';
import { type Dimension, formatDecimal, formatQuantity, type Quantity, quantity } from '../../units/index.ts';
import type { Fault } from '../check.ts';
import { gaugesFor, graduationOf, isFineEnough, type Resolution, resolutionOf } from './gauge.ts';
import type { Judged } from './measured.ts';

export const WANTED = 10;
export const LEAST = 4;

export const COARSE_SOURCES: readonly string[] = [
  'AIAG, measurement systems analysis: the rule of tens, a gauge divides the tolerance into ten parts or more (read in summary)',
  'GB/T 3177: a tenth, a sixth or a quarter of the tolerance, by the class of the work (read in summary)',
  'MIL-STD-45662A: four to one at least, between a tolerance and what judges it (memory)',
];

/** What is wrong with the gauge when `least` graduations or more, and fewer than `wanted`, lie within the limit. */
export function coarseFault(judged: Judged, least: number, wanted: number): Fault | undefined {
  const { measure, tool, place } = judged;
  const resolution = resolutionOf(measure.limit, tool);
  const step = graduationOf(tool)?.text;
  if (resolution === undefined || step === undefined) return undefined;
  // A torque wrench is set and not read: one mark within the limit will do.
  const set = tool.kind === 'torque wrench';
  if (set ? least > 0 || isFineEnough(resolution, 1) : isFineEnough(resolution, wanted)) return undefined;
  if (!isFineEnough(resolution, least)) return undefined;
  const related = [
    { range: place('limit'), message: `the limit, ${measure.limitText}` },
    { range: placeOf(tool, 'step'), message: 'graduation in the register' },
  ];
  if (set)
    return {
      range: place('with'),
      message: `\`${tool.id}\` is marked in steps of ${step}, and the limit of \`${measure.what}\`, ${measure.limitText}, is narrower: it may hold no mark at all`,
      hint: 'name a torque wrench with a finer `step`, or give the limit as the maker gives it',
      related,
    };
  return {
    range: place('with'),
    message: `\`${tool.id}\` reads in steps of ${step}, and of these ${count(resolution)} within the limit of \`${measure.what}\`, ${measure.limitText}; ${wanted} are ${wanted === WANTED ? 'good practice' : 'the least'}`,
    hint: better(judged, resolution),
    related,
  };
}

/** `5 lie`, `2.5 lie`, `less than one lies`. */
function count(resolution: Resolution): string {
  if (!isFineEnough(resolution, 1)) return 'less than one lies';
  const { marks } = resolution;
  const text = formatDecimal(marks, Math.abs(marks - Math.round(marks)) < 0.05 ? 0 : 1);
  return text === '1' ? '1 lies' : `${text} lie`;
}

function better({ measure, shop }: Judged, { width }: Resolution): string {
  const found = gaugesFor(shop, measure.limit, WANTED).slice(0, 3);
  if (found.length > 0)
    return `write one that reads finely enough and reaches the place; the register has ${found.map((t) => `\`${t.id}\``).join(', ')}`;
  const end = measure.limit.max ?? measure.limit.min;
  const finest = end === undefined ? '' : ` of ${formatQuantity(tenth(width, end))} or finer`;
  return `no gauge of the register reads it finely enough: add one with a \`step\`${finest}, or correct the \`step\` of this one where its scale is finer`;
}

/** A tenth of `width` (SI, a difference) in the unit of the limit. */
function tenth<D extends Dimension>(width: number, { dimension, unit }: Quantity<D>): Quantity<D> {
  const one = quantity(dimension, 1, unit).si - quantity(dimension, 0, unit).si;
  return quantity(dimension, Number((width / WANTED / one).toPrecision(3)), unit);
}
