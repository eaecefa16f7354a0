/** Numbers and their units in running text. */

import { type Dimension, findUnit } from '../../units/index.ts';
import type { Word } from './reading.ts';

/** Words that stand for a unit and are in no table of symbols. */
const UNIT_WORDS =
  /^(?:degrees?|turns?|revolutions?|revs?|rpm|inch(?:es)?|feet|foot|ft|thou|mils?|microns?|micrometres?|millimetres?|millimeters?|metres?|meters?|litres?|liters?|millilitres?|cc|gallons?|pints?|quarts?|seconds?|secs?|minutes?|mins?|hours?|hrs?|days?|weeks?|months?|years?|per|percent|pc|bars?|kpa|mpa|psi|psig|hpa|mbar|inhg|mmhg|torr|tons?|tonnes?|kilos?|grams?|pounds?|lbs?|ounces?|oz|newtons?|nm|amps?|volts?|v|mv|kv|a|ma|ohms?|kohms?|mohms?|megohms?|watts?|w|kw|hp|hz|khz|db|knots?|cst|c|f|k|g|kg|t|l|m|s|h|d|x|times|threads?|flats?|quarters?|half|halves|thirds?|eighths?|parts?|ppm|ph|diameters?|pitches|strokes?|drops?)$/;

const NUMBER = /^(\d[\d.,/]*)(?:\s+(\d+\/\d+))?\s*(.*)$/u;

/** `0.3 mm` as number and unit; the unit may be the next word. undefined where the word is no number. */
export function numberAt(words: readonly Word[], i: number): { digits: string; unit: string } | undefined {
  const word = words[i];
  if (word?.kind !== 'number') return undefined;
  const [, digits = '', , unit = ''] = NUMBER.exec(word.text) ?? [];
  if (unit !== '') return { digits, unit };
  const next = words[i + 1];
  const spelled = next?.kind === 'word' && (UNIT_WORDS.test(next.lower) || findUnit(next.text) !== undefined);
  // An `a` is the ampere only at the end: `at 3 a bolt` is none.
  const article = next?.lower === 'a' && words[i + 2] !== undefined && words[i + 2]?.kind !== 'mark';
  return { digits, unit: spelled && !article ? next.text : '' };
}

/** Dimension of a unit as it stands in text, as far as the tables know it. */
export function dimensionOf(unit: string): Dimension | undefined {
  return (findUnit(unit) ?? findUnit(unit.replace(/(?:e?s)$/, '')))?.dimension;
}
