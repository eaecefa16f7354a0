/** The worksheet of a joint: each formula, the same with its numbers, and the result, to follow with a pocket calculator. */

import {
  constant,
  cosine,
  degrees,
  difference,
  type Expr,
  fraction,
  given,
  PI,
  power,
  product,
  quantity,
  sum,
} from './formula/index.ts';
import type { TorqueInput } from './input.ts';
import type { TorqueResult } from './result.ts';
import { Working, type WorkingLine } from './working-line.ts';
import { addStress } from './working-stress.ts';

export { WORKING_SECTIONS, type WorkingLine, type WorkingSection } from './working-line.ts';

/** A band of friction, nut factor or the like as three named numbers. */
export interface Named {
  readonly low: Expr;
  readonly nominal: Expr;
  readonly high: Expr;
}

/** What later sections take from earlier ones. */
export interface Reckoned {
  readonly d: Expr;
  readonly d2: Expr;
  readonly d0: Expr;
  readonly area: Expr;
  readonly basis: Expr;
  readonly asked: Expr;
  readonly K: Named;
  readonly muThread: Named;
  readonly muBearing: Named;
  /** 0.16 P. */
  readonly pitchLever: Expr;
  /** 0.58 d2 mu at nominal friction. */
  readonly threadLever: Expr;
  /** Whole lever of the long form, mm. */
  readonly lever: Named;
}

/**
 * Lines in the order of reckoning. Each value is that of its own formula, reckoned anew from the inputs (and from the
 * friction, nut factor, target and deviation that `r` chose): it agrees with what `r` found without formulas. Sources: ISO 724 and ISO 898-1 (metric thread), ASME B1.1
 * (unified thread), Shigley ch. 8 (short form), VDI 2230 Part 1 (long form, stress), FAA AC 43.13-1B (adapter, run-down
 * torque).
 */
export function writeWorking(input: TorqueInput, r: Omit<TorqueResult, 'working'>): readonly WorkingLine[] {
  const w = new Working('thread');
  const thread = addThread(w, input);
  const strength = addStrength(w, input, r, thread.area);
  const K = named('K', r.nutFactor);
  addShortForm(w, thread.d, K, strength.asked, r);
  const long = addLongForm(w, input, r, { ...thread, ...strength });
  const done: Reckoned = { ...thread, ...strength, K, ...long };
  addSetting(w, input, r);
  const preload = addPreload(w, input, r, done);
  addStress(w, input, done, preload);
  return w.lines;
}

/** The three numbers of a given band: `µ_G`, `µ_G, low`, `µ_G, high`. */
function named(symbol: string, band: { readonly low: number; readonly nominal: number; readonly high: number }): Named {
  return {
    low: given(bounded(symbol, 'low'), band.low),
    nominal: given(symbol, band.nominal),
    high: given(bounded(symbol, 'high'), band.high),
  };
}

/** `K` becomes `K_low`, `µ_G` becomes `µ_G, low`. */
function bounded(symbol: string, end: 'low' | 'high'): string {
  return symbol.includes('_') ? `${symbol}, ${end}` : `${symbol}_${end}`;
}

function addThread(w: Working, { thread }: TorqueInput) {
  const d = given('d', thread.diameterMm);
  const P =
    thread.tpi === undefined
      ? given('P', thread.pitchMm)
      : w.add('pitch', 'P', fraction(constant(25.4), given('n', thread.tpi)), 'mm');
  const d2 = w.add('pitch diameter', 'd_2', difference(d, product(constant(0.649519), P)), 'mm');
  const d0 =
    thread.system === 'unified'
      ? w.add('stress diameter', 'd_0', difference(d, product(constant(0.9743), P)), 'mm')
      : w.add(
          'stress diameter',
          'd_0',
          fraction(
            sum(d2, w.add('root diameter', 'd_3', difference(d, product(constant(1.226869), P)), 'mm')),
            constant(2),
          ),
          'mm',
        );
  const area = w.add('stress area', 'A_s', fraction(product(PI, power(d0, 2)), constant(4)), 'mm²');
  return { d, d2, d0, area, P };
}

