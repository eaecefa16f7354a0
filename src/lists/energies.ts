/** Stored energies with the steps that release them and prove them gone. */

import type { Step } from '../resolve/index.ts';

export interface EnergySteps {
  readonly energy: string;
  /** Step numbers, rising; empty where no step says so. */
  readonly released: readonly number[];
  readonly proved: readonly number[];
}

/** Words are compared without regard to case, as the checks do. */
export function energySteps(energies: readonly string[], steps: readonly Step[]): readonly EnergySteps[] {
  return energies.map((energy) => {
    const is = (other: string): boolean => other.toLowerCase() === energy.toLowerCase();
    return {
      energy,
      released: steps.filter((s) => s.release.some(is)).map((s) => s.number),
      proved: steps.filter((s) => s.prove.some(is)).map((s) => s.number),
    };
  });
}
