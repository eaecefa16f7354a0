/** A step releases or proves an energy that neither its procedure nor the machine lists. */

import { didYouMean } from '../../diagnostics/index.ts';
import type { Check, Fault } from '../check.ts';
import { eachStep } from '../rule.ts';
import { energyKey, placeIn } from './energy.ts';

export const unknownEnergy: Check = {
  code: 'SAF004',
  name: 'unknown-energy',
  severity: 'error',
  title: 'A step releases or proves an energy that neither its procedure nor its machine lists.',
  why: 'A slip in the name leaves the real energy without its step, or the head of the card does not warn of what the step is there to take away.',
  sources: ['29 CFR 1910.147(d)(1): the kind and size of each energy are known before the machine is shut down'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Loosen the <joint:cover>.
`,
        to: `      - do: Look at the open drain once more.
        prove: [«water presure»]
      - do: Loosen the <joint:cover>.
`,
      },
    ],
  },
  found: eachStep(
    function* (step, { document, machine }): Iterable<Fault> {
      // A shared stage serves machines of many kinds, and lists the energies of all of them.
      if (step.label !== undefined || document.incomplete) return;
      const known = [...document.energy, ...(machine?.energy ?? [])];
      const keys = new Set(known.map(energyKey));
      for (const field of ['release', 'prove'] as const) {
        for (const name of step[field]) {
          if (keys.has(energyKey(name))) continue;
          yield {
            range: placeIn(step, field, name),
            message: `\`${name}\` is not an energy of this procedure or of \`${document.machine}\``,
            hint:
              didYouMean(name, [...new Set(known)]) ??
              (document.energy.length === 0
                ? `list it at the head of the procedure: \`energy: [${name}]\``
                : `write one of ${document.energy.map((e) => `\`${e}\``).join(', ')}, or add it to \`energy\``),
          };
        }
      }
    },
    ({ release, prove }) => release.length > 0 || prove.length > 0,
  ),
};
