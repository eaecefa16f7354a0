/** A consumable's hazard without the protection that it asks for. */

import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { inEnglish } from './words.ts';

/** What the words of a hazard ask for, after the precautionary statements of the GHS; any one of `ppe` will do. */
const NEEDS: readonly { readonly hazard: RegExp; readonly ppe: readonly string[] }[] = [
  {
    hazard: /\bskin\b|\ballerg(?!y or asthma)|\bcorrosive\b(?! to metal)|\bcaustic\b|\bcryogenic\b|\bfrostbite\b/iu,
    ppe: ['gloves', 'heat gloves'],
  },
  {
    hazard: /\beyes?\b|\bcorrosive\b(?! to metal)|\bcaustic\b|\bcryogenic\b|\bsplash/iu,
    ppe: ['eye protection', 'face shield'],
  },
  {
    hazard:
      /\b(?:toxic|poisonous|fatal|deadly) (?:if|when) (?:breathed|inhaled)\b|\bdamages? the lungs\b|\basthma\b|\bsilica\b|\bisocyanate/iu,
    ppe: ['respirator'],
  },
  { hazard: /\bmolten\b|\bhot (?:wax|melt|oil bath)\b/iu, ppe: ['heat gloves'] },
];

export const missingPpe: Check = {
  code: 'SAF008',
  name: 'missing-ppe',
  severity: 'error',
  title: 'A consumable harms eyes, skin or lungs, and neither it nor a procedure that uses it asks for the protection.',
  why: 'The list of protection on the card is what is laid out at the bench; a splash in the eye is a matter of one second.',
  sources: [
    'UN GHS, annex 3: P280 for H310 to H319, P282 for H281, P284 for H330 and H334; for H331 common practice (memory)',
    '29 CFR 1910.1200 App D, section 8 of the safety data sheet (memory)',
  ],
  example: {
    bad: [
      { file: 'procedures/mw-1.yaml', from: 'ppe: [gloves, eye protection]', to: 'ppe: [gloves]' },
      {
        file: 'consumables.yaml',
        from: 'hazards: [irritates the skin], ppe: [gloves]',
        to: 'hazards: [irritates the skin, «irritates the eyes»], ppe: [gloves]',
      },
    ],
  },
  found: (shop, tell) => {
    if (!inEnglish(shop)) return;
    for (const consumable of shop.consumables) {
      for (const { hazard, ppe } of NEEDS) {
        const i = consumable.hazards.findIndex((h) => hazard.test(h));
        if (i < 0 || ppe.some((p) => consumable.ppe.includes(p))) continue;
        const user = shop.documents.find((d) =>
          d.variants.some(
            (v) => v.consumables.some((c) => c.id === consumable.id) && !ppe.some((p) => v.ppe.includes(p)),
          ),
        );
        if (user === undefined) continue;
        const [wanted = ''] = ppe;
        tell(
          placeOf(consumable, 'hazards', i),
          `\`${consumable.id}\` ${words(consumable.hazards[i] ?? '')}, and neither it nor ${user.doc} asks for \`${wanted}\``,
          {
            related: [{ range: user.range, message: `${user.doc} uses it` }],
            hint: `add \`${wanted}\` to the \`ppe\` of \`${consumable.id}\`, as section 8 of its safety data sheet says`,
          },
        );
      }
    }
  },
};

/** `irritates the eyes` reads on as it is; `dust irritates eyes` and `corrosive` are quoted. */
function words(hazard: string): string {
  return /^(?:irritates|burns|damages|attacks|dries)\b/iu.test(hazard) ? hazard : `has the hazard \`${hazard}\``;
}
