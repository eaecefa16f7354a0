/** The frame of the plain pages: head, shop's name, main part, safety words. No inline script, no style attribute. */

import { escapeHtml } from '../escape.ts';
import { href } from '../href.ts';
import { paths } from '../paths.ts';
import { count } from '../words.ts';
import type { SiteFacts } from './site-facts.ts';

export interface PlainPage {
  /** Folder of the page from the root of the site, ending in `/`: `C/OF-204/B/LARGE/`. */
  readonly path: string;
  /** Text. */
  readonly title: string;
  readonly description: string;
  /** Class of the body, from our own words. */
  readonly kind: 'answer' | 'compare';
  /** Attributes of `<main>` that `scan-mark.js` reads, by name without `data-`; those that are absent are left out. */
  readonly data: Readonly<Record<string, string | undefined>>;
  /** HTML. */
  readonly main: string;
}

/** A whole HTML page. Texts are escaped here; `main` is taken as it is. */
export function plainPage(page: PlainPage, site: SiteFacts): string {
  const go = (to: string) => href(page.path, to);
  const data = { ...page.data, 'as-of': site.asOf, 'fresh-days': String(site.freshDays) };
  const attributes = Object.entries(data)
    .map(([name, value]) => (value === undefined ? '' : ` data-${name}="${escapeHtml(value)}"`))
    .join('');
  const report =
    site.report === undefined ? '' : `<p><strong>To report a mistake:</strong> ${escapeHtml(site.report)}</p>`;
  return `<!DOCTYPE html><html lang="${escapeHtml(site.language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="robots" content="noindex">
<title>${escapeHtml(`${page.title} · ${site.name}`)}</title>
<meta name="description" content="${escapeHtml(page.description)}">
<link rel="icon" href="${go('mark.svg')}" type="image/svg+xml">
<link rel="stylesheet" href="${go(paths.answerCss)}">
<script type="module" src="${go(paths.scanMark)}"></script>
</head>
<body class="${page.kind}">
<p class="print-mark" aria-hidden="true"><strong>UNCONTROLLED COPY</strong> as of ${escapeHtml(site.asOf)}</p>
<header class="top"><a href="${go(paths.home)}">${escapeHtml(site.name)}</a></header>
<main id="main"${attributes}>
${page.main}
</main>
<footer class="foot">
<p class="safety">${escapeHtml(site.safety)}</p>
${report}
<p><a class="quiet" href="${go(paths.home)}">Home</a></p>
</footer>
</body>
</html>
`;
}

/** How old the answer may grow: readable without a script, and with the date for machines. */
export function asOfHtml(site: SiteFacts): string {
  const days = escapeHtml(count(site.freshDays, 'day'));
  return `<p class="as-of">Answered as of ${dateHtml(site.asOf)}. If this answer is more than ${days} old, ask quality before you rely on it.</p>`;
}

/** What to do now, then what more is to be said: sentences as HTML. A line of the first breaks between sentences first. */
export function doHtml([first, ...rest]: readonly [string, ...string[]]): string {
  const sentences = first.split(/(?<=\.) /u).map((sentence) => `<span>${sentence}</span>`);
  return `<p class="do">${sentences.join(' ')}</p>${rest.map((line) => `<p class="do-more">${line}</p>`).join('')}`;
}

/** `2026-11-25`, for people and for machines. */
export function dateHtml(date: string): string {
  const safe = escapeHtml(date);
  return `<time datetime="${safe}">${safe}</time>`;
}

/** A list of terms; those without HTML are left out. `html` is taken as it is. */
export function factsHtml(facts: readonly (readonly [term: string, html: string | undefined])[]): string {
  const rows = facts
    .filter(([, html]) => html !== undefined && html !== '')
    .map(([term, html]) => `<div><dt>${term}</dt><dd>${html}</dd></div>`);
  return rows.length === 0 ? '' : `<dl class="facts">${rows.join('')}</dl>`;
}

/** The folder of a page whose path is written with or without the slash at its end. */
export function folder(path: string): string {
  return path.endsWith('/') ? path : `${path}/`;
}

/** Boxed, as on the card; empty for a document without variants. */
export function tagHtml(label: string): string {
  return label === '' ? '' : `<span class="tag">${escapeHtml(label)}</span>`;
}
