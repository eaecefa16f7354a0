/** The search box: loads the index when it gets the focus, shows a plain list of links, keeps the query in the address. */

import type { Finder } from '../../render/search/find.ts';
import { queryInHash } from './mark-found.ts';
import { renderFindings } from './results.ts';

let loading: Promise<Finder> | undefined;

/** Address of the site's root, with a trailing slash. */
function rootUrl(): URL {
  return new URL(document.documentElement.dataset['root'] ?? './', location.href);
}

function loadFinder(): Promise<Finder> {
  loading ??= (async () => {
    const [{ makeFinder }, response] = await Promise.all([
      import('../../render/search/find.ts'),
      fetch(new URL('search-index.json', rootUrl())),
    ]);
    if (!response.ok) throw new Error(String(response.status));
    return makeFinder(await response.json());
  })();
  // A failed load may be tried again with the next key.
  loading.catch(() => {
    loading = undefined;
  });
  return loading;
}

/** Arrow keys walk through the links; the box stands before the first one. */
function walk(event: KeyboardEvent, input: HTMLInputElement, results: HTMLElement): void {
  if (event.key === 'Escape' && event.target !== input) {
    input.focus();
    return;
  }
  if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
  const stops: HTMLElement[] = [input, ...results.querySelectorAll<HTMLElement>('a')];
  const at = stops.indexOf(document.activeElement as HTMLElement);
  const next = stops[at + (event.key === 'ArrowDown' ? 1 : -1)];
  if (at === -1 || next === undefined) return;
  event.preventDefault();
  next.focus();
}

/** Brings one search form to life. */
export function attachFind(form: HTMLFormElement): void {
  const input = form.querySelector<HTMLInputElement>('input[type="search"]');
  const results = form.querySelector<HTMLElement>('[data-results]');
  const status = form.querySelector<HTMLElement>('[data-status]');
  if (input === null || results === null || status === null) return;
  const stays = form.dataset['stay'] !== undefined;
  const questions = stays ? document.querySelector<HTMLElement>('[data-questions]') : null;
  let asked = 0;

  const show = async () => {
    const query = input.value.trim();
    const mine = ++asked;
    if (questions !== null) questions.hidden = query !== '';
    if (query === '') {
      results.hidden = true;
      results.replaceChildren();
      status.textContent = '';
      return;
    }
    try {
      const finder = await loadFinder();
      if (mine !== asked) return;
      const { findings: found, instead } = finder.find(query, stays ? 30 : 10);
      results.hidden = found.length === 0 && stays;
      results.replaceChildren(...renderFindings(found, instead ?? query, rootUrl()));
      const none = `Nothing found for “${query}”.`;
      const other = instead === undefined ? '' : ` for “${instead}”`;
      status.textContent = found.length === 0 ? none : `${found.length} found${other}`;
      if (found.length === 0 && !stays) results.textContent = none;
    } catch {
      status.textContent = 'The search index could not be loaded. Use the registers.';
    }
  };

  input.addEventListener('focus', () => {
    loadFinder().catch(() => undefined);
  });
  input.addEventListener('input', () => {
    if (stays)
      history.replaceState(
        null,
        '',
        input.value.trim() === '' ? location.pathname : `#find=${encodeURIComponent(input.value.trim())}`,
      );
    void show();
  });
  form.addEventListener('keydown', (event) => walk(event, input, results));
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    if (stays) {
      const first = results.querySelector<HTMLAnchorElement>('a');
      if (first !== null) first.click();
      return;
    }
    const url = rootUrl();
    url.hash = `find=${encodeURIComponent(input.value.trim())}`;
    location.href = url.href;
  });
  if (!stays) {
    form.addEventListener('focusout', (event) => {
      if (!(event.relatedTarget instanceof Node) || !form.contains(event.relatedTarget)) results.hidden = true;
    });
    return;
  }
  const arrive = () => {
    const query = queryInHash(location.hash);
    if (query === '' || query === input.value.trim()) return;
    input.value = query;
    void show();
  };
  arrive();
  window.addEventListener('hashchange', arrive);
  // The focus may have been set before this script ran.
  if (document.activeElement === input) loadFinder().catch(() => undefined);
}
