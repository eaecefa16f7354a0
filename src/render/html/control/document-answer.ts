/** Landing page of a document that nobody may work from now: suspended, withdrawn, not yet effective, or never issued. */

import type { Answer, DocumentState, IssueEntry } from '../../../control/types.ts';
import { escapeHtml } from '../escape.ts';
import { href } from '../href.ts';
import { paths } from '../paths.ts';
import { capital } from '../words.ts';
import { asOfHtml, dateHtml, doHtml, factsHtml, folder, plainPage } from './frame.ts';
import { type Sign, verdictHtml, WORDS } from './signs.ts';
import type { SiteFacts } from './site-facts.ts';

interface Verdict {
  readonly sign: Sign;
  readonly word: string;
  /** Sentences as HTML. */
  readonly lines: readonly [string, ...string[]];
}

/**
 * The whole page `procedures/<slug>/`. `answers`: those of all cards; the ones of other documents are passed over. Throws a
 * RangeError for a document in force, whose landing page is one of the site's own.
 */
export function documentAnswerPage(state: DocumentState, answers: readonly Answer[], site: SiteFacts): string {
  const path = paths.procedure(state.doc.toLowerCase());
  const go = (to: string) => escapeHtml(href(path, to));
  const { sign, word, lines } = verdictOf(state);
  const replacement = state.standing === 'withdrawn' ? state.withdrawn?.replacement : undefined;
  const own = new Map(answers.filter((a) => a.doc === state.doc).map((a) => [folder(a.path), a]));
  const issues = state.issues.toReversed().map((issue) => issueHtml(issue, state, own, go));
  const main = [
    verdictHtml(sign, word),
    `<h1><span class="docno">${escapeHtml(state.doc)}</span> <span class="title">${escapeHtml(state.title)}</span></h1>`,
    '<div class="columns"><div class="now">',
    doHtml(lines),
    replacement === undefined
      ? ''
      : `<p class="actions"><a class="action" href="${go(paths.procedure(replacement.toLowerCase()))}">Open ${escapeHtml(replacement)}</a></p>`,
    reasonHtml(state),
    asOfHtml(site),
    '</div>',
    issues.length === 0
      ? ''
      : `<section class="later"><h2>Its revisions</h2><ol class="issues">${issues.join('')}</ol></section>`,
    '</div>',
  ];
  return plainPage(
    {
      path,
      title: `${word} · ${state.doc}`,
      description: lines.join(' ').replaceAll(/<[^>]*>/gu, ''),
      kind: 'answer',
      data: { turns: state.standing === 'not yet effective' ? state.coming[0]?.effective : undefined },
      main: main.filter((part) => part !== '').join('\n'),
    },
    site,
  );
}

function verdictOf(state: DocumentState): Verdict {
  const doc = escapeHtml(state.doc);
  switch (state.standing) {
    case 'suspended':
      return {
        sign: 'suspended',
        word: WORDS.suspended,
        lines: [`Do not use any copy of ${doc}.`, 'If the job is open: make the work safe, stop, and tell your lead.'],
      };
    case 'withdrawn': {
      const instead = state.withdrawn?.replacement;
      return {
        sign: 'withdrawn',
        word: WORDS.withdrawn,
        lines: [
          `Take every copy of ${doc} out.${instead === undefined ? '' : ` Use ${escapeHtml(instead)} instead.`}`,
          `${doc} is no longer in use.${instead === undefined ? ' Ask quality before you do this job.' : ''}`,
        ],
      };
    }
    case 'not yet effective': {
      const next = state.coming[0];
      return {
        sign: 'not yet effective',
        word: WORDS['not yet effective'],
        lines: [
          next === undefined
            ? `Do not work from ${doc} yet.`
            : `Do not work from ${doc} before ${dateHtml(next.effective)}.`,
          'No revision is in force until then.',
        ],
      };
    }
    case 'draft only':
      return {
        sign: 'draft',
        word: 'DRAFT ONLY',
        lines: [`${doc} was never issued. Never work from a draft.`],
      };
    case 'in force':
      throw new RangeError(`${state.doc} is in force: its landing page belongs to the site`);
  }
}

function reasonHtml(state: DocumentState): string {
  const [term, entry, since] =
    state.standing === 'suspended'
      ? (['Suspended since', state.suspended, state.suspended?.recorded] as const)
      : state.standing === 'withdrawn'
        ? (['Withdrawn since', state.withdrawn, state.withdrawn?.effective] as const)
        : (['', undefined, undefined] as const);
  if (entry === undefined) return '';
  const facts = factsHtml([
    ['Reason', escapeHtml(entry.reason)],
    [term, since === undefined ? undefined : dateHtml(since)],
  ]);
  return `<div class="reason">${facts}</div>`;
}

function issueHtml(
  issue: IssueEntry,
  state: DocumentState,
  own: ReadonlyMap<string, Answer>,
  go: (to: string) => string,
): string {
  // Only addresses that answer with a plain page: never one with steps.
  const cards = issue.cards.filter((card) => own.has(folder(card.path)));
  const links = cards.map(
    (card) =>
      `<li><a class="quiet" href="${go(folder(card.path))}">${card.label === '' ? 'This card' : escapeHtml(card.label)} <span class="fingerprint soft">${escapeHtml(card.fingerprint)}</span></a></li>`,
  );
  const day = state.coming.includes(issue) ? 'will be effective' : 'effective';
  return `<li><h3>Rev&nbsp;${escapeHtml(issue.rev)} <span class="soft">${day} ${dateHtml(issue.effective)}</span></h3><p class="what">${escapeHtml(issue.change.what)}</p><p><span class="soft">Why:</span> ${escapeHtml(issue.change.why)}</p><p class="small soft">${capital(issue.change.class)} change, approved ${dateHtml(issue.approved)}</p>${links.length === 0 ? '' : `<ul class="cards">${links.join('')}</ul>`}</li>`;
}
