/** The shop's own registers, resolved: shop, people, tools, consumables, benches. */

import type { Report } from '../diagnostics/index.ts';
import { didYouMean } from '../diagnostics/index.ts';
import {
  type At,
  type ConsumableContent,
  type Content,
  field,
  items,
  optional,
  type ShopContent,
  type ToolContent,
} from '../model/index.ts';
import { CONDITIONS, findCondition } from '../torque/index.ts';
import { formatQuantity, joinUnits, MEASURED, quantity } from '../units/index.ts';
import type { Context } from './context.ts';
import { lookUp } from './context.ts';
import { checkDate, defined, plainText, readLimit, readQuantity } from './quantities.ts';
import { READ_FROM } from './read-from.ts';
import type { Bench, Consumable, ControlRules, Person, ShopInfo, Tool } from './types.ts';

/** NIOSH lifting equation, load constant (memory). */
const LIFT_ALONE = quantity('mass', 23, 'kg', 0);
/** Above it bearing steel loses hardness (common practice). */
const HEAT_LIMIT = quantity('temperature', 120, '°C', 0);

export function resolveInfo(shop: At<ShopContent> | undefined, report: Report): ShopInfo {
  const s = shop?.value;
  const limits = shop && optional(shop, 'limits');
  const written = s?.address ?? '';
  const address = new URL(URL.canParse(written) ? written : 'https://shop.example/');
  const basePath = address.pathname.endsWith('/') ? address.pathname : `${address.pathname}/`;
  return {
    name: s?.name ?? '',
    address: `${address.origin}${basePath}`,
    basePath,
    language: s?.language ?? 'en',
    leadingTorque: s?.torque.leading ?? 'N·m',
    secondTorque: s?.torque.second ?? 'lbf·ft',
    cardFormat: s?.card.format ?? 'A4',
    safety: s?.safety ?? '',
    liftAlone: readQuantity(report, limits && optional(limits, 'lift_alone'), 'mass') ?? LIFT_ALONE,
    heatLimit: readQuantity(report, limits && optional(limits, 'heat'), 'temperature') ?? HEAT_LIMIT,
    control: resolveRules(s?.control),
    file: shop?.node.range.file ?? 'shop.yaml',
    ...defined({ storedEnergy: s?.stored_energy, report: s?.report }),
  };
}

/**
 * Defaults: receipts in 1, 3 and 7 days after DOE-STD-1073-2003, 6.3.8 (24 h, 72 h, 7 days); two temporary changes at most
 * (same, 6.3.7: two to five) for 90 days at most (common practice: 30 to 90).
 */
function resolveRules(written: ShopContent['control']): ControlRules {
  return {
    scheme: written?.revisions ?? 'letters',
    signed: written?.signed ?? [],
    receiptDays: {
      suspension: written?.receipts?.suspension ?? 1,
      major: written?.receipts?.major ?? 3,
      minor: written?.receipts?.minor ?? 7,
    },
    temporaryMost: written?.temporary?.most ?? 2,
    temporaryDays: written?.temporary?.days ?? 90,
    dueSoonDays: written?.due_soon ?? 60,
    freshDays: written?.fresh ?? 30,
    ...defined({ signedSince: written?.signed_since }),
  };
}

export function checkShop(shop: At<ShopContent> | undefined, report: Report): void {
  if (shop === undefined) return;
  const at = field(shop, 'address');
  const { value } = at;
  const url = URL.canParse(value) ? new URL(value) : undefined;
  if (url === undefined || url.search !== '' || url.hash !== '' || url.username !== '') {
    report('FLD004', at.node.range, `\`${value}\` is not an address at which a site can stand`, {
      hint: 'write it like `https://binder.example/`, without a query or a user name',
    });
  }
  const { leading, second } = shop.value.torque;
  if (leading === second) {
    report('FLD004', field(field(shop, 'torque'), 'second').node.range, 'both torque units are the same', {
      hint: 'name the other unit, which stands in brackets',
    });
  }
}

export function resolvePeople(content: Content): Map<string, Person> {
  return new Map(
    [...content.people.entries].map(([id, { value, node, keyRange }]) => [
      id,
      { id, name: value.name, role: value.role, approves: value.approves ?? [], keyRange, [READ_FROM]: node },
    ]),
  );
}

