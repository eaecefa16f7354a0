/** The words of the lists: the same on the page, on paper and in the file for a spreadsheet. */

import type { Amount } from '../units/index.ts';
import { formatDecimal, formatQuantity, NO_BREAK_SPACE, neededDecimals, type Time } from '../units/index.ts';
import type { CardNeeds } from './needs.ts';
import type { ConsumableLine, Jobs, KitLine, OrderLine, PartLine } from './order-types.ts';

/** `1 step`, `12 steps`; number and noun joined by a no-break space. */
export function counted(n: number, one: string, many: string = `${one}s`): string {
  return `${n}${NO_BREAK_SPACE}${n === 1 ? one : many}`;
}

/** `6 weeks`, `1 week`, `10 days`, as its author wrote it. */
export function leadText(lead: Time | undefined): string {
  if (lead === undefined) return '';
  const isOne = lead.value === 1;
  if (lead.unit === 'weeks') return isOne ? formatQuantity(lead).replace(/weeks$/u, 'week') : formatQuantity(lead);
  return lead.unit === 'd' ? formatQuantity(lead).replace(/d$/u, isOne ? 'day' : 'days') : formatQuantity(lead);
}

/** `120 g`, `60 g + 5 ml`, `120 g, and as needed`, `as needed`. */
export function amountText(amounts: readonly Amount[], asNeeded: number): string {
  if (amounts.length === 0) return asNeeded > 0 ? 'as needed' : '';
  return `${amounts.map((a) => formatQuantity(a)).join(' + ')}${asNeeded > 0 ? ', and as needed' : ''}`;
}

/** `OF-204 Large`: a card as people call it. */
export function cardText({ doc, label }: Pick<CardNeeds, 'doc' | 'label'>): string {
  return label === '' ? doc : `${doc} ${label}`;
}

/** `OF-204 Large × 3`. */
export function jobsText({ card, count }: Jobs): string {
  return `${cardText(card)} ×${NO_BREAK_SPACE}${count}`;
}

/** How many are ordered, and of what: `2` `kits`, `3` `packs of 500 g`; empty number where the buyer must work it out. */
export function orderText(line: OrderLine): { readonly order: string; readonly unit: string } {
  if (line.kind === 'kit') return { order: String(line.order), unit: line.order === 1 ? 'kit' : 'kits' };
  if (line.kind === 'part') return { order: String(line.order), unit: line.order === 1 ? 'piece' : 'pieces' };
  if (line.order === undefined) return { order: '', unit: '' };
  const pack = line.pack === undefined ? '' : ` of ${formatQuantity(line.pack)}`;
  return { order: String(line.order), unit: `${line.order === 1 ? 'pack' : 'packs'}${pack}` };
}

/** Where the number comes from: `180 g`, `8 new`, `2.4 of 24 inspected at their usual share`. */
export function needText(line: OrderLine): string {
  if (line.kind === 'kit')
    return counted(
      line.for.reduce((sum, j) => sum + j.count, 0),
      'job',
    );
  if (line.kind === 'part') return partNeedText(line);
  return amountText(line.amounts, line.asNeeded);
}

function partNeedText({ fresh, inspected, expected, covered }: PartLine): string {
  const shown = (n: number): string => formatDecimal(n, neededDecimals(n, 2));
  return [
    fresh > 0 ? `${fresh} fitted new` : '',
    expected > 0 ? `${shown(expected)} expected of ${inspected} inspected` : '',
    covered > 0 ? `${shown(covered)} left over in kits` : '',
  ]
    .filter((w) => w !== '')
    .join(', ');
}

/** What the buyer must know besides: kit contents that differ, amounts that no pack answers. */
export function noteText(line: OrderLine): string {
  if (line.kind === 'kit') return kitNote(line);
  if (line.kind === 'consumable') return packNote(line);
  return '';
}

function kitNote({ differs, for: jobs }: KitLine): string {
  if (differs.length === 0) return '';
  const names = jobs.map((j) => cardText(j.card));
  return `contents differ between ${names.join(', ')}: name the variant in the order`;
}

function packNote({ amounts, pack, order }: ConsumableLine): string {
  if (order !== undefined || amounts.length === 0) return '';
  if (pack === undefined) return 'no pack size stated: order the amount';
  return `sold in packs of ${formatQuantity(pack)}, used in another measure: work out the packs`;
}

/** `Kit`, `Part`, `Consumable`. */
export function kindText(kind: OrderLine['kind']): string {
  return { kit: 'Kit', part: 'Part', consumable: 'Consumable' }[kind];
}
