/** A chemical, or something with a hazard, without its safety data sheet. */

import type { Check } from '../check.ts';
import { aKind, eachLacking, isChemical } from './kinds.ts';

export const noSafetyData: Check = {
  code: 'CSM001',
  name: 'no-safety-data',
  severity: 'error',
  title: 'A chemical or hazardous consumable does not say where its safety data sheet is.',
  why: 'With solvent in an eye or a drum tipped over, nobody knows where first aid and clean-up are written.',
  sources: [
    '29 CFR 1910.1200(g)(8): data sheets are at hand in every work area (memory)',
    'REACH, article 35: workers have access to the data of what they use (memory)',
  ],
  example: {
    bad: [
      {
        file: 'consumables.yaml',
        from: 'oil: { name: machine oil, kind: lubricant, condition: oiled, medium: mineral oil, hazards: [irritates the skin], ppe: [gloves], safety_data: folder L1,',
        to: '«oil»: { name: machine oil, kind: lubricant, condition: oiled, medium: mineral oil, hazards: [irritates the skin], ppe: [gloves],',
      },
    ],
  },
  found: eachLacking(
    'safety_data',
    (c) => (c.hazards.length > 0 ? `has the hazard \`${c.hazards[0]}\`` : isChemical(c) ? `is ${aKind(c)}` : undefined),
    () => 'write where the sheet is, such as `safety_data: folder at the stores hatch, tab L1`',
  ),
};
