/** What the address of a card answers whose revision is not in force: one glance at the bench, no script. */

import type { Answer } from '../../../control/types.ts';
import { escapeHtml } from '../escape.ts';
import { href } from '../href.ts';
import { paths } from '../paths.ts';
import { asOfHtml, dateHtml, doHtml, factsHtml, folder, plainPage, tagHtml } from './frame.ts';
import { verdictHtml, WORDS } from './signs.ts';
import type { SiteFacts } from './site-facts.ts';

/**
 * The whole page for `answer.path`. A suspended document gets no way to a page with steps, whatever the answer holds: no
 * revision to use and no comparison.
 */
export function answerPage(answer: Answer, site: SiteFacts): string {
  const path = folder(answer.path);
  const go = (to: string) => escapeHtml(href(path, to));
  const [first, ...rest] = whatToDo(answer);
  const named = [answer.doc, answer.rev === '' ? '' : `Rev ${answer.rev}`].filter((t) => t !== '').join(' ');
  const use = answer.standing === 'suspended' ? undefined : answer.use;
  const main = [
    verdictHtml(answer.standing),
    `<h1><span class="docno">${escapeHtml(answer.doc)}${answer.rev === '' ? '' : ` <span class="rev">Rev&nbsp;${escapeHtml(answer.rev)}</span>`}${answer.label === '' ? '' : ` ${tagHtml(answer.label)}`}</span> <span class="title">${escapeHtml(answer.title)}</span></h1>`,
    '<div class="columns"><div class="now">',
    doHtml([first, ...rest]),
    use === undefined
      ? ''
      : `<p class="actions"><a class="action" href="${go(folder(use.path))}">Open ${escapeHtml(use.doc)} Rev&nbsp;${escapeHtml(use.rev)}${use.doc === answer.doc ? '' : ` <span class="action-more">${escapeHtml(use.title)}</span>`}</a></p>`,
    reasonHtml(answer),
    asOfHtml(site),
    `<p class="actions"><a class="quiet" href="${go(paths.procedure(answer.slug))}">All revisions of ${escapeHtml(answer.doc)}</a></p>`,
    '</div>',
    laterHtml(answer, go),
    cardHtml(answer),
    '</div>',
  ];
  return plainPage(
    {
      path,
      title: `${WORDS[answer.standing]} · ${named}`,
      description: [first, ...rest]
        .join(' ')
        .replaceAll(/<[^>]*>/gu, '')
        .replaceAll('&nbsp;', ' '),
      kind: 'answer',
      data: {
        'card-path': answer.path,
        standing: answer.standing,
        doc: answer.doc,
        rev: answer.rev,
        label: answer.label,
        fingerprint: answer.fingerprint,
        turns: answer.standing === 'not yet effective' ? answer.effective : undefined,
      },
      main: main.filter((part) => part !== '').join('\n'),
    },
    site,
  );
}

/** Sentences as HTML, the first one alone says what to do with the card. */
function whatToDo(answer: Answer): readonly [string, ...string[]] {
  const doc = escapeHtml(answer.doc);
  const { use } = answer;
  const other =
    use === undefined
      ? undefined
      : use.doc === answer.doc
        ? `Rev&nbsp;${escapeHtml(use.rev)}`
        : `${escapeHtml(use.doc)} Rev&nbsp;${escapeHtml(use.rev)}`;
  switch (answer.standing) {
    case 'suspended':
      return [
        `Do not use any copy of ${doc}.`,
        'If the job is open: make the work safe, stop, and tell your lead.',
        ...(answer.later.length === 0 ? [] : ['This card is also superseded. Take it out.']),
      ];
    case 'withdrawn':
      return [
        `Take this card out. ${other === undefined ? '' : `Use ${other} instead.`}`.trimEnd(),
        `${doc} is no longer in use.${other === undefined ? ' Ask quality before you do this job.' : ''}`,
      ];
    case 'superseded':
      return other === undefined
        ? ['Take this card out.', `No revision of ${doc} is in force now.`]
        : [`Take this card out. Use ${other}.`];
    case 'not yet effective': {
      const day = answer.effective === undefined ? 'it is in force' : dateHtml(answer.effective);
      return other === undefined
        ? [`Do not work from this card before ${day}.`, `No revision of ${doc} is in force until then.`]
        : [`Do not work from this card before ${day}. Until then use ${other}.`];
    }
    case 'draft':
      return [
        'This card was printed from a draft. Never work from it.',
        other === undefined ? `Take it out and ask quality for an issued card.` : `Take it out and use ${other}.`,
      ];
  }
}

function reasonHtml({ standing, reason, since }: Answer): string {
  if (standing !== 'suspended' && standing !== 'withdrawn') return '';
  const facts = factsHtml([
    ['Reason', reason === undefined ? undefined : escapeHtml(reason)],
    [
      standing === 'suspended' ? 'Suspended since' : 'Withdrawn since',
      since === undefined ? undefined : dateHtml(since),
    ],
  ]);
  return facts === '' ? '' : `<div class="reason">${facts}</div>`;
}

/** What changed since the revision of this card, oldest first; of a card that does not hold yet, what it changes itself. */
function laterHtml(answer: Answer, go: (to: string) => string): string {
  if (answer.later.length === 0) return '';
  const ahead = answer.standing === 'not yet effective';
  const items = answer.later.map((issue, i) => {
    const before = answer.later[i - 1]?.rev ?? answer.rev;
    const words = ahead
      ? 'Compare with the revision before'
      : `Compare Rev&nbsp;${escapeHtml(before)} with Rev&nbsp;${escapeHtml(issue.rev)}`;
    const compare =
      issue.compare === undefined || answer.standing === 'suspended'
        ? ''
        : `<p><a class="quiet" href="${go(folder(issue.compare))}">${words}</a></p>`;
    return `<li><h3>Rev&nbsp;${escapeHtml(issue.rev)} <span class="soft">${ahead ? 'will be effective' : 'effective'} ${dateHtml(issue.effective)}</span></h3><p class="what">${escapeHtml(issue.what)}</p><p><span class="soft">Why:</span> ${escapeHtml(issue.why)}</p>${compare}</li>`;
  });
  const rev = `Rev&nbsp;${escapeHtml(answer.rev)}`;
  const title = ahead ? `What ${rev} changes` : answer.rev === '' ? 'What changed' : `What changed since ${rev}`;
  return `<section class="later"><h2>${title}</h2><ol class="issues">${items.join('')}</ol></section>`;
}

/** Which card this is: the eight characters are compared with those at the foot of the card in the hand. */
function cardHtml(answer: Answer): string {
  const next = answer.standing === 'not yet effective' ? undefined : answer.later[0];
  const facts = factsHtml([
    [
      'Fingerprint',
      answer.fingerprint === '' ? undefined : `<span class="fingerprint">${escapeHtml(answer.fingerprint)}</span>`,
    ],
    ['Variant', answer.label === '' ? undefined : escapeHtml(answer.label)],
    ['Effective', answer.effective === undefined ? undefined : `from ${dateHtml(answer.effective)}`],
    ['Superseded', next === undefined ? undefined : `on ${dateHtml(next.effective)}`],
  ]);
  if (facts === '') return '';
  const compare =
    answer.fingerprint === '' || answer.standing === 'draft'
      ? ''
      : '<p class="small">The same 8 characters stand at the foot of the card. If they differ, the card is not what was issued: give it to quality.</p>';
  return `<section class="card-facts"><h2>This card</h2>${facts}${compare}</section>`;
}
