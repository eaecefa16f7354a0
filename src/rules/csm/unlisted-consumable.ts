/** A consumable named in plain words that is not among those of the step. */

import type { Check } from '../check.ts';
import { eachVariant, lookUp } from '../rule.ts';
import { measurePlace } from '../tol/measured.ts';
import { wordsPlace } from '../tol/places.ts';
import { isOfMachine, isRefused, type Spoken, saidIn } from '../tol/spoken.ts';

export const unlistedConsumable: Check = {
  code: 'CSM005',
  name: 'unlisted-consumable',
  severity: 'warning',
  title: 'A step names a consumable of the register in plain words, and does not list it.',
  why: 'It is on no list of the card: nobody brings it, its hazard and its protection are not printed, and it is not ordered.',
  sources: ['common practice: consumables, their hazards and the protection are laid out from the list of the card'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Fit the <part:plug>.\n',
        to: '      - do: Fit the <part:plug> with a drop of «machine oil».\n',
      },
    ],
  },
  found: eachVariant(function* (scene) {
    for (const { step, measure, spoken } of saidIn(scene)) {
      const { kind, ids, phrase } = spoken;
      if (kind !== 'consumable' || ids.some((id) => step.consumables.some((c) => c.id === id))) continue;
      if (isRefused(spoken) || isOfMachine(spoken, scene.machine)) continue;
      const [first = ''] = ids;
      if (isTakenAway(spoken, lookUp(scene.shop).consumable(first)?.kind)) continue;
      const alone = ids.length === 1;
      yield {
        label: step.label,
        range:
          measure === undefined
            ? wordsPlace(step, phrase)
            : measurePlace(step, measure, scene.variant.choices, 'if out'),
        message: alone
          ? `the step names \`${phrase}\` in plain words, and \`${first}\` is not among its consumables`
          : `the step names \`${phrase}\` in plain words, and nothing that is called so is among its consumables`,
        hint: alone
          ? `write \`<consumable:${first}>\` for it, or add \`use: [${first}]\` to the step`
          : `write the one that is meant: ${ids.map((id) => `\`<consumable:${id}>\``).join(', ')}`,
      };
    }
  }),
};

/** With these one takes away; everything else may be what is taken away. */
const MEANS: ReadonlySet<string> = new Set(['cleaner', 'wipe', 'abrasive']);
const TAKING =
  /\b(?:drain|drains|empty|catch|bleed|vent|release|let|wipe|wash|clean|scrape|rinse|brush|flush|remove|sample|smell|look|old|used|spilt|dirty)\b[^.]*$/;
const BY_MEANS = /\b(?:with|in|into|by|of fresh|of new)\s(?:(?:a|an|the|some|fresh|new|clean)\s){0,2}$/;

/** `Drain the gear oil.` */
function isTakenAway({ before }: Spoken, kind: string | undefined): boolean {
  return kind !== undefined && !MEANS.has(kind) && TAKING.test(before) && !BY_MEANS.test(before);
}
