/** Page of two neighbouring issues of a document: what differs in meaning, old and new side by side. */

import type { Change, Comparison } from '../../../control/types.ts';
import { escapeHtml } from '../escape.ts';
import { href } from '../href.ts';
import { paths } from '../paths.ts';
import { count } from '../words.ts';
import { changeGroups, KINDS } from './change-groups.ts';
import type { ComparisonFacts, Neighbour } from './comparison-facts.ts';
import { markDifference } from './difference.ts';
import { asOfHtml, dateHtml, factsHtml, folder, plainPage, tagHtml } from './frame.ts';
import { verdictHtml } from './signs.ts';
import type { SiteFacts } from './site-facts.ts';

/** Up to this many characters a value is set large. */
const SHORT = 32;

/** The whole page `compare/of-204/b-c/`. A document that is suspended or withdrawn says so first and leads to no steps. */
export function comparisonPage(comparison: Comparison, facts: ComparisonFacts, site: SiteFacts): string {
  const { doc, from, to, changes } = comparison;
  const path = paths.comparison(doc, from, to);
  const go = (target: string) => escapeHtml(href(path, target));
  const groups = changeGroups(changes);
  const pair = `Rev&nbsp;${escapeHtml(from)} and Rev&nbsp;${escapeHtml(to)}`;
  const main = [
    facts.standing === 'suspended' || facts.standing === 'withdrawn' ? verdictHtml(facts.standing) : '',
    facts.standing === 'suspended' ? `<p class="do">Do not use any copy of ${escapeHtml(doc)}.</p>` : '',
    `<h1><span class="docno">${escapeHtml(doc)} <span class="rev">Rev&nbsp;${escapeHtml(from)} <span aria-hidden="true">→</span><span class="hidden"> to </span> Rev&nbsp;${escapeHtml(to)}</span></span> <span class="title">${escapeHtml(facts.title)}</span></h1>`,
    recordHtml(facts, site),
    `<p class="actions">${currentHtml(facts, go)}<a class="quiet" href="${go(paths.procedure(facts.slug))}">All revisions of ${escapeHtml(doc)}</a></p>`,
    `<section class="changes" aria-labelledby="changes"><h2 id="changes">What differs between ${pair}</h2>`,
    changes.length === 0
      ? '<p>Nothing that the cards say differs in meaning.</p>'
      : `<ul class="jump">${groups.map((g) => `<li><a href="#${g.id}">${g.title} <span class="soft">${g.changes.length}</span></a></li>`).join('')}</ul>`,
    ...groups.map(
      (g) =>
        `<section id="${g.id}"><h3>${g.title} <span class="soft">${count(g.changes.length, 'change')}</span></h3><ol class="change-list">${g.changes.map((c) => changeHtml(c, from, to)).join('\n')}</ol></section>`,
    ),
    '</section>',
    neighboursHtml(facts, go),
    asOfHtml(site),
  ];
  return plainPage(
    {
      path,
      title: `${doc} Rev ${from} to Rev ${to}`,
      description: `What changed in ${doc} ${facts.title} from Rev ${from} to Rev ${to}`,
      kind: 'compare',
      data: {},
      main: main.filter((part) => part !== '').join('\n'),
    },
    site,
  );
}

/** The change record of the newer issue. */
function recordHtml({ older, newer, author, approver }: ComparisonFacts, { asOf }: SiteFacts): string {
  const ahead = newer.effective > asOf ? ', <strong>not yet effective</strong>' : '';
  return factsHtml([
    ['What', escapeHtml(newer.change.what)],
    ['Why', escapeHtml(newer.change.why)],
    ['Class', newer.change.class === 'major' ? 'Major change' : 'Minor change'],
    ['Author', escapeHtml(author)],
    ['Approved', `${escapeHtml(approver)}, ${dateHtml(newer.approved)}`],
    [
      'Effective',
      `Rev&nbsp;${escapeHtml(newer.rev)} from ${dateHtml(newer.effective)}${ahead} <span class="soft">(Rev&nbsp;${escapeHtml(older.rev)} from ${dateHtml(older.effective)})</span>`,
    ],
    ['Affects', newer.affects.map(escapeHtml).join(', ')],
  ]);
}

function currentHtml({ current, newer }: ComparisonFacts, go: (to: string) => string): string {
  if (current === undefined) return '';
  const words = current.rev === newer.rev ? '' : ', in force now';
  return `<a class="action" href="${go(folder(current.path))}">Open ${escapeHtml(newer.doc)} Rev&nbsp;${escapeHtml(current.rev)}${words}</a> `;
}

function changeHtml(change: Change, from: string, to: string): string {
  const { word, path } = KINDS[change.kind];
  const tags = change.variants.map(tagHtml).join(' ');
  const step = stepHtml(change, from, to);
  return `<li class="change"><p class="kind"><span class="kind-word"><svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" focusable="false"><path d="${path}" fill="none" stroke="currentColor" stroke-width="2.2"/></svg>${word}</span>${step === '' ? '' : ` <span class="step">${step}</span>`}${tags === '' ? '' : ` <span class="tags">${tags}</span>`}</p><p class="words">${escapeHtml(change.words)}</p>${sidesHtml(change, from, to)}</li>`;
}

function stepHtml({ stepBefore, stepAfter }: Change, from: string, to: string): string {
  if (stepBefore !== undefined && stepAfter !== undefined)
    return stepBefore === stepAfter ? `Step&nbsp;${stepAfter}` : `Step&nbsp;${stepBefore}, now ${stepAfter}`;
  if (stepAfter !== undefined) return `Step&nbsp;${stepAfter} of Rev&nbsp;${escapeHtml(to)}`;
  if (stepBefore !== undefined) return `Step&nbsp;${stepBefore} of Rev&nbsp;${escapeHtml(from)}`;
  return '';
}

/** Old and new under the names of their revisions; on a phone one under the other. */
function sidesHtml({ kind, before, after }: Change, from: string, to: string): string {
  if (before === undefined && after === undefined) return '';
  // What was exchanged has no words in common that would mean anything.
  const marked =
    before !== undefined && after !== undefined && kind !== 'exchanged'
      ? markDifference(before, after)
      : { before: escapeHtml(before ?? ''), after: escapeHtml(after ?? '') };
  const big = (before ?? '').length <= SHORT && (after ?? '').length <= SHORT && kind === 'value' ? ' big' : '';
  const side = (name: string, rev: string, text: string | undefined, html: string) =>
    `<div class="side ${name}"><p class="side-rev">Rev&nbsp;${escapeHtml(rev)}</p>${text === undefined ? '<p class="none">not there</p>' : `<p class="said">${html}</p>`}</div>`;
  return `<div class="sides${big}">${side('old', from, before, marked.before)}${side('new', to, after, marked.after)}</div>`;
}

function neighboursHtml({ before, after }: ComparisonFacts, go: (to: string) => string): string {
  if (before === undefined && after === undefined) return '';
  const link = (pair: Neighbour | undefined, rel: 'prev' | 'next', word: string) =>
    pair === undefined
      ? ''
      : `<a rel="${rel}" href="${go(folder(pair.path))}"><span class="soft">${word}</span> <span>Rev&nbsp;${escapeHtml(pair.from)} to Rev&nbsp;${escapeHtml(pair.to)}</span></a>`;
  return `<nav class="neighbours" aria-label="Other comparisons">${link(before, 'prev', 'Before')}${link(after, 'next', 'After')}</nav>`;
}
