/** The numbers of jobs: read, filled, filtered, and faults put under their fields. */

import { MOST_JOBS, readCount } from './address.ts';

/** Capitals and accents aside. The search's own folding would bring its whole cutting of words into this page. */
function fold(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
}

interface Row {
  readonly item: HTMLElement;
  readonly input: HTMLInputElement;
  readonly fault: HTMLElement;
  readonly words: string;
}

export class JobsForm {
  private readonly rows = new Map<string, Row>();

  constructor(root: HTMLElement) {
    for (const item of root.querySelectorAll<HTMLElement>('[data-card]')) {
      const input = item.querySelector('input');
      const fault = item.querySelector<HTMLElement>('.order-fault');
      if (input === null || fault === null) throw new RangeError('a card of the form lacks its field');
      this.rows.set(input.name, { item, input, fault, words: fold(item.textContent ?? '') });
    }
  }

  /** Jobs by card, each 1 or more; a field that holds no number of jobs says so and counts for none. */
  read(): ReadonlyMap<string, number> {
    const jobs = new Map<string, number>();
    for (const [card, { item, input, fault }] of this.rows) {
      const count = input.validity.badInput ? undefined : readCount(input.value);
      fault.hidden = count !== undefined;
      fault.textContent = count === undefined ? `A whole number from 0 to ${MOST_JOBS}.` : '';
      if (count === undefined) input.setAttribute('aria-invalid', 'true');
      else input.removeAttribute('aria-invalid');
      item.classList.toggle('chosen', count !== 0);
      if (count !== undefined && count > 0) jobs.set(card, count);
    }
    return jobs;
  }

  fill(jobs: ReadonlyMap<string, number>): void {
    for (const [card, { input }] of this.rows) input.value = String(jobs.get(card) ?? '');
  }

  /** Shows the cards that hold every word, and those with jobs whatever is wanted. Returns how many are shown. */
  filter(wanted: string): number {
    const parts = fold(wanted)
      .split(/\s+/u)
      .filter((w) => w !== '');
    let shown = 0;
    for (const { item, input, words } of this.rows.values()) {
      item.hidden = input.value === '' && !parts.every((w) => words.includes(w));
      if (!item.hidden) shown += 1;
    }
    return shown;
  }

  get size(): number {
    return this.rows.size;
  }
}
