/** The last part of the working: stress in the shank while the wrench turns. */

import { constant, type Expr, fraction, given, PI, power, product, quantity, root, sum } from './formula/index.ts';
import type { TorqueInput } from './input.ts';
import type { Named, Reckoned } from './working.ts';
import type { Working } from './working-line.ts';

/**
 * Tension, torsion on the fully plastic modulus pi d0³/12 (VDI 2230 Part 1 since 2001), von Mises, share of yield: at
 * nominal preload and friction, then on the elastic modulus pi d0³/16 for comparison, then at the highest preload with
 * the least friction.
 */
export function addStress(w: Working, input: TorqueInput, done: Reckoned, preload: Named): void {
  w.begin('stress while tightening');
  const { prevailingNm = 0 } = input;
  const { d0, area, pitchLever } = done;
  const Re = quantity('R_e', input.strength.yieldMPa);
  const twist = (force: Expr, thread: Expr): Expr => {
    const lever = product(force, sum(pitchLever, thread));
    return prevailingNm > 0 ? sum(lever, given('T_run', prevailingNm)) : lever;
  };
  const thousand = constant(1000);
  const mises = (tension: Expr, torsion: Expr): Expr =>
    root(sum(power(tension, 2), product(constant(3), power(torsion, 2))));
  const use = (stress: Expr): Expr => product(constant(100), fraction(stress, Re));

  const tension = w.add('tension', 'σ', fraction(product(thousand, preload.nominal), area), 'MPa');
  const moment = w.add('torque in the shank', 'M_G', twist(preload.nominal, done.threadLever), 'N·m');
  const modulus = w.add('torsion modulus, plastic', 'W_p', fraction(product(PI, power(d0, 3)), constant(12)), 'mm³');
  const torsion = w.add('torsion', 'τ', fraction(product(thousand, moment), modulus), 'MPa');
  const combined = w.add('combined (von Mises)', 'σ_red', mises(tension, torsion), 'MPa');
  w.add('share of yield', 'u', use(combined), '%');

  // A sixteenth instead of a twelfth: four thirds of the torsion.
  const elasticTorsion = w.add(
    'torsion, elastic modulus',
    'τ_e',
    fraction(product(constant(4), torsion), constant(3)),
    'MPa',
  );
  w.add('share of yield, elastic', 'u_e', product(constant(100), fraction(mises(tension, elasticTorsion), Re)), '%');

  const high = w.add('tension, highest preload', 'σ_high', fraction(product(thousand, preload.high), area), 'MPa');
  const least = product(constant(0.58), done.d2, done.muThread.low);
  const highMoment = w.add('torque in the shank', 'M_high', twist(preload.high, least), 'N·m');
  const highTorsion = w.add('torsion', 'τ_high', fraction(product(thousand, highMoment), modulus), 'MPa');
  w.add('share of yield, highest', 'u_high', product(constant(100), fraction(mises(high, highTorsion), Re)), '%');
}
