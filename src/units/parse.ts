/** Reads quantities and limits as the trade writes them. Never throws: an author's slip comes back as words. */

import { neededDecimals } from './convert.ts';
import type { Dimension, Limit, Parsed, Quantity } from './quantity.ts';
import { findUnit, UNITS, unitSymbols } from './unit-table.ts';

/**
 * Mixed fraction, fraction, decimal with point or comma, whole number: the longest form that fits, and never a part of a
 * longer number (`12` of `12.5` would leave `.5 mm` as the unit).
 */
const NUMBER = String.raw`[+\-−]?(?:\d+[ -]\d+\/\d+|\d+\/\d+|\d*[.,]\d+|\d+)(?![\d.,/])`;
const PLAIN = new RegExp(String.raw`^(${NUMBER})(?!\s*\d)\s*(.*)$`, 'u');
/** `1,250`: twelve hundred and fifty, or one and a quarter? */
const AMBIGUOUS = /^[+\-−]?[1-9]\d{0,2},\d{3}$/u;

interface NumberText {
  readonly value: number;
  readonly decimals: number;
  readonly fraction?: string;
}

function readNumber(text: string): NumberText | undefined {
  const t = text.replace('−', '-').replace(',', '.').trim();
  const mixed = /^([+-]?)(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(t);
  if (mixed !== null) {
    const [, sign, whole = '0', top = '0', bottom = '1'] = mixed;
    if (Number(bottom) === 0) return undefined;
    const value = (Number(whole) + Number(top) / Number(bottom)) * (sign === '-' ? -1 : 1);
    const fraction = `${sign === '-' ? '-' : ''}${whole === '0' ? '' : `${whole} `}${top}/${bottom}`;
    return { value, decimals: 0, fraction };
  }
  if (!/^[+-]?(\d+(\.\d+)?|\.\d+)$/.test(t)) return undefined;
  return { value: Number(t), decimals: (t.split('.')[1] ?? '').length };
}

/** `85 N·m`, `22.5 deg`, `15/16 in`, `1 1/8 in`, `0,05 mm`. The unit must belong to `dimension` (or one of several). */
export function parseQuantity<D extends Dimension>(text: string, dimension: D | readonly D[]): Parsed<Quantity<D>> {
  const wanted = (Array.isArray(dimension) ? dimension : [dimension]) as readonly D[];
  const trimmed = text.trim();
  const match = PLAIN.exec(trimmed);
  const number = match === null ? undefined : readNumber(match[1] ?? '');
  const accepted = wanted.flatMap((d) => unitSymbols(d));
  if (match === null || number === undefined) {
    return {
      ok: false,
      problem: `\`${text}\` is not a number with a unit`,
      hint: `write it like \`${example(wanted[0])}\``,
    };
  }
  const digits = match[1] ?? '';
  if (AMBIGUOUS.test(digits)) {
    const [thousands, decimals] = [digits.replace(',', ''), digits.replace(',', '.')];
    return {
      ok: false,
      problem: `\`${text}\` can be read in two ways`,
      hint: `write \`${thousands}\` or \`${decimals}\``,
    };
  }
  const unitText = (match[2] ?? '').trim();
  if (unitText === '') {
    return {
      ok: false,
      problem: `\`${text}\` has no unit`,
      hint: `write the unit that the source gives: ${accepted.map((s) => `\`${trimmed} ${s}\``).join(', ')}`,
    };
  }
  for (const d of wanted) {
    const u = findUnit(unitText, d);
    if (u === undefined) continue;
    if (!Number.isFinite(number.value)) break;
    const base = { dimension: d, value: number.value, unit: u.symbol, decimals: number.decimals };
    const si = number.value * u.factor + u.offset;
    return {
      ok: true,
      value: number.fraction === undefined ? { ...base, si } : { ...base, si, fraction: number.fraction },
    };
  }
  const other = findUnit(unitText);
  const problem =
    other === undefined
      ? `\`${unitText}\` is not a unit known here`
      : `\`${text}\` is a ${other.dimension}, and a ${wanted.join(' or ')} is wanted`;
  const folded = unitText.toLowerCase();
  const nearest = UNITS.find(
    (u) => wanted.includes(u.dimension as D) && [u.symbol, ...u.spellings].some((s) => s.toLowerCase() === folded),
  );
  const hint = nearest
    ? `did you mean \`${nearest.symbol}\`?`
    : `accepted units: ${accepted.map((s) => `\`${s}\``).join(', ')}`;
  return { ok: false, problem, hint };
}

/**
 * `0 to 0.10 mm`, `0.05 mm to 0.10 mm`, `at most 0.05 mm`, `at least 3 mm`, `12.0 ± 0.2 mm`.
 * A range that runs backwards is refused.
 */
export function parseLimit<D extends Dimension>(text: string, dimension: D | readonly D[]): Parsed<Limit<D>> {
  const t = text.trim();
  const oneEnded = /^(at most|at least)\s+(.*)$/iu.exec(t);
  if (oneEnded !== null) {
    const q = parseQuantity(oneEnded[2] ?? '', dimension);
    if (!q.ok) return q;
    return { ok: true, value: oneEnded[1]?.toLowerCase() === 'at most' ? { max: q.value } : { min: q.value } };
  }
  const band = /^(.*?)\s*(?:±|\+\/-)\s*(.*)$/u.exec(t);
  if (band !== null) {
    const deviation = parseQuantity(band[2] ?? '', dimension);
    if (!deviation.ok) return deviation;
    const middle = parseQuantity(withUnit(band[1] ?? '', deviation.value.unit), dimension);
    if (!middle.ok) return middle;
    if (deviation.value.value < 0) {
      return { ok: false, problem: `\`${text}\` has a negative deviation`, hint: 'write the deviation without a sign' };
    }
    if (middle.value.unit !== deviation.value.unit) return mixedUnits(text);
    const ends = [middle.value.value - deviation.value.value, middle.value.value + deviation.value.value];
    const hasFraction = middle.value.fraction !== undefined || deviation.value.fraction !== undefined;
    const decimals = Math.max(
      middle.value.decimals,
      deviation.value.decimals,
      ...(hasFraction ? ends.map((v) => neededDecimals(v)) : []),
    );
    const [low, high] = ends.map((v) => parseQuantity(`${v.toFixed(decimals)} ${deviation.value.unit}`, dimension));
    if (low === undefined || high === undefined) throw new RangeError('unreachable: two ends are always made');
    if (!low.ok) return low;
    if (!high.ok) return high;
    return { ok: true, value: { min: low.value, max: high.value } };
  }
  const range = /^(.*?)\s+to\s+(.*)$/u.exec(t);
  if (range === null) {
    return {
      ok: false,
      problem: `\`${text}\` is not a limit`,
      hint: 'write `0 to 0.10 mm`, `at most 0.05 mm` or `at least 3 mm`',
    };
  }
  const high = parseQuantity(range[2] ?? '', dimension);
  if (!high.ok) return high;
  const low = parseQuantity(withUnit(range[1] ?? '', high.value.unit), dimension);
  if (!low.ok) return low;
  if (low.value.unit !== high.value.unit) return mixedUnits(text);
  if (low.value.si > high.value.si) {
    return {
      ok: false,
      problem: `\`${text}\` runs backwards`,
      hint: 'compare both values with the source; the smaller one stands first',
    };
  }
  return { ok: true, value: { min: low.value, max: high.value } };
}

function mixedUnits(text: string): Parsed<never> {
  return { ok: false, problem: `\`${text}\` mixes units`, hint: 'write both values in one unit' };
}

function withUnit(text: string, unitSymbol: string): string {
  return /[\p{L}°%"″]/u.test(text) ? text : `${text} ${unitSymbol}`;
}

function example(dimension: Dimension | undefined): string {
  switch (dimension) {
    case 'torque':
      return '85 N·m';
    case 'angle':
      return '22.5 deg';
    case 'time':
      return '10 min';
    case 'temperature':
      return '110 degC';
    case 'mass':
      return '18 kg';
    case 'ratio':
      return '30 %';
    case 'volume':
      return '50 ml';
    case 'force':
      return '12 kN';
    case 'stress':
      return '640 MPa';
    default:
      return '12.5 mm';
  }
}