function addStrength(
  w: Working,
  { strength, preloadShare }: TorqueInput,
  r: Omit<TorqueResult, 'working'>,
  area: Expr,
) {
  w.begin('strength and preload asked for');
  const stress =
    strength.proofMPa === undefined ? quantity('R_e', strength.yieldMPa) : quantity('S_p', strength.proofMPa);
  const basis = w.add(
    r.preloadBasis === 'proof' ? 'proof load' : 'yield load (no proof stress)',
    'F_0',
    fraction(product(stress, area), constant(1000)),
    'kN',
  );
  const asked = w.add('preload asked for', 'F', product(given('s', preloadShare), basis), 'kN');
  return { basis, asked };
}

/** The band of the short form, and where the stated torque lies in it: 0 % at the low end, 100 % at the high end. */
function addShortForm(w: Working, d: Expr, K: Named, asked: Expr, r: Omit<TorqueResult, 'working'>): void {
  w.begin('torque, short form');
  const nominal = w.add('nominal', 'T_short', product(K.nominal, d, asked), 'N·m');
  w.add('low end, least nut factor', 'T_short, low', product(K.low, d, asked), 'N·m');
  w.add('high end, greatest nut factor', 'T_short, high', product(K.high, d, asked), 'N·m');
  if (r.statedPlace === undefined) return;
  const T = given('T', r.targetNm);
  w.add('torque over nominal', 'r', fraction(T, nominal));
  if (r.statedPlace.position === undefined) return;
  // Differences of near numbers: the ends are carried with six figures, or their rounding would show.
  const [from, to] = [given('T_short, low', r.shortForm.low), given('T_short, high', r.shortForm.high)];
  w.add(
    'its place, low end 0, high 100',
    'x',
    product(constant(100), fraction(difference(T, from), difference(to, from))),
    '%',
  );
}

function addLongForm(
  w: Working,
  { bearing }: TorqueInput,
  r: Omit<TorqueResult, 'working'>,
  { d, d2, P, asked }: { readonly d: Expr; readonly d2: Expr; readonly P: Expr; readonly asked: Expr },
) {
  w.begin('torque, long form');
  const muThread = named('µ_G', r.friction.thread);
  const muBearing = named('µ_K', r.friction.bearing);
  const ring = w.add(
    'mean bearing diameter',
    'D_Km',
    fraction(sum(quantity('d_w', bearing.faceMm), quantity('d_h', bearing.holeMm)), constant(2)),
    'mm',
  );
  const inThread = (mu: Expr): Expr => product(constant(0.58), d2, mu);
  const underFace = (mu: Expr): Expr => product(mu, fraction(ring, constant(2)));
  const pitchLever = w.add('lever of the pitch', 'a_P', product(constant(0.16), P), 'mm');
  const threadLever = w.add('lever of thread friction', 'a_G', inThread(muThread.nominal), 'mm');
  const faceLever = w.add('lever of friction at the face', 'a_K', underFace(muBearing.nominal), 'mm');
  const nominal = w.add('whole lever', 'a', sum(pitchLever, threadLever, faceLever), 'mm');
  const torque = w.add('nominal', 'T_long', product(asked, nominal), 'N·m');
  const end = (which: 'low' | 'high', name: string): Expr => {
    const lever = w.add(
      `whole lever, ${name}`,
      `a_${which}`,
      sum(pitchLever, inThread(muThread[which]), underFace(muBearing[which])),
      'mm',
    );
    w.add(`${which} end`, `T_long, ${which}`, product(asked, lever), 'N·m');
    return lever;
  };
  const low = end('low', 'least friction');
  const high = end('high', 'greatest friction');
  w.add('nut factor it amounts to', 'K_long', fraction(torque, product(d, asked)));
  return { muThread, muBearing, pitchLever, threadLever, lever: { low, nominal, high } };
}

