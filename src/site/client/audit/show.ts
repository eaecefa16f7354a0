/** Puts the outcome of an audit into the page: a word with a shape beside each card, and what must come out. */

import { SHAPES } from '../control/cards.ts';
import { el } from '../worksheet/dom.ts';
import type { FoundRow, OtherCard, Outcome } from './compare.ts';

function word(shape: string, text: string): readonly Node[] {
  return [el('span', { 'aria-hidden': 'true' }, shape), document.createTextNode(` ${text}`)];
}

/** `Rev B (Large)`; what was typed for a card that nobody knows. */
function cardText({ path, mark }: OtherCard): string {
  if (mark.standing === 'unknown') return path;
  const label = mark.label === '' ? '' : ` (${mark.label})`;
  return `${mark.doc}${mark.rev === '' ? ' draft' : ` Rev\u00a0${mark.rev}`}${label}`;
}

function rowWords({ state, mark }: FoundRow): readonly Node[] {
  if (state === 'current') return word(SHAPES.current, 'current');
  if (state === 'missing') return word(SHAPES.missing, 'not seen yet');
  const rev = mark === undefined || mark.rev === '' ? '' : `: Rev\u00a0${mark.rev} hangs here`;
  return word(SHAPES[state], `${state}${rev}`);
}

function verdict({ kind, mark }: OtherCard): string {
  if (mark.standing === 'unknown') return 'No card of this shop bears it: take it to quality';
  if (mark.standing === 'suspended') return 'Suspended: take it out, do not use it';
  const why = kind === 'strange' ? 'Not of this binder' : `${mark.standing}`;
  return `${why.charAt(0).toUpperCase()}${why.slice(1)}: take it out`;
}

/** Fills the state cells of the table. */
export function showRows(table: HTMLElement, rows: readonly FoundRow[] | undefined): void {
  for (const cell of table.querySelectorAll<HTMLElement>('[data-state-of]')) {
    const row = rows?.find((r) => r.card.path === cell.dataset['stateOf']);
    cell.replaceChildren(...(row === undefined ? [] : rowWords(row)));
    cell.className = row === undefined ? '' : `found-state is-${row.state.replaceAll(' ', '-')}`;
  }
}

/** Lists what must come out, each with a way to take the mark back. */
export function showOthers(place: HTMLElement, others: readonly OtherCard[], remove: (path: string) => void): void {
  const items = others.map((other) => {
    const button = el(
      'button',
      { type: 'button', class: 'plain-button', 'aria-label': `Undo: ${cardText(other)}` },
      'Undo',
    );
    button.addEventListener('click', () => remove(other.path));
    const shape = other.kind === 'strange' ? SHAPES.strange : SHAPES[other.mark.standing];
    return el(
      'li',
      {},
      el(
        'span',
        { class: 'other-card' },
        el('strong', {}, el('span', { 'aria-hidden': 'true' }, shape), ` ${cardText(other)}`),
        el('small', {}, verdict(other)),
      ),
      button,
    );
  });
  place.hidden = items.length === 0;
  place.querySelector('ul')?.replaceChildren(...items);
}

/** `3 of 9 current, 1 wrong, 5 not seen yet; 1 strange card`. */
export function summary({ rows, current, wrong, missing, strange }: Outcome): string {
  const parts = [`${current} of ${rows.length} current`, `${wrong} wrong`, `${missing} not seen yet`];
  return `${parts.join(', ')}; ${strange === 1 ? '1 strange card' : `${strange} strange cards`}.`;
}
