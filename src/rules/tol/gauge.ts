/** What a tool can read: of which dimension, how far, how finely. */

import type { ResolvedShop, Tool } from '../../resolve/index.ts';
import { type Dimension, findUnit, type Limit, MEASURED, parseQuantity, type Quantity } from '../../units/index.ts';

/** Limits and graduations are decimal fractions; their quotients are exact to this. */
const EXACT = 1e-6;

export interface Graduation {
  readonly dimension: Dimension;
  /** One graduation as a difference, in the SI unit: a step of 1 °C is 1 K, not 274.15 K. */
  readonly size: number;
  readonly text: string;
}

const graduations = new WeakMap<Tool, Graduation | null>();

/** undefined where the register states none. */
export function graduationOf(tool: Tool): Graduation | undefined {
  const known = graduations.get(tool);
  if (known !== undefined) return known ?? undefined;
  const parsed = tool.step && parseQuantity(tool.step.text.replace(/\u00a0/g, ' '), MEASURED);
  const made =
    tool.step === undefined || parsed?.ok !== true
      ? undefined
      : { dimension: parsed.value.dimension, size: difference(parsed.value), text: tool.step.text };
  graduations.set(tool, made ?? null);
  return made;
}

function difference({ value, unit, dimension }: Quantity): number {
  return value * (findUnit(unit, dimension)?.factor ?? 1);
}

/** The dimension that the tool reads, as its range or its graduation says. */
export function readsDimension(tool: Tool): Dimension | undefined {
  return (tool.range?.max ?? tool.range?.min)?.dimension ?? graduationOf(tool)?.dimension;
}

export function dimensionOf(limit: Limit): Dimension | undefined {
  return (limit.max ?? limit.min)?.dimension;
}

/** Kinds that are there to measure; a tool of another kind measures when it has a range, such as a gauge jack. */
export function canMeasure(tool: Tool): boolean {
  return tool.kind === 'measuring tool' || tool.kind === 'torque wrench' || tool.range !== undefined;
}

/**
 * The end of `limit` that the tool cannot reach; undefined when it reaches all, or states no range of that dimension.
 * A limit from zero is judged at its upper end only: feelers begin above zero, and what is thinner than the thinnest
 * blade is within the limit all the same.
 */
export function endOutOfRange(limit: Limit, tool: Tool): Quantity | undefined {
  const { range } = tool;
  if (range === undefined || readsDimension(tool) !== dimensionOf(limit)) return undefined;
  const ends = [isFromZero(limit) ? undefined : limit.min, limit.max];
  return ends.find((q) => q !== undefined && !within(q.si, range));
}

function within(si: number, { min, max }: Limit): boolean {
  const slack = EXACT * Math.max(Math.abs(si), Number.MIN_VALUE);
  return (min === undefined || si >= min.si - slack) && (max === undefined || si <= max.si + slack);
}

/** `at most 0.05 mm`, `0 to 0.05 mm`. */
export function isFromZero(limit: Limit): boolean {
  return limit.max !== undefined && (limit.min === undefined || limit.min.value === 0);
}

export interface Resolution {
  /** How many graduations lie within the limit. */
  readonly marks: number;
  /** What has to be told apart, in the SI unit, as a difference. */
  readonly width: number;
}

/**
 * Graduations within the limit: over its width, or from zero to its one end. What `at most 0.05 mm` allows is all that
 * lies between zero and the end; of `at least 1.5 mm` the end is taken in the same way, because a reading that errs by a
 * good part of the limit decides nothing.
 * undefined where the count says nothing: no graduation, another dimension, out of range (faults of their own); a single
 * end at zero, which is the pin of the gauge; a single temperature, whose zero is nowhere; and a feeler or another gauge
 * that begins above zero, tried at the end of a limit from zero: its blade of that thickness goes in or does not, and is
 * not read.
 */
export function resolutionOf(limit: Limit, tool: Tool): Resolution | undefined {
  const graduation = graduationOf(tool);
  if (graduation === undefined || graduation.size <= 0 || graduation.dimension !== dimensionOf(limit)) return undefined;
  if (endOutOfRange(limit, tool) !== undefined || isTriedOnBlade(limit, tool, graduation)) return undefined;
  const width = widthOf(limit);
  return width === undefined ? undefined : { marks: width / graduation.size, width };
}

function widthOf({ min, max }: Limit): number | undefined {
  const width =
    min !== undefined && max !== undefined
      ? max.si - min.si
      : (max ?? min)?.dimension === 'temperature'
        ? 0
        : ((max ?? min)?.si ?? 0);
  return width > 0 ? width : undefined;
}

function isTriedOnBlade(limit: Limit, { range, kind }: Tool, { size, dimension }: Graduation): boolean {
  if (kind === 'torque wrench' || dimension === 'temperature' || range?.min === undefined || limit.max === undefined)
    return false;
  if (range.min.si <= 0 || !isFromZero(limit)) return false;
  const blades = limit.max.si / size;
  return Math.abs(blades - Math.round(blades)) <= EXACT * Math.max(1, blades);
}

/** Whether at least `wanted` graduations lie within the limit. */
export function isFineEnough({ marks }: Resolution, wanted: number): boolean {
  return marks >= wanted * (1 - EXACT);
}

/**
 * Measuring tools of the register that reach all of `limit` in its own unit, with `wanted` graduations or more within it or
 * as a blade of its thickness; the coarsest first.
 */
export function gaugesFor(shop: ResolvedShop, limit: Limit, wanted: number): readonly Tool[] {
  const unit = (limit.max ?? limit.min)?.unit;
  return shop.tools
    .flatMap((tool) => {
      const graduation = graduationOf(tool);
      if (!canMeasure(tool) || tool.kind === 'torque wrench' || graduation === undefined) return [];
      // A limit in inches is not read with a metric gauge.
      if ((tool.range?.max ?? tool.range?.min)?.unit !== unit || endOutOfRange(limit, tool) !== undefined) return [];
      const resolution = resolutionOf(limit, tool);
      const fits =
        resolution === undefined ? isTriedOnBlade(limit, tool, graduation) : isFineEnough(resolution, wanted);
      return fits ? [{ tool, size: graduation.size }] : [];
    })
    .sort((a, b) => b.size - a.size || (a.tool.id < b.tool.id ? -1 : 1))
    .map(({ tool }) => tool);
}
