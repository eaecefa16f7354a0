/** A screw thread with every diameter and area that the torque work needs, computed from diameter and pitch. */

/**
 * Lengths in mm, areas in mm². `stressAreaMm2` is the tensile stress area, on which strength standards rest their loads;
 * `rootAreaMm2` is the smaller area at the root, on which some flange procedures rest theirs: never mix the two.
 */
export interface Thread {
  /** The one printed form: `M16`, `M16×1.5`, `5/8-11 UNC`, `#10-32 UNF`, `1 1/8-8 8UN`. */
  readonly designation: string;
  readonly system: 'metric' | 'unified';
  /** `coarse` or `fine`; `UNC`, `UNF`, `UNEF`, `8UN` or `UNS`. */
  readonly series: string;
  /** Nominal size alone, the key of the head and wrench tables: `M16`, `5/8`, `#10`, `1 1/8`. */
  readonly size: string;
  readonly diameterMm: number;
  readonly pitchMm: number;
  readonly pitchDiameterMm: number;
  /** d3, at the root of the external thread. */
  readonly minorDiameterMm: number;
  /** D1, of the internal thread. */
  readonly internalMinorMm: number;
  readonly stressAreaMm2: number;
  readonly rootAreaMm2: number;
  /** Threads per inch; unified threads only. */
  readonly tpi?: number;
  /** Ways in which people type it, lower case; each is read back as this thread. */
  readonly searchTerms: readonly string[];
}

/** Exact: international inch of 1959. */
export const MM_PER_INCH = 25.4;

/** ISO 724 and ISO 68-1, 60 degree basic profile, H = (√3/2) P: d2 = d - 3/4 H. */
const PITCH_DIAMETER = 0.649519;
/** ISO 898-1 and ISO 724: d3 = d - 17/12 H. */
const EXTERNAL_MINOR = 1.226869;
/** ISO 724: D1 = d - 5/4 H. */
const INTERNAL_MINOR = 1.082532;
/** ASME B1.1, tensile stress area: d - 0.9743/n (9√3/16 of the pitch). */
const UNIFIED_STRESS = 0.9743;
/** ASME PCC-1 App. O, root area: d - 1.3/n. */
const UNIFIED_ROOT = 1.3;

function circleArea(diameterMm: number): number {
  return (Math.PI / 4) * diameterMm ** 2;
}

function profile(d: number, p: number) {
  return {
    diameterMm: d,
    pitchMm: p,
    pitchDiameterMm: d - PITCH_DIAMETER * p,
    minorDiameterMm: d - EXTERNAL_MINOR * p,
    internalMinorMm: d - INTERNAL_MINOR * p,
  };
}

/**
 * A metric thread of diameter `d` and pitch `p`, both in mm.
 * Stress area pi/4 ((d2 + d3)/2)², ISO 898-1; root area pi/4 d3².
 */
export function metricThread(d: number, p: number, series: 'coarse' | 'fine'): Thread {
  const size = `M${d}`;
  const shape = profile(d, p);
  const spelt = [`m${d}x${p}`, `m${d} x ${p}`, `m${d}-${p}`, `m${d}x${Number.isInteger(p) ? p.toFixed(1) : p}`];
  return {
    designation: series === 'coarse' ? size : `${size}×${p}`,
    system: 'metric',
    series,
    size,
    ...shape,
    stressAreaMm2: circleArea((shape.pitchDiameterMm + shape.minorDiameterMm) / 2),
    rootAreaMm2: circleArea(shape.minorDiameterMm),
    searchTerms: [...new Set(series === 'coarse' ? [size.toLowerCase(), ...spelt] : spelt)],
  };
}

/**
 * A unified thread. size: as printed (`5/8`, `#10`, `1 1/8`). diameterIn: inches. tpi: threads per inch.
 * Stress area pi/4 (d - 0.9743/n)², ASME B1.1; root area pi/4 (d - 1.3/n)², ASME PCC-1.
 */
export function unifiedThread(size: string, diameterIn: number, tpi: number, series: string): Thread {
  const d = diameterIn * MM_PER_INCH;
  const p = MM_PER_INCH / tpi;
  const decimal = diameterIn.toFixed(4).replace(/0$/, '');
  const spellings = size.startsWith('#')
    ? [size, `no ${size.slice(1)}`, size.slice(1)]
    : [size, size.replace(' ', '-'), decimal, decimal.replace(/^0/, '')];
  const pairs = spellings.map((s) => `${s}-${tpi}`);
  const withSeries = spellings.slice(0, 2).flatMap((s) => [`${s}-${tpi} ${series}`, `${s} ${series}`]);
  const wide = series.endsWith('UN') ? spellings.slice(0, 2).map((s) => `${s}-${tpi} un`) : [];
  return {
    designation: `${size}-${tpi} ${series}`,
    system: 'unified',
    series,
    size,
    ...profile(d, p),
    stressAreaMm2: circleArea(d - UNIFIED_STRESS * p),
    rootAreaMm2: circleArea(d - UNIFIED_ROOT * p),
    tpi,
    searchTerms: [...new Set([...pairs, ...withSeries, ...wide].map((s) => s.toLowerCase()))],
  };
}
