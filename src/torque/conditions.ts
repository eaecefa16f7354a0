/** Joint conditions: what lies on the threads, with the friction and scatter to reckon with. */

import type { Band } from './band.ts';

export interface JointCondition {
  /** Kebab-case key, as written in content: `anti-seize`. */
  readonly id: string;
  readonly name: string;
  readonly lubricated: boolean;
  /** K of T = K d F. */
  readonly nutFactor: Band;
  /** Coefficient of friction, thread and bearing face alike. */
  readonly friction: Band;
  /** ± share of preload to expect from a torque wrench, friction included: 0.25 lubricated, 0.35 dry. */
  readonly scatter: number;
  readonly source: string;
}

/** NASA table of preload uncertainty (as in NSTS 08307 3.4): torque, lubricated 25 %, unlubricated 35 %. */
const LUBRICATED = 0.25;
const DRY = 0.35;

function condition(
  id: string,
  name: string,
  lubricated: boolean,
  [kLow, k, kHigh]: readonly [number, number, number],
  [muLow, mu, muHigh]: readonly [number, number, number],
  source: string,
): JointCondition {
  return {
    id,
    name,
    lubricated,
    nutFactor: { low: kLow, nominal: k, high: kHigh },
    friction: { low: muLow, nominal: mu, high: muHigh },
    scatter: lubricated ? LUBRICATED : DRY,
    source,
  };
}

/**
 * Defaults for a joint whose lubricant has no figures of its own; figures of the lubricant's maker come first.
 * K and mu were chosen so that the two routes meet: K is about 1.16 mu + 0.02 for a hexagon head.
 */
export const CONDITIONS: readonly JointCondition[] = [
  condition(
    'dry',
    'dry, as received',
    false,
    [0.17, 0.2, 0.25],
    [0.14, 0.14, 0.24],
    'K 0.20: Bickford and Nassar, bare steel; range and mu: trade practice (memory), VDI 2230 class C',
  ),
  condition(
    'zinc-dry',
    'zinc plated, dry',
    false,
    [0.18, 0.2, 0.295],
    [0.14, 0.16, 0.24],
    'K: Shigley Table 8-15 (0.20), Bickford and Nassar (0.295 at most); mu: VDI 2230 class C (memory)',
  ),
  condition(
    'oiled',
    'machine oil on thread and under head',
    true,
    [0.13, 0.16, 0.2],
    [0.08, 0.12, 0.16],
    'K: textbook and trade range (memory); mu: VDI 2230 class B',
  ),
  condition(
    'anti-seize',
    'anti-seize paste, copper or nickel',
    true,
    [0.11, 0.15, 0.18],
    [0.08, 0.1, 0.14],
    'K 0.15: ASME PCC-1 App. O usage; ranges: trade practice (memory)',
  ),
  condition(
    'moly',
    'molybdenum disulfide paste',
    true,
    [0.1, 0.11, 0.13],
    [0.06, 0.08, 0.1],
    'K and mu: textbook and trade range (memory)',
  ),
  condition(
    'wax',
    'wax or PTFE coating',
    true,
    [0.08, 0.11, 0.14],
    [0.04, 0.08, 0.1],
    'K: trade range (memory); mu: VDI 2230 classes A and B',
  ),
  condition(
    'stainless-dry',
    'stainless steel on stainless, dry (galling risk)',
    false,
    [0.25, 0.3, 0.4],
    [0.2, 0.26, 0.35],
    'K: textbook and trade range (memory); mu: VDI 2230 class D',
  ),
  condition(
    'threadlocked',
    'thread-locking adhesive',
    true,
    [0.15, 0.18, 0.22],
    [0.1, 0.14, 0.18],
    'K and mu: trade practice (memory); the adhesive maker states the factor for each grade',
  ),
];

/** The condition with this id; undefined where there is none. */
export function findCondition(id: string): JointCondition | undefined {
  return CONDITIONS.find((c) => c.id === id);
}
