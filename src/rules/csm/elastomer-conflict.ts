/** A lubricant or cleaner on a seal whose rubber does not stand it. */

import { type Consumable, type Part, placeOf, type Step } from '../../resolve/index.ts';
import type { Check, Fault } from '../check.ts';
import { eachVariant, lookUp, type Scene } from '../rule.ts';
import { consumablePlace, refersTo } from '../tol/places.ts';
import { textBehind, verdictOf } from './elastomers.ts';
import { usedIn } from './uses.ts';

const GASKET = 'gasket: { name: cover gasket, kind: gasket, quantity: 1, number: MW-101,';
const LAY = '      - do: Lay on the new <part:gasket>.\n        fit: [gasket, cover]\n';

export const elastomerConflict: Check = {
  code: 'CSM003',
  name: 'elastomer-conflict',
  severity: 'warning',
  title: 'A step brings a consumable onto a seal whose rubber does not stand it.',
  why: 'EPDM that met oil swells out of its groove within days; the joint was tight when the card was signed.',
  sources: [
    'general table of elastomers and media (memory, some cells from texts that were read: each finding says which)',
    'Materials Research Express, 2018: EPDM degraded in mineral oil, FKM held (abstract read)',
  ],
  example: {
    bad: [
      { file: 'machines/pump.yaml', from: GASKET, to: `${GASKET} elastomer: EPDM,` },
      { file: 'procedures/mw-1.yaml', from: LAY, to: `${LAY}        use: [«oil»]\n` },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: GASKET,
        to: `${GASKET} elastomer: EPDM, resists: { oil: { document: Gasket data sheet, edition: "2", place: page 3 } },`,
      },
      { file: 'procedures/mw-1.yaml', from: LAY, to: `${LAY}        use: [oil]\n` },
    ],
  },
  found: eachVariant(function* (scene) {
    if (scene.machine?.parts.some((p) => p.elastomer !== undefined) !== true) return;
    for (const step of scene.steps) if (step.consumables.length > 0) yield* conflictsOf(step, scene);
  }),
};

function* conflictsOf(step: Step, scene: Scene): Generator<Fault> {
  const used = usedIn(step);
  const seals = used.length === 0 ? [] : touchedSeals(step, scene);
  if (seals.length === 0) return;
  for (const { id } of used) {
    const consumable = lookUp(scene.shop).consumable(id);
    if (consumable === undefined || staysOnThread(step, id)) continue;
    const harmed = new Map<string, Part[]>();
    for (const part of seals) {
      const { elastomer = '' } = part;
      if (part.resists?.includes(id) || verdictOf(elastomer, consumable.medium ?? '') !== 'no') continue;
      harmed.set(elastomer, [...(harmed.get(elastomer) ?? []), part]);
    }
    for (const [elastomer, parts] of harmed) yield conflict(step, consumable, elastomer, parts, scene);
  }
}

function conflict(
  step: Step,
  consumable: Consumable,
  elastomer: string,
  parts: readonly Part[],
  { shop }: Scene,
): Fault {
  const { id, medium = '' } = consumable;
  const names = parts.map((p) => `\`${p.id}\``).join(', ');
  const text = textBehind(elastomer, medium);
  const others = shop.consumables.filter(
    (c) => c.kind === consumable.kind && c.medium !== undefined && verdictOf(elastomer, c.medium) === 'ok',
  );
  const instead =
    others.length === 0
      ? 'use one that it stands'
      : `use one that it stands, such as ${others.map((c) => `\`${c.id}\``).join(', ')}`;
  return {
    label: step.label,
    range: consumablePlace(step, id),
    message: `${elastomer} does not stand ${medium}: \`${id}\` comes onto ${names} (${text ?? 'general table, memory'})`,
    hint: `${instead}; where the seal's maker allows this one, write \`resists: { ${id}: … }\` with the source beside \`elastomer\``,
    related: [
      ...parts.map((p) => ({ range: placeOf(p, 'elastomer'), message: `\`${p.id}\` is ${elastomer}` })),
      { range: placeOf(consumable, 'medium'), message: `\`${id}\` is ${medium}` },
    ],
  };
}

/** Seals that the step fits, names, or takes off to be used again, each with those inside a sub-assembly. */
function touchedSeals(step: Step, { machine }: Scene): readonly Part[] {
  if (machine === undefined) return [];
  const thrownAway = new Set(step.remove.filter((m) => m.fate === 'discard').map((m) => m.id));
  const touched = new Set<string>();
  const touch = (id: string): void => {
    if (touched.has(id) || thrownAway.has(id)) return;
    touched.add(id);
    for (const inner of machine.parts.find((p) => p.id === id)?.madeOf ?? []) touch(inner);
  };
  for (const move of [...step.fit, ...step.remove]) touch(move.id);
  for (const paragraph of step.text) for (const { ref } of paragraph.runs) if (ref?.kind === 'part') touch(ref.id);
  return machine.parts.filter((p) => p.elastomer !== undefined && touched.has(p.id));
}

const FASTENER = /\b(?:threads?|heads?|nuts?|studs?|screws?|bolts?|washers?|shanks?)\b/i;
const SEAL = /\b(?:seals?|o-?rings?|gaskets?|rings?|lips?|rubber|bellows|packings?|grooves?|cups?)\b/i;

/** What goes on a thread is kept off the seal beside it. */
function staysOnThread(step: Step, id: string): boolean {
  const where = step.lubricate?.id === id ? step.lubricate.where : '';
  return FASTENER.test(where) && !SEAL.test(where) && !refersTo(step.text, 'consumable', id);
}
