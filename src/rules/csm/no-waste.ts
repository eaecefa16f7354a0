/** A chemical of which the card does not say where the rest goes. */

import type { Check } from '../check.ts';
import { aKind, eachLacking, isChemical } from './kinds.ts';

export const noWaste: Check = {
  code: 'CSM006',
  name: 'no-waste',
  severity: 'warning',
  title: 'A chemical consumable does not say how what is left of it is disposed of.',
  why: 'Solvent ends in the used-oil drum or the sink, which spoils the drum and is an offence.',
  sources: [
    '40 CFR 279.22: used oil is kept apart, in marked containers (read)',
    '29 CFR 1910.1200 App D, section 13 of the safety data sheet (memory)',
  ],
  example: {
    bad: [
      {
        file: 'consumables.yaml',
        from: 'oil: { name: machine oil, kind: lubricant, condition: oiled, medium: mineral oil, hazards: [irritates the skin], ppe: [gloves], safety_data: folder L1, shelf_life: 5 years, waste: used-oil drum }',
        to: '«oil»: { name: machine oil, kind: lubricant, condition: oiled, medium: mineral oil, hazards: [irritates the skin], ppe: [gloves], safety_data: folder L1, shelf_life: 5 years }',
      },
    ],
  },
  found: eachLacking(
    'waste',
    (c) => (isChemical(c) ? `is ${aKind(c)}` : undefined),
    () =>
      'write where it goes, such as `waste: used-oil drum at the gate`, as section 13 of its safety data sheet says',
  ),
};
