/** Marks the steps that a search was about, when a page is opened from its results. */

import { indexTerms, queryTerms } from '../../render/search/tokens.ts';

/** The query in `#find=...`; empty when there is none or it cannot be decoded. */
export function queryInHash(hash: string): string {
  const match = /^#find=(.*)$/u.exec(hash);
  try {
    return decodeURIComponent(match?.[1] ?? '');
  } catch {
    return '';
  }
}

/** A term is met by itself or, for words, by what begins with it. */
function meets(term: string, terms: ReadonlySet<string>): boolean {
  if (terms.has(term)) return true;
  if (term.length < 3 || !/\p{L}/u.test(term)) return false;
  for (const t of terms) if (t.startsWith(term)) return true;
  return false;
}

/** Lights up the steps that hold most of the words, says how many there are, and goes to the first. */
export function markFound(procedure: HTMLElement): void {
  const steps = [...procedure.querySelectorAll<HTMLElement>('.step')];
  for (const step of steps) step.classList.remove('found');
  const note = procedure.querySelector<HTMLElement>('[data-marked]');
  if (note !== null) note.hidden = true;
  const query = queryInHash(location.hash);
  const wanted = queryTerms(query);
  if (wanted.length === 0) return;
  const scored = steps.map((step) => {
    // biome-ignore lint/performance/useDomNodeTextContent: it parts the words of neighbouring blocks, text content glues them
    const terms = new Set(indexTerms(step.innerText));
    return { step, met: wanted.filter((w) => meets(w, terms)).length };
  });
  const best = Math.max(0, ...scored.map((s) => s.met));
  if (best === 0) return;
  const found = scored.filter((s) => s.met === best).map((s) => s.step);
  // Words that stand in nearly every step mark nothing.
  if (found.length > steps.length * 0.7) return;
  for (const step of found) step.classList.add('found');
  if (note !== null) {
    note.hidden = false;
    note.replaceChildren(`“${query}” stands in `, ...links(found), '.');
  }
  found[0]?.querySelector('.step-body')?.scrollIntoView({ block: 'center' });
}

function links(steps: readonly HTMLElement[]): Node[] {
  const most = 12;
  const nodes: Node[] = [document.createTextNode(steps.length === 1 ? 'step ' : 'steps ')];
  steps.slice(0, most).forEach((step, i) => {
    const number = step.dataset['step'] ?? '';
    const link = document.createElement('a');
    link.href = `#step-${number}`;
    link.textContent = number;
    if (i > 0) nodes.push(document.createTextNode(', '));
    nodes.push(link);
  });
  if (steps.length > most) nodes.push(document.createTextNode(` and ${steps.length - most} more`));
  return nodes;
}
