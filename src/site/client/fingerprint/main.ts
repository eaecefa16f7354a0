/** Answers a fingerprint that somebody typed: which card bears it, and what to do with it. */

import { adviceOf, findCards, loadCards, type PrintedCard, readFingerprint, SHAPES } from '../control/cards.ts';
import { el } from '../worksheet/dom.ts';

function answer(card: PrintedCard, site: string): HTMLElement {
  const label = card.label === '' ? '' : ` (${card.label})`;
  const rev = card.rev === '' ? '' : ` Rev\u00a0${card.rev}`;
  return el(
    'div',
    { class: `print-card is-${card.standing.replaceAll(' ', '-')}` },
    el(
      'p',
      { class: 'print-word' },
      el('span', { 'aria-hidden': 'true' }, SHAPES[card.standing]),
      ` ${card.standing.toUpperCase()}`,
    ),
    el('p', { class: 'print-what' }, `${card.doc}${rev}${label}`),
    el('p', {}, adviceOf(card.standing)),
    el('p', {}, el('a', { class: 'action', href: new URL(`${card.path}/`, site).href }, 'Open its page')),
  );
}

function unknown(): HTMLElement {
  return el(
    'div',
    { class: 'print-card is-unknown' },
    el('p', { class: 'print-word' }, el('span', { 'aria-hidden': 'true' }, SHAPES.unknown), ' UNKNOWN'),
    el('p', {}, 'No card of this shop bears it: take it to quality. Do not work from it.'),
  );
}

function attach(form: HTMLFormElement, place: HTMLElement): void {
  const input = form.querySelector('input');
  if (input === null) return;
  const list = new URL(form.dataset['fingerprints'] ?? '', location.href).href;
  const site = new URL(form.dataset['site'] ?? '', location.href).href;
  form.hidden = false;
  const show = async (asked: boolean): Promise<void> => {
    const typed = input.value;
    if (readFingerprint(typed) === undefined) {
      const words = 'A fingerprint has eight characters, 0 to 9 and A to F. Look again at the foot of the card.';
      place.replaceChildren(...(asked && typed.trim() !== '' ? [el('p', { class: 'print-fault' }, words)] : []));
      return;
    }
    try {
      const found = findCards(typed, await loadCards(list));
      if (input.value !== typed) return;
      place.replaceChildren(...(found.length === 0 ? [unknown()] : found.map((card) => answer(card, site))));
    } catch {
      place.replaceChildren(
        el('p', { class: 'print-fault' }, 'The list of fingerprints could not be loaded. Try again.'),
      );
    }
  };
  input.addEventListener('input', () => void show(false));
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    void show(true);
  });
  input.addEventListener('focus', () => void loadCards(list).catch(() => undefined), { once: true });
}

const form = document.querySelector<HTMLFormElement>('form[data-fingerprints]');
const place = document.querySelector<HTMLElement>('[data-fingerprint-answer]');
if (form !== null && place !== null) attach(form, place);
