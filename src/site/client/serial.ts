/** Answers a serial number on the page of a document: the card it takes, or that none holds for it. */

import { answerSerial, type SerialRange } from '../serials.ts';

/** Shows the form, which does nothing without a script, and answers while a number is typed. */
export function attachSerial(form: HTMLFormElement): void {
  const ranges = JSON.parse(form.dataset['serial'] ?? '[]') as SerialRange[];
  const input = form.querySelector('input');
  const place = form.querySelector<HTMLElement>('[data-serial-answer]');
  if (input === null || place === null) return;
  form.hidden = false;
  const show = (): string | undefined => {
    const answer = answerSerial(input.value, ranges);
    place.replaceChildren();
    place.className = answer?.kind === 'none' ? 'no-card' : '';
    if (answer === undefined) return undefined;
    if (answer.kind === 'none') {
      place.textContent = answer.text;
      return undefined;
    }
    const link = document.createElement('a');
    link.href = answer.page;
    link.textContent = answer.text;
    place.append(link);
    return answer.page;
  };
  input.addEventListener('input', show);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const page = show();
    if (page !== undefined) location.assign(page);
  });
}
