/** Something that cures, and no waiting until it has. */

import { type Consumable, type Prose, placeOf, type Step } from '../../resolve/index.ts';
import { formatDecimal, formatQuantity, neededDecimals, type Time, valueIn } from '../../units/index.ts';
import type { Check, Fault } from '../check.ts';
import { eachVariant, lookUp } from '../rule.ts';
import { consumablePlace } from '../tol/places.ts';
import { usedIn } from './uses.ts';

const WIPE = 'wipe: { name: lint-free wipe, kind: wipe }\n';
const PASTE = `${WIPE}paste: { name: joint paste, kind: sealant, cure: 2 h, safety_data: folder S1, shelf_life: 1 year, waste: closed can }\n`;
const LAY = '      - do: Lay on the new <part:gasket>.\n';

export const cureNotWaited: Check = {
  code: 'CSM004',
  name: 'cure-not-waited',
  severity: 'error',
  title: 'A sealant, an adhesive or a threadlocker is used, and the waits that follow are shorter than its cure.',
  why: 'The joint is put under pressure or run while the sealant is still a paste: it blows out, or the screw turns.',
  sources: [
    'common practice: DOE-STD-1029-92, section 4, a step that hangs on time says so (read)',
    "cure: the consumable's own data sheet, as the register states it",
  ],
  example: {
    bad: [
      { file: 'consumables.yaml', from: WIPE, to: PASTE },
      { file: 'procedures/mw-1.yaml', from: LAY, to: `${LAY}        use: [«paste»]\n` },
    ],
    good: [
      { file: 'consumables.yaml', from: WIPE, to: PASTE },
      {
        file: 'procedures/mw-1.yaml',
        from: LAY,
        to: `${LAY}        use: [paste]\n        wait: { for: 2 h, why: the paste sets }\n`,
      },
    ],
  },
  found: eachVariant(function* ({ shop, steps, variant }) {
    if (!variant.consumables.some((c) => lookUp(shop).consumable(c.id)?.cure !== undefined)) return;
    for (const [i, step] of steps.entries()) {
      for (const { id } of usedIn(step)) {
        const consumable = lookUp(shop).consumable(id);
        if (consumable?.cure === undefined || isTakenOff(step, id)) continue;
        const fault = tooShort(consumable, consumable.cure, steps, i);
        if (fault !== undefined) yield step.label === undefined ? fault : { label: step.label, ...fault };
      }
    }
  }),
};

/** Working times are plans and no promise: only waits count, from this step to the first one that puts it to work. */
function tooShort(consumable: Consumable, cure: Time, steps: readonly Step[], at: number): Fault | undefined {
  const { id } = consumable;
  let waited = 0;
  let loaded: Step | undefined;
  for (let i = at; i < steps.length; i++) {
    const step = steps[i];
    if (step === undefined || (i > at && putsToWork(step.text))) {
      loaded = step;
      break;
    }
    waited += step.wait?.time.si ?? 0;
  }
  const step = steps[at];
  // Sums of minutes and hours are exact to far less than a second.
  if (step === undefined || waited >= cure.si - 0.5) return undefined;
  const until = loaded === undefined ? 'the end of the card' : 'the step that puts it to work';
  // Step numbers differ from card to card: the same fault of two cards is reported once.
  return {
    range: consumablePlace(step, id),
    message: `\`${id}\` cures in ${formatQuantity(cure)}, and ${waited === 0 ? 'nothing waits' : `the waits come to ${inUnitOf(cure, waited)}`} from this step to ${until}`,
    hint: `write \`wait: { for: ${formatQuantity(cure)}, why: … }\` in this step or a later one${loaded === undefined ? '' : ' that comes before it is put to work'}`,
    related: [
      { range: placeOf(consumable, 'cure'), message: `\`${id}\` cures in ${formatQuantity(cure)}` },
      ...(loaded === undefined ? [] : [{ range: placeOf(loaded, 'do'), message: 'puts it to work' }]),
    ],
  };
}

function inUnitOf(cure: Time, seconds: number): string {
  const value = valueIn({ ...cure, si: seconds, unit: 's', value: seconds }, cure.unit);
  return `${formatDecimal(value, neededDecimals(value, 2))}\u00a0${cure.unit}`;
}

const MACHINE =
  '(?:pumps?|motors?|engines?|fans?|compressors?|winch(?:es)?|cranes?|packs?|gearbox(?:es)?|drives?|machines?|units?|generators?|turbines?|thrusters?|mixers?)';
const TO_WORK = new RegExp(
  `\\b(?:run|start|jog)(?: up)? (?:the|both|each) (?:[\\w-]+ ){0,2}?${MACHINE}\\b|\\b(?:has|have) run\\b|\\b(?:hold|put|apply|raise|build)\\b[^.]*\\btest pressure\\b|\\bpump up\\b|\\bpressuri[sz]e\\b`,
  'i',
);
const putting = new WeakMap<Prose, boolean>();

/** `Run the fan for an hour.` `Hold the test pressure.` In another language, the end of the card is what counts. */
function putsToWork(prose: Prose): boolean {
  const known = putting.get(prose);
  if (known !== undefined) return known;
  const made = TO_WORK.test(prose.map((p) => p.runs.map((r) => r.text).join('')).join(' '));
  putting.set(prose, made);
  return made;
}

const OFF = /^(?:clean|scrape|wash|wipe|brush|remove|peel|soften|dissolve|break|chase|pick|heat)\b/i;

/** `Scrape the old <consumable:sealant> off.` */
function isTakenOff(step: Step, id: string): boolean {
  const listed = step.lubricate?.id === id || step.consumables.some((c) => c.id === id && c.quantity !== undefined);
  return !listed && OFF.test(step.text[0]?.runs[0]?.text ?? '');
}
