/** An order list drawn into the page; text always as text, so that no name can become markup. */

import { counted, jobsText, leadText, type OrderLine, type OrderList } from '../../../lists/index.ts';
import { el } from '../worksheet/dom.ts';
import { orderRow } from './row.ts';

interface Scene {
  /** Way from this page to the root of the site. */
  readonly root: string;
  readonly machineName: (id: string) => string;
}

/** `14 lines for 5 jobs; the longest delivery is 6 weeks.` */
export function summaryText({ jobs, lines }: OrderList): string {
  const all = jobs.reduce((sum, j) => sum + j.count, 0);
  if (all === 0) return 'No jobs yet.';
  const longest = lines[0]?.lead;
  const delivery =
    longest === undefined ? 'no delivery times are stated' : `the longest delivery is ${leadText(longest)}`;
  return `${counted(lines.length, 'line')} for ${counted(all, 'job')}; ${delivery}.`;
}

/** The jobs, what is to be bought, what to look for in the stock, and what nobody can reckon. */
export function showOrder(list: OrderList, scene: Scene): readonly Node[] {
  if (list.jobs.length === 0) return [];
  return [
    el('p', { class: 'order-jobs-text' }, el('strong', {}, 'For'), ` ${list.jobs.map(jobsText).join(', ')}.`),
    ...(list.lines.length === 0
      ? [el('p', {}, 'Nothing is to be bought for these jobs.')]
      : [table(list.lines, scene)]),
    ...stock(list, scene),
    ...unrated(list, scene),
  ];
}

function table(lines: readonly OrderLine[], scene: Scene): HTMLElement {
  // A column in which nobody has stated anything says nothing.
  const hasLead = lines.some((l) => l.lead !== undefined);
  const heads = ['Order', 'What', 'Needed', ...(hasLead ? ['Delivery'] : []), 'Asked for by'];
  return el(
    'div',
    { class: 'register' },
    el(
      'table',
      { class: 'order-table' },
      el('caption', { class: 'hidden' }, 'Order list'),
      el('thead', {}, el('tr', {}, ...heads.map((h) => el('th', { scope: 'col' }, h)))),
      el('tbody', {}, ...lines.map((line) => row(line, scene, hasLead))),
    ),
  );
}

function row(line: OrderLine, scene: Scene, hasLead: boolean): HTMLElement {
  const r = orderRow(line, scene.machineName);
  const asking = r.for.flatMap(({ text, count, to }, i) => [
    ...(i === 0 ? [] : [', ']),
    el('a', { href: `${scene.root}${to}` }, text),
    ` ×\u00a0${count}`,
  ]);
  return el(
    'tr',
    {},
    el('td', { 'data-label': 'Order', class: 'order-count' }, el('span', {}, el('b', {}, r.order), ` ${r.unit}`)),
    el(
      'th',
      { scope: 'row' },
      el('a', { href: `${scene.root}${r.to}` }, r.name),
      ...[r.number, ...r.notes].filter((n) => n !== '').map((n) => el('small', {}, n)),
    ),
    el('td', { 'data-label': 'Needed' }, el('span', {}, r.need)),
    ...(hasLead ? [leadCell(r.lead)] : []),
    el('td', { 'data-label': 'Asked for by' }, el('span', {}, ...asking)),
  );
}

function leadCell(lead: string): HTMLElement {
  const shown = lead === '' ? el('span', { class: 'soft' }, 'not stated') : el('span', {}, lead);
  return el('td', { 'data-label': 'Delivery', class: 'nowrap' }, shown);
}

/** A fold with one line of names each: they carry no number to order. */
function names(title: string, why: string, lines: readonly OrderLine[], scene: Scene, more: (l: OrderLine) => string) {
  if (lines.length === 0) return [];
  const items = lines.map((line) => {
    const r = orderRow(line, scene.machineName);
    return el(
      'li',
      {},
      el('a', { href: `${scene.root}${r.to}` }, r.name),
      el('span', { class: 'soft' }, ` ${[r.number, more(line)].filter((w) => w !== '').join(' · ')}`),
    );
  });
  return [
    el(
      'details',
      { class: 'fold', open: '' },
      el('summary', {}, el('h3', {}, title), el('span', { class: 'soft' }, String(lines.length))),
      el('p', { class: 'soft small' }, why),
      el('ul', { class: 'plain order-names' }, ...items),
    ),
  ];
}

function stock({ stock: lines }: OrderList, scene: Scene): readonly Node[] {
  const why = 'Used as needed: no step states an amount, so that none is ordered here.';
  return names('Look whether it is in stock', why, lines, scene, (l) =>
    l.kind === 'consumable' ? counted(l.asNeeded, 'use') : '',
  );
}

function unrated({ unrated: lines }: OrderList, scene: Scene): readonly Node[] {
  const why = 'Replaced when worn. The parts list does not say how many usually are, so that none is ordered here.';
  return names('Inspected, no usual share stated', why, lines, scene, (l) =>
    l.kind === 'part' ? `${l.inspected}\u00a0inspected` : '',
  );
}
