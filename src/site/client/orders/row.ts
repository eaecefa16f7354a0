/** One line of an order as a page shows it: built pages and the browser draw the same. */

import {
  cardText,
  type KitLine,
  leadText,
  needText,
  noteText,
  type OrderLine,
  orderText,
} from '../../../lists/index.ts';
import { capital, joinUnits, list, paths } from '../../../render/html/index.ts';

export interface OrderRow {
  /** Empty where the buyer must work it out. */
  readonly order: string;
  readonly unit: string;
  readonly name: string;
  /** Page of the thing, from the root of the site. */
  readonly to: string;
  readonly number: string;
  readonly need: string;
  /** Empty when nobody has stated it. */
  readonly lead: string;
  readonly notes: readonly string[];
  /** Cards that ask for it, each with its jobs and its page. */
  readonly for: readonly { readonly text: string; readonly count: number; readonly to: string }[];
}

/** machineName: the name of a machine by its id. */
export function orderRow(line: OrderLine, machineName: (id: string) => string): OrderRow {
  const { order, unit } = orderText(line);
  return {
    order: order === '' && line.kind === 'consumable' ? '?' : order,
    unit,
    name: capital(joinUnits(line.name)),
    to: pageOf(line),
    number: [line.number ?? '', line.kind === 'consumable' ? '' : capital(machineName(line.machine))]
      .filter((w) => w !== '')
      .join(' · '),
    need: needText(line),
    lead: leadText(line.lead),
    notes: [noteText(line), ...(line.kind === 'kit' ? kitNotes(line) : [])].filter((n) => n !== '').map(sentence),
    for: line.for.map(({ card, count }) => ({ text: cardText(card), count, to: paths.procedure(card.slug) })),
  };
}

function pageOf(line: OrderLine): string {
  if (line.kind === 'consumable') return paths.consumable(line.consumable);
  return line.kind === 'part' ? paths.part(line.machine, line.part) : paths.machine(line.machine);
}

/** A kit lists its contents, so that nobody orders them a second time; what a job leaves over is named. */
function kitNotes({ contents, differs }: KitLine): readonly string[] {
  if (contents.length === 0 || differs.length > 0) return [];
  const over = contents.filter((c) => c.leftOver > 0);
  return [
    `holds ${list(contents.map((c) => `${c.inKit}\u00a0×\u00a0${c.name}`))}`,
    over.length === 0 ? '' : `left over from each job: ${list(over.map((c) => `${c.leftOver}\u00a0×\u00a0${c.name}`))}`,
  ];
}

function sentence(text: string): string {
  return capital(joinUnits(text));
}
