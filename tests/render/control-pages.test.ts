/** What the plain pages say: facts of every standing, sound HTML, relative links, and texts that try to be markup. */

import { describe, expect, test } from 'vitest';
import type { Answer } from '../../src/control/types.ts';
import {
  answerPage,
  comparisonFacts,
  comparisonPage,
  documentAnswerPage,
  signSvg,
  WORDS,
} from '../../src/render/html/control/index.ts';
import { attributes, textOf } from '../site/built.ts';
import * as samples from './control-samples.ts';
import {
  ANSWERS,
  COMPARISON,
  FACTS,
  SITE,
  STATE,
  SUSPENDED_ANSWERS,
  SUSPENSION,
  VIEW,
  WITHDRAWAL,
} from './control-samples.ts';

const suspended = documentAnswerPage(
  { ...STATE, standing: 'suspended', suspended: SUSPENSION },
  SUSPENDED_ANSWERS,
  SITE,
);

/** Name, path from the root, HTML. */
const PAGES: readonly (readonly [string, string, string])[] = [
  ...Object.entries(ANSWERS).map(([name, a]) => [name, `${a.path}/`, answerPage(a, SITE)] as const),
  ['document', 'procedures/of-204/', suspended],
  ['comparison', 'compare/of-204/b-c/', comparisonPage(COMPARISON, FACTS, SITE)],
];

/** Text in one line, blanks drawn together. */
const words = (html: string) => textOf(html).replaceAll(/[\s\u00a0]+/gu, ' ');

/** Links of the main part as paths from the root. */
function linksOf(html: string, page: string): string[] {
  const main = html.slice(html.indexOf('<main'), html.indexOf('</main>'));
  return attributes(main, 'href').map((h) => new URL(h, `http://host/${page}`).pathname.slice(1));
}

const VOID = new Set(['meta', 'link', 'br', 'hr', 'img', 'input', 'wbr']);

