/** Search results as elements. Text is set as text, never as markup. */

import type { Finding } from '../../render/search/find.ts';

function element<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  className: string,
  ...children: (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  if (className !== '') made.className = className;
  made.append(...children);
  return made;
}

function link(
  path: string,
  root: URL,
  query: string,
  className: string,
  ...children: (Node | string)[]
): HTMLAnchorElement {
  const made = element('a', className, ...children);
  const url = new URL(path, root);
  if (query !== '') url.hash = `find=${encodeURIComponent(query)}`;
  made.href = url.href;
  return made;
}

const KINDS = {
  procedure: 'Procedure',
  machine: 'Machine',
  part: 'Part',
  joint: 'Joint',
  tool: 'Tool',
  consumable: 'Consumable',
  table: 'Table',
} as const;

function item({ entry, why, inSteps, variants }: Finding, query: string, root: URL): HTMLLIElement {
  const isProcedure = entry.kind === 'procedure';
  const single = isProcedure && entry.variants.length === 0;
  const title = isProcedure ? `${entry.mark} ${entry.title}` : entry.title;
  const head = link(entry.path, root, single ? query : '', 'hit', title);
  const kind = [KINDS[entry.kind], isProcedure ? `Rev\u00a0${entry.rev ?? ''}` : entry.mark, entry.detail].filter(
    (t) => t !== '',
  );
  const li = element('li', '', head, element('span', 'kind', kind.join(' · ')));
  for (const fact of why) li.append(element('p', 'why', fact.text));
  if (inSteps && why.length === 0) li.append(element('p', 'why', 'in the steps'));
  if (variants.length > 0) {
    const row = element('div', 'variants');
    for (const i of variants) {
      const variant = entry.variants[i];
      if (variant !== undefined) row.append(link(variant.path, root, query, '', variant.label));
    }
    li.append(row);
  }
  return li;
}

function list(heading: string, findings: readonly Finding[], query: string, root: URL): Node[] {
  if (findings.length === 0) return [];
  const ul = document.createElement('ul');
  ul.append(...findings.map((f) => item(f, query, root)));
  return heading === '' ? [ul] : [element('h3', 'results-head', heading), ul];
}

/** Procedures first, then everything else; links carry the query, so that the page can mark the steps. */
export function renderFindings(findings: readonly Finding[], query: string, root: URL): Node[] {
  const procedures = findings.filter((f) => f.entry.kind === 'procedure');
  const others = findings.filter((f) => f.entry.kind !== 'procedure');
  return [
    ...list('', procedures, query, root),
    ...list(procedures.length === 0 ? '' : 'Machines, parts, joints and tools', others, query, root),
  ];
}