/**
 * Torque at the bolt and the setting of the wrench. Where nothing is added or corrected the setting is the torque, and a
 * section of its own would say nothing: its line then begins the next.
 */
function addSetting(w: Working, { prevailingNm = 0, adapter }: TorqueInput, r: Omit<TorqueResult, 'working'>): void {
  const T = given('T', r.targetNm);
  if (prevailingNm === 0 && adapter === undefined) {
    w.begin('preload at this torque');
    w.add('wrench set to', 'T_set', T, 'N·m');
    return;
  }
  w.begin('wrench setting');
  const atBolt =
    prevailingNm > 0 ? w.add('torque at the bolt', 'T_bolt', sum(T, given('T_run', prevailingNm)), 'N·m') : T;
  if (adapter === undefined) {
    w.add('wrench set to', 'T_set', atBolt, 'N·m');
    return;
  }
  const lever = given('L', adapter.leverMm);
  const reach = sum(lever, product(given('E', adapter.lengthMm), cosine(degrees('φ', adapter.angleDeg))));
  w.add('wrench with adapter set to', 'T_set', fraction(product(atBolt, lever), reach), 'N·m');
}

/** Preload that the joint's torque leaves, by both routes. Run-down torque makes none, and the wrench errs on the whole. */
function addPreload(
  w: Working,
  { prevailingNm = 0 }: TorqueInput,
  r: Omit<TorqueResult, 'working'>,
  { d, K, lever, basis }: Reckoned,
): Named {
  w.begin('preload at this torque');
  const T = given('T', r.targetNm);
  const e = given('e', r.wrenchDeviation);
  const atBolt = prevailingNm > 0 ? quantity('T_bolt', r.boltNm) : T;
  const run = given('T_run', prevailingNm);
  const less = (part: Expr): Expr => (prevailingNm > 0 ? difference(part, run) : part);
  const least = less(product(atBolt, difference(constant(1), e)));
  const most = less(product(atBolt, sum(constant(1), e)));
  // A run-down torque above what a low-reading wrench gives leaves the bolt loose: there is no formula for that.
  const none = r.preloadN.low === 0;
  const route = (symbol: string, by: Named, words: readonly [string, string, string]): Named => ({
    nominal: w.add(words[0], symbol, fraction(T, by.nominal), 'kN'),
    low: w.add(
      none ? 'lowest: the run-down takes all' : words[1],
      bounded(symbol, 'low'),
      none ? constant(0) : fraction(least, by.high),
      'kN',
    ),
    high: w.add(words[2], bounded(symbol, 'high'), fraction(most, by.low), 'kN'),
  });
  const perNutFactor = { low: product(K.low, d), nominal: product(K.nominal, d), high: product(K.high, d) };
  const preload = route('F_T', perNutFactor, [
    'short form, nominal',
    'lowest: greatest nut factor',
    'highest: least nut factor',
  ]);
  route('F_long', lever, ['long form, nominal', 'long form, lowest', 'long form, highest']);
  const share = (name: string, symbol: string, force: Expr) =>
    w.add(name, symbol, product(constant(100), fraction(force, basis)), '%');
  share(`share of the ${r.preloadBasis} load`, 's_T', preload.nominal);
  share('lowest share', 's_T, low', preload.low);
  share('highest share', 's_T, high', preload.high);
  addScatter(w, preload);
  return preload;
}

/** alpha_A and the symmetric share (VDI 2230 Part 1); nothing where the lowest preload is zero. */
function addScatter(w: Working, preload: Named): void {
  if (preload.low.kind !== 'quantity' || preload.low.value === 0) return;
  const alpha = w.add('scatter, highest over lowest', 'α_A', fraction(preload.high, preload.low));
  w.add(
    'scatter, as plus and minus',
    'δ',
    product(constant(100), fraction(difference(alpha, constant(1)), sum(alpha, constant(1)))),
    '%',
  );
}