export function resolveTools(content: Content, report: Report): Map<string, Tool> {
  const out = new Map<string, Tool>();
  for (const [id, at] of content.tools.entries) {
    const v = at.value;
    const due = optional(at, 'calibration_due');
    if (due !== undefined) checkDate(report, due);
    const step = readQuantity(report, optional(at, 'step'), MEASURED);
    const range = readLimit(report, optional(at, 'range'), MEASURED);
    const end = range?.max ?? range?.min;
    if (step !== undefined && end !== undefined && step.dimension !== end.dimension)
      report(
        'FLD005',
        field(at, 'step').node.range,
        `\`${id}\` reads in steps of \`${v.step ?? ''}\`, and its range is \`${v.range ?? ''}\`: another quantity`,
        { hint: `write the \`step\` in the unit of the range, such as ${end.unit}` },
      );
    out.set(id, {
      id,
      name: joinUnits(v.name),
      kind: v.kind,
      alsoCalled: v.also_called ?? [],
      keyRange: at.keyRange,
      [READ_FROM]: at.node,
      ...defined({
        uncalibrated: plainText(v.uncalibrated),
        fixedAt: fixedAt(content, at, report),
        size: readQuantity(report, optional(at, 'size'), 'length'),
        drive: readQuantity(report, optional(at, 'drive'), 'length'),
        range,
        step: step === undefined ? undefined : { text: formatQuantity(step), si: step.si },
        lever: readQuantity(report, optional(at, 'lever'), 'length'),
        outside: readQuantity(report, optional(at, 'outside'), 'length'),
        capacity: readQuantity(report, optional(at, 'capacity'), 'mass'),
        serial: v.serial,
        calibrationDue: v.calibration_due,
        kept: v.kept,
        note: plainText(v.note),
      }),
    });
  }
  return out;
}

function fixedAt(content: Content, at: At<ToolContent>, report: Report): readonly string[] | undefined {
  const written = optional(at, 'fixed_at');
  if (written === undefined) return undefined;
  for (const b of items(written)) lookUp({ content, report }, 'bench', content.benches, b.value, b.node.range);
  return written.value;
}

export function resolveConsumables(content: Content, report: Report): Map<string, Consumable> {
  const out = new Map<string, Consumable>();
  for (const [id, at] of content.consumables.entries) {
    const v = at.value;
    const condition = optional(at, 'condition');
    if (condition !== undefined && findCondition(condition.value) === undefined) {
      report('FLD004', condition.node.range, `\`${condition.value}\` is not a joint condition`, {
        hint: conditionHint(condition.value),
      });
    }
    const pack = readQuantity(report, optional(at, 'pack'), ['mass', 'volume', 'length']);
    out.set(id, {
      id,
      name: joinUnits(v.name),
      kind: v.kind,
      hazards: (v.hazards ?? []).map(joinUnits),
      ppe: v.ppe ?? [],
      alsoCalled: v.also_called ?? [],
      keyRange: at.keyRange,
      [READ_FROM]: at.node,
      ...defined({
        number: v.number,
        pack: pack === undefined ? undefined : formatQuantity(pack),
        packSize: pack,
        cure: readQuantity(report, optional(at, 'cure'), 'time'),
        medium: v.medium,
        lead: readQuantity(report, optional(at, 'lead'), 'time'),
        condition: v.condition,
        nutFactor: readNutFactor(at, report),
        safetyData: v.safety_data,
        shelfLife: plainText(v.shelf_life),
        waste: plainText(v.waste),
        note: plainText(v.note),
      }),
    });
  }
  return out;
}

function readNutFactor(at: At<ConsumableContent>, report: Report): Consumable['nutFactor'] {
  const written = optional(at, 'nut_factor');
  if (written === undefined) return undefined;
  const { low, nominal, high, source } = written.value;
  if (low <= nominal && nominal <= high) {
    const text = [source.document, source.edition, source.place].filter((s) => s !== undefined).join(', ');
    return { band: { low, nominal, high }, source: text };
  }
  report('FLD006', written.node.range, `the nut factors ${low}, ${nominal} and ${high} do not rise`, {
    hint: 'give the lowest, the usual and the highest figure of the maker',
  });
  return undefined;
}

export function conditionHint(id: string): string {
  const ids = CONDITIONS.map((c) => c.id);
  return didYouMean(id, ids) ?? `one of: ${ids.map((c) => `\`${c}\``).join(', ')}`;
}

export function resolveBenches(context: Context): Bench[] {
  const { content } = context;
  const stated = new Set([...content.benches.entries.values()].map((at) => at.value.copy));
  let last = 0;
  /** Lowest number that no bench states. */
  const free = (): number => {
    do last += 1;
    while (stated.has(last));
    return last;
  };
  return [...content.benches.entries].map(([id, at]) => {
    const lead = optional(at, 'lead');
    if (lead !== undefined) lookUp(context, 'person', content.people, lead.value, lead.node.range);
    const seen = new Set<string>();
    for (const doc of items(field(at, 'binder'))) {
      lookUp(context, 'procedure', content.procedures, doc.value, doc.node.range);
      if (seen.has(doc.value))
        context.report('REF011', doc.node.range, `\`${doc.value}\` stands twice in this binder`, {
          hint: 'keep one of them',
        });
      seen.add(doc.value);
    }
    return {
      id,
      name: at.value.name,
      place: at.value.place,
      binder: [...seen],
      copy: at.value.copy ?? free(),
      keyRange: at.keyRange,
      [READ_FROM]: at.node,
      ...defined({ lead: at.value.lead }),
    };
  });
}
