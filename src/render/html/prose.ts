/** Turns resolved prose into HTML. Every piece of author's text passes through `escapeHtml`; tags are only our own. */

import type { Prose, Run } from '../../resolve/types.ts';
import { escapeHtml } from './escape.ts';

/** Gives the address of what a run stands for, or undefined when this page makes no link of it. */
export type RefTarget = (ref: NonNullable<Run['ref']>) => string | undefined;

function runHtml(run: Run, target: RefTarget): string {
  let html = escapeHtml(run.text);
  if (run.code) html = `<code>${html}</code>`;
  if (run.emphasis) html = `<em>${html}</em>`;
  if (run.strong) html = `<strong>${html}</strong>`;
  if (run.ref !== undefined) {
    const to = target(run.ref);
    if (to !== undefined) html = `<a href="${escapeHtml(to)}">${html}</a>`;
  } else if (run.href !== undefined && /^https?:\/\//iu.test(run.href)) {
    html = `<a href="${escapeHtml(run.href)}" rel="noopener noreferrer external">${html}</a>`;
    // On paper and without a network the address itself is what helps.
    if (run.text !== run.href) html += ` <span class="address">(${escapeHtml(run.href)})</span>`;
  }
  return html;
}

/** The runs of one paragraph, without an element around them. */
export function runsHtml(runs: readonly Run[], target: RefTarget): string {
  return runs.map((run) => runHtml(run, target)).join('');
}

/** Paragraphs as `<p>`, neighbouring items as one `<ul>`. */
export function proseHtml(prose: Prose, target: RefTarget): string {
  let html = '';
  let inList = false;
  for (const paragraph of prose) {
    const isItem = paragraph.kind === 'item';
    if (isItem && !inList) html += '<ul>';
    if (!isItem && inList) html += '</ul>';
    inList = isItem;
    const tag = isItem ? 'li' : 'p';
    html += `<${tag}>${runsHtml(paragraph.runs, target)}</${tag}>`;
  }
  return inList ? `${html}</ul>` : html;
}

/** The words alone, paragraphs parted by a space: for titles, descriptions and the search index. */
export function proseText(prose: Prose): string {
  return prose.map((paragraph) => paragraph.runs.map((run) => run.text).join('')).join(' ');
}
