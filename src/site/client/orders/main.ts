/** Brings the page of orders to life: jobs, address, list and file follow each other. */

import { ORDER_FILE, type OrderBook, orderCsv, orderList } from '../../../lists/index.ts';
import { el, part, words } from '../worksheet/dom.ts';
import { type AddressFault, decodeJobs, encodeJobs } from './address.ts';
import { JobsForm } from './form.ts';
import { showOrder, summaryText } from './show.ts';

const NOBODY: ReadonlyMap<string, number> = new Map();

function attach(root: HTMLElement, book: OrderBook): void {
  const form = new JobsForm(part(root, 'form'));
  const cards = book.cards.map((c) => c.card);
  const machines = new Map(book.cards.map((c) => [c.machine, c.machineName]));
  const scene = {
    root: document.documentElement.dataset['root'] ?? '',
    machineName: (id: string) => machines.get(id) ?? id,
  };
  let csv = '';

  const show = (faults: readonly AddressFault[]): ReadonlyMap<string, number> => {
    const jobs = form.read();
    const list = orderList(book, jobs);
    const isEmpty = list.jobs.length === 0;
    csv = orderCsv(list, scene.machineName);
    for (const place of root.querySelectorAll('[data-summary]')) place.textContent = summaryText(list);
    part(root, 'list').replaceChildren(...showOrder(list, scene));
    part(root, 'none').hidden = !isEmpty;
    part(root, 'faults').replaceChildren(...faults.map(faultLine));
    for (const name of ['download', 'copy-address', 'start-again'])
      part(root, name).toggleAttribute('disabled', isEmpty);
    return jobs;
  };
  const arrive = (): void => {
    const { jobs, faults } = decodeJobs(location.search, new Set(cards));
    form.fill(jobs);
    show(faults);
  };
  /** `keepBefore`: the way back leads to the jobs that stood here before. */
  const follow = (keepBefore = false): void => {
    const query = encodeJobs(show([]), cards);
    const address = query === '' ? location.pathname : `${location.pathname}?${query}`;
    if (keepBefore) history.pushState(null, '', address);
    else history.replaceState(null, '', address);
  };

  part(root, 'form').addEventListener('input', (event) => {
    part(root, 'copied').textContent = '';
    const { target } = event;
    if (!(target instanceof HTMLInputElement)) return;
    if (target.type !== 'search') {
      follow();
      return;
    }
    const shown = form.filter(target.value);
    part(root, 'filtered').textContent = target.value.trim() === '' ? '' : `${shown} of ${form.size}`;
  });
  part(root, 'form').addEventListener('submit', (event) => event.preventDefault());
  part(root, 'download').addEventListener('click', () => download(csv));
  part(root, 'start-again').addEventListener('click', () => {
    form.fill(NOBODY);
    follow(true);
  });
  part(root, 'copy-address').addEventListener('click', () => {
    void navigator.clipboard.writeText(location.href).then(
      () => tell(root, 'Copied.'),
      () => tell(root, 'The browser refuses: copy it from its address line.'),
    );
  });
  window.addEventListener('popstate', arrive);
  arrive();
}

function tell(root: HTMLElement, text: string): void {
  part(root, 'copied').textContent = text;
}

function faultLine({ problem, hint }: AddressFault): HTMLElement {
  return el('p', { class: 'order-fault' }, el('strong', {}, ...words(problem)), ': ', ...words(hint), '.');
}

/** Hands the list to the browser as a file; nothing is sent anywhere. */
function download(csv: string): void {
  const address = URL.createObjectURL(new Blob([csv], { type: 'text/csv;charset=utf-8' }));
  const link = el('a', { href: address, download: ORDER_FILE });
  link.click();
  // The browser has taken hold of the file by then.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

async function start(root: HTMLElement): Promise<void> {
  try {
    const answer = await fetch(root.dataset['book'] ?? '');
    if (!answer.ok) throw new Error(`answer ${answer.status}`);
    attach(root, (await answer.json()) as OrderBook);
    root.dataset['ready'] = '';
  } catch {
    part(root, 'none').replaceChildren(
      'The needs of the cards could not be loaded. Load the page again, or open the list of each procedure.',
    );
  }
}

const root = document.querySelector<HTMLElement>('[data-orders]');
if (root !== null) void start(root);