/** What is not closed, or closed out of order. */
function unsound(html: string): string[] {
  const open: string[] = [];
  const faults: string[] = [];
  for (const [tag, slash, name = '', end] of html.matchAll(
    /<(\/?)([a-zA-Z][\w-]*)(?:\s+[\w-]+(?:="[^"<]*")?)*\s*(\/?)>/gu,
  )) {
    if (VOID.has(name) || end === '/') continue;
    if (slash === '') open.push(name);
    else if (open.pop() !== name) faults.push(tag);
  }
  const rest = html.replaceAll(/<!DOCTYPE html>|<\/?[a-zA-Z][\w-]*(?:\s+[\w-]+(?:="[^"<]*")?)*\s*\/?>/gu, '');
  if (/[<>]/u.test(rest)) faults.push(`a sign outside a tag: ${rest.match(/.{0,30}[<>].{0,30}/u)?.[0]}`);
  return [...faults, ...open];
}

describe('every plain page', () => {
  test.each(PAGES)('%s is sound, links relatively, says as of when and the safety words', (_name, page, html) => {
    expect(html).toMatch(/^<!DOCTYPE html><html lang="en">/u);
    expect(unsound(html)).toEqual([]);
    expect(html.match(/<h1[\s>]/gu)).toHaveLength(1);
    const ids = attributes(html, 'id');
    expect(new Set(ids).size).toBe(ids.length);
    expect(attributes(html, 'style')).toEqual([]);
    expect(html).not.toMatch(/\son[a-z]+=/u);
    for (const link of [...attributes(html, 'href'), ...attributes(html, 'src')]) {
      expect(link, page).not.toMatch(/^(?:\/|[a-z]+:)/u);
      expect(new URL(link, `http://host/deep/${page}`).pathname, page).toMatch(/^\/deep\//u);
    }
    expect(words(html)).toContain(SITE.safety);
    expect(words(html)).toContain(`To report a mistake: ${SITE.report}`);
    expect(words(html)).toContain(
      'Answered as of 2026-11-25. If this answer is more than 30 days old, ask quality before you rely on it.',
    );
    expect(html).toContain('<time datetime="2026-11-25">2026-11-25</time>');
    expect(html).toContain('data-as-of="2026-11-25" data-fresh-days="30"');
    expect(linksOf(html, page).some((l) => l === 'procedures/of-204/') || page === 'procedures/of-204/').toBe(true);
  });

  test('the same facts give the same bytes', () => {
    for (const a of Object.values(ANSWERS))
      expect(answerPage(structuredClone(a), { ...SITE })).toBe(answerPage(a, SITE));
    expect(comparisonPage(structuredClone(COMPARISON), structuredClone(FACTS), SITE)).toBe(
      comparisonPage(COMPARISON, FACTS, SITE),
    );
  });

  test('links from an answer lead to the root of the site', () => {
    const html = answerPage(ANSWERS.SUPERSEDED, SITE);
    expect(html).toContain('href="../../../../answer.css"');
    expect(html).toContain('src="../../../../scan-mark.js"');
    expect(html).toContain('<a href="../../../../">Orrin Sound Ferry Works</a>');
  });
});

describe('an answer', () => {
  test('superseded: take out, what to use, what changed with its comparisons', () => {
    const html = answerPage(ANSWERS.SUPERSEDED, SITE);
    const text = words(html);
    expect(text).toContain('SUPERSEDED');
    expect(text).toContain('OF-204 Rev B Large, left Overhaul the plate cooler');
    expect(text).toContain('Take this card out. Use Rev D.');
    expect(text).toContain('What changed since Rev B Rev C effective 2026-07-13 End-cover torque 85 → 95 N·m');
    expect(text).toContain('Why: Near miss at the north wall');
    expect(text).toContain('Fingerprint 7C1E04B1');
    expect(text).toContain('Superseded on 2026-07-13');
    expect(html).toContain(
      '<main id="main" data-card-path="C/OF-204/B/LARGE-LEFT" data-standing="superseded" data-doc="OF-204" data-rev="B" data-label="Large, left" data-fingerprint="7C1E04B1" data-as-of',
    );
    expect(linksOf(html, 'C/OF-204/B/LARGE-LEFT/')).toEqual([
      'C/OF-204/D/LARGE-LEFT/',
      'procedures/of-204/',
      'compare/of-204/b-c/',
      'compare/of-204/c-d/',
    ]);
    expect(html).toContain('<title>SUPERSEDED · OF-204 Rev B · Orrin Sound Ferry Works</title>');
  });

  test('suspended: stop, reason and day, and no link but to the page of the document', () => {
    const html = answerPage(ANSWERS.SUSPENDED, SITE);
    const text = words(html);
    expect(text).toContain('STOP – SUSPENDED');
    expect(text).toContain('Do not use any copy of OF-204.');
    expect(text).toContain('Reason The eye bolts of the lifting frame failed their test');
    expect(text).toContain('Suspended since 2026-11-12');
    expect(text).toContain('This card is also superseded. Take it out.');
    expect(text).not.toContain('Use Rev');
    expect(linksOf(html, 'C/OF-204/B/LARGE-LEFT/')).toEqual(['procedures/of-204/']);
    expect(words(answerPage({ ...ANSWERS.SUSPENDED, later: [] }, SITE))).not.toContain('also superseded');
  });

  test('withdrawn: with a replacement and without', () => {
    const html = answerPage(ANSWERS.WITHDRAWN, SITE);
    expect(words(html)).toContain('WITHDRAWN');
    expect(words(html)).toContain('Take this card out. Use OF-310 Rev A instead. OF-204 is no longer in use.');
    expect(words(html)).toContain('Withdrawn since 2026-11-01');
    expect(words(html)).toContain('Open OF-310 Rev A Overhaul the tube cooler');
    expect(linksOf(html, 'C/OF-204/B/LARGE-LEFT/')).toEqual(['procedures/of-310/', 'procedures/of-204/']);
    const { use: _use, ...alone } = ANSWERS.WITHDRAWN;
    expect(words(answerPage(alone, SITE))).toContain(
      'Take this card out. OF-204 is no longer in use. Ask quality before you do this job.',
    );
  });

  test('not yet effective: the day, and what holds until then', () => {
    const html = answerPage(ANSWERS.COMING, SITE);
    expect(words(html)).toContain('NOT YET EFFECTIVE');
    expect(words(html)).toContain('Do not work from this card before 2026-12-01. Until then use Rev D.');
    expect(html).toContain('<time datetime="2026-12-01">');
    expect(html).toContain('data-turns="2026-12-01"');
    expect(words(html)).toContain('What Rev E changes Rev E will be effective 2026-12-01 Lifting frame with four');
    expect(words(html)).toContain('Compare with the revision before');
    expect(words(html)).not.toContain('Superseded on');
    const { use: _use, ...first } = ANSWERS.COMING;
    expect(words(answerPage(first, SITE))).toContain('No revision of OF-204 is in force until then.');
  });

  test('of a draft: never work from it', () => {
    const html = answerPage(ANSWERS.DRAFT, SITE);
    expect(words(html)).toContain('DRAFT');
    expect(words(html)).toContain('This card was printed from a draft. Never work from it. Take it out and use Rev D.');
    expect(html).toContain('data-rev="" ');
    expect(html).not.toContain('Rev&nbsp;</');
    expect(linksOf(html, 'C/OF-204/DRAFT/LARGE-LEFT/')).toEqual(['C/OF-204/D/LARGE-LEFT/', 'procedures/of-204/']);
    const { use: _use, ...unissued } = ANSWERS.DRAFT;
    expect(linksOf(answerPage(unissued, SITE), 'C/OF-204/DRAFT/LARGE-LEFT/')).toEqual(['procedures/of-204/']);
  });

  test('each standing has a word and a drawing of its own', () => {
    const drawings = Object.keys(WORDS).map((s) => signSvg(s as keyof typeof WORDS).replaceAll(/class="[^"]*"/gu, ''));
    expect(new Set(drawings).size).toBe(5);
    expect(new Set(Object.values(WORDS)).size).toBe(5);
  });

  test('10,000 are painted in a moment', () => {
    const started = performance.now();
    let length = 0;
    for (let i = 0; i < 10_000; i++)
      length += answerPage({ ...ANSWERS.SUPERSEDED, path: `C/OF-${i}/B/LARGE` }, SITE).length;
    expect(length).toBeGreaterThan(10_000_000);
    expect(performance.now() - started).toBeLessThan(5_000);
  });
});

describe('the page of a document that nobody may work from', () => {
  test('suspended: its issues, newest first, each card with its answer', () => {
    const text = words(suspended);
    expect(text).toContain('STOP – SUSPENDED');
    expect(text).toContain('Do not use any copy of OF-204.');
    expect(text).toContain('Suspended since 2026-11-12');
    expect(text.indexOf('Rev D effective 2026-09-14')).toBeLessThan(text.indexOf('Rev A effective 2026-03-02'));
    expect(text).toContain('Minor change, approved 2026-09-14');
    const links = linksOf(suspended, 'procedures/of-204/');
    expect(links).toHaveLength(8);
    expect(new Set(links)).toEqual(new Set(SUSPENDED_ANSWERS.map((a) => `${a.path}/`)));
  });

  test('a card whose address has steps behind it is never linked', () => {
    const state = { ...STATE, standing: 'suspended', suspended: SUSPENSION } as const;
    const html = documentAnswerPage(
      state,
      SUSPENDED_ANSWERS.filter((a) => a.rev !== 'D'),
      SITE,
    );
    expect(linksOf(html, 'procedures/of-204/').filter((l) => l.includes('/D/'))).toEqual([]);
  });

  test('withdrawn, not yet effective, never issued', () => {
    const withdrawn = documentAnswerPage({ ...STATE, standing: 'withdrawn', withdrawn: WITHDRAWAL }, [], SITE);
    expect(words(withdrawn)).toContain('Take every copy of OF-204 out. Use OF-310 instead.');
    expect(words(withdrawn)).toContain('Withdrawn since 2026-11-20');
    expect(linksOf(withdrawn, 'procedures/of-204/')).toEqual(['procedures/of-310/']);

    const next = { ...samples.issue('A', 1), effective: '2026-12-01' };
    const coming = documentAnswerPage(
      { ...STATE, standing: 'not yet effective', issues: [next], coming: [next] },
      [],
      SITE,
    );
    expect(words(coming)).toContain('Do not work from OF-204 before 2026-12-01.');
    expect(words(coming)).toContain('Rev A will be effective 2026-12-01');
    expect(coming).toContain('data-turns="2026-12-01"');

    const draft = documentAnswerPage({ ...STATE, standing: 'draft only', issues: [] }, [], SITE);
    expect(words(draft)).toContain('DRAFT ONLY');
    expect(words(draft)).toContain('OF-204 was never issued. Never work from a draft.');
    expect(draft).not.toContain('Its revisions');
  });

  test('one in force has a page of the site instead', () => {
    expect(() => documentAnswerPage(STATE, [], SITE)).toThrow(RangeError);
  });
});

describe('a comparison', () => {
  const html = comparisonPage(COMPARISON, FACTS, SITE);
  const text = words(html);

  test('has the change record of the newer issue at its top', () => {
    expect(text).toContain('OF-204 Rev B → to Rev C Overhaul the plate cooler What End-cover torque 85 → 95 N·m');
    expect(text).toContain('Class Major change Author Tomas Hallworth, shop lead');
    expect(text).toContain('Approved Maren Osei, quality lead, 2026-07-13');
    expect(text).toContain('Rev C from 2026-07-13 (Rev B from 2026-05-04)');
    expect(text).toContain('Affects OF-131, OF-240');
  });

  test('groups by meaning, numbers first and torque first of these', () => {
    const order = ['Numbers 2', 'Torque of the', 'Height of the', 'Warnings and stored energy 1', 'Steps 2', 'Tools,'];
    const places = order.map((o) => text.indexOf(o, text.indexOf('Document 1')));
    expect(places.every((p) => p > 0)).toBe(true);
    expect(places.toSorted((a, b) => a - b)).toEqual(places);
    for (const { words: line } of COMPARISON.changes) expect(text).toContain(line);
  });

  test('shows old beside new, with steps and variants', () => {
    expect(text).toContain(
      'CHANGED Step 18, now 19 Torque of the end-cover joint: 85 → 95 N·m Rev B 85 N·m Rev C 95 N·m',
    );
    expect(text).toContain('Step 17, now 18 Large, left Large, right Height');
    expect(text).toContain('ADDED Step 5 of Rev C Warning added');
    expect(text).toContain('Rev B not there Rev C WARNING.');
    expect(text).toContain('REMOVED Step 17 of Rev B Small Spring washer');
    expect(html).toContain('turned <del>evenly,</del> until');
    expect(html).toContain('turned <ins>by half a turn each,</ins> until');
  });

  test('leads to the issue in force and to its neighbours', () => {
    expect(text).toContain('Open OF-204 Rev D, in force now');
    expect(new Set(linksOf(html, 'compare/of-204/b-c/').filter((l) => !l.startsWith('compare/of-204/b-c/')))).toEqual(
      new Set(['procedures/of-204/', 'compare/of-204/a-b/', 'compare/of-204/c-d/']),
    );
    const one = { ...STATE, current: samples.issue('D', 4, ['']) };
    const single = comparisonFacts(COMPARISON, { ...VIEW, documents: [one] }, (id) => id);
    expect(single.current?.path).toBe('C/OF-204/D/');
  });

  test('of a suspended document says stop first and leads to no steps', () => {
    const state = { ...STATE, standing: 'suspended', suspended: SUSPENSION } as const;
    const facts = comparisonFacts(COMPARISON, { ...VIEW, documents: [state] }, (id) => id);
    const page = comparisonPage(COMPARISON, facts, SITE);
    expect(words(page)).toContain('STOP – SUSPENDED Do not use any copy of OF-204.');
    expect(words(page)).not.toContain('Open OF-204');
    expect(linksOf(page, 'compare/of-204/b-c/').filter((l) => l.startsWith('C/'))).toEqual([]);
  });

  test('of an issue whose day has not come says so', () => {
    const facts = { ...FACTS, newer: { ...FACTS.newer, effective: '2026-12-01' } };
    expect(words(comparisonPage(COMPARISON, facts, SITE))).toContain('Rev C from 2026-12-01, not yet effective (Rev B');
    expect(text).not.toContain('not yet effective');
  });

  test('without changes says so; of issues that are not there is refused', () => {
    expect(words(comparisonPage({ ...COMPARISON, changes: [] }, FACTS, SITE))).toContain(
      'Nothing that the cards say differs in meaning.',
    );
    expect(() => comparisonFacts({ ...COMPARISON, to: 'F' }, VIEW, (id) => id)).toThrow(RangeError);
  });
});

describe('texts that try to be markup', () => {
  const hostile = `"><script>alert('1')</script><img src=x onerror="a()">&amp;`;
  const answer = (a: Answer): Answer => ({
    ...a,
    doc: hostile,
    title: hostile,
    rev: hostile,
    label: hostile,
    fingerprint: hostile,
    effective: hostile,
    reason: hostile,
    since: hostile,
    use: { doc: hostile, title: hostile, rev: hostile, path: 'C/OF-1/A' },
    later: [{ rev: hostile, effective: hostile, what: hostile, why: hostile, compare: 'compare/of-1/a-b/' }],
  });
  const site = { ...SITE, name: hostile, safety: hostile, report: hostile };
  const still = (html: string) => {
    expect(unsound(html)).toEqual([]);
    expect(html).not.toMatch(/<img|<script(?! type="module" src=")/u);
    expect(textOf(html)).toContain(hostile);
  };

  test.each(Object.entries(ANSWERS))('stay text in an answer: %s', (_name, a) => still(answerPage(answer(a), site)));

  test('stay text on the page of a document and in a comparison', () => {
    const issue = { ...samples.issue('A', 1), title: hostile, rev: hostile, affects: [hostile] };
    const change = { what: hostile, why: hostile, class: 'major' } as const;
    const state = { ...STATE, title: hostile, issues: [{ ...issue, change }] };
    still(
      documentAnswerPage({ ...state, standing: 'suspended', suspended: { ...SUSPENSION, reason: hostile } }, [], site),
    );
    const changes = COMPARISON.changes.map((c) => ({
      ...c,
      words: hostile,
      before: `${hostile} old words`,
      after: `${hostile} new words`,
      variants: [hostile],
    }));
    const facts = { ...FACTS, title: hostile, author: hostile, approver: hostile, newer: { ...issue, change } };
    still(comparisonPage({ ...COMPARISON, changes }, facts, site));
  });
});
