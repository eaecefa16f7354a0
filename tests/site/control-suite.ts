/** What the pages of a shop under control must say, read from their HTML. */

import { describe, expect, test } from 'vitest';
import { attributes, type Built, textOf } from './built.ts';
import { AS_OF, type Controlled, HOSTILE } from './control-fixture.ts';

/** Files that other stages make and to which these pages lead. */
export function controlElsewhere({ shop, control }: Controlled): readonly string[] {
  const inForce = new Set(shop.documents.map((d) => d.doc));
  return [
    'control/master-list.pdf',
    ...control.comparisons.map((c) => `${c.path}index.html`),
    ...control.open.map((n) => `notices/${n.number}-${n.bench}.pdf`.toLowerCase()),
    ...control.documents
      .filter((d) => !inForce.has(d.doc) && d.standing !== 'draft only')
      .map((d) => `procedures/${d.doc.toLowerCase()}/index.html`),
  ];
}

/** Words of a page on one line. */
export function wordsOf(html: string): string {
  return textOf(html).replace(/\s+/gu, ' ');
}

export function controlSuite(site: () => Built, { shop, control }: Controlled): void {
  const html = (page: string) => site().read(`${page}index.html`);
  const words = (page: string) => wordsOf(html(page));

  describe('procedure pages', () => {
    const page = 'C/OF-204/D/LARGE/';

    test('say the standing, the effective date and the day of the answer, for people and for the audit', () => {
      expect(words(page)).toMatch(/OF-204 Large Rev D Effective 2026-03-02 As of 2026-11-25 CURRENT/u);
      const variant = shop.documents.find((d) => d.doc === 'OF-204')?.variants.find((v) => v.label === 'Large');
      const [main = ''] = /<main[^>]*>/u.exec(html(page)) ?? [];
      expect(attributes(`${main}</main>`, 'data-card-path')).toEqual(['C/OF-204/D/LARGE']);
      for (const [name, value] of [
        ['data-standing', 'current'],
        ['data-doc', 'OF-204'],
        ['data-rev', 'D'],
        ['data-label', 'Large'],
        ['data-fingerprint', variant?.fingerprint ?? '-'],
        ['data-as-of', AS_OF],
        ['data-fresh-days', String(shop.info.control.freshDays)],
        ['data-turns', '2026-12-01'],
      ] as const)
        expect(attributes(main, name), name).toEqual([value]);
      expect(html(page)).toMatch(/<script type="module" src="[./]+scan-mark\.js">/u);
    });

    test('name the temporary change at the top, and show it before the step that it touches', () => {
      const all = words(page);
      expect(all).toContain('One temporary change is in force TC-07: before step 3 until 2026-12-20');
      const markup = html(page);
      const box = markup.indexOf('TEMPORARY CHANGE TC-07');
      expect(box).toBeGreaterThan(markup.indexOf('data-step="2"'));
      expect(box).toBeGreaterThan(markup.indexOf('data-step="3"'));
      expect(box).toBeLessThan(markup.indexOf('aria-label="Step 3"'));
      const step = all.slice(all.indexOf('TEMPORARY CHANGE TC-07'));
      for (const text of [
        'until 2026-12-20',
        'Drain through the lower plug.',
        'serial numbers 1001 to 1040 only',
        'Approved by Maren Osei',
      ])
        expect(step.slice(0, 400)).toContain(text);
      expect(words('C/OF-204/D/SMALL/')).not.toContain('TC-07');
    });

    test('a temporary change stands before the warnings of its step', () => {
      const markup = html(page);
      const touched = markup.slice(markup.indexOf('data-step="3"'), markup.indexOf('data-step="4"'));
      const warning = touched.indexOf('class="warn ');
      if (warning >= 0) expect(touched.indexOf('class="temporary"')).toBeLessThan(warning);
      expect(touched.indexOf('class="temporary"')).toBeGreaterThan(0);
    });

    test('mark what changed with a bar, and in words for those who do not see it', () => {
      const markup = html(page);
      const step = (n: number) =>
        markup.slice(markup.indexOf(`data-step="${n}"`), markup.indexOf(`data-step="${n + 1}"`));
      expect(step(2)).toContain('class="do changed"');
      expect(wordsOf(step(2))).toContain('Changed since Rev C: what is done and parts and tools.');
      expect(step(4)).not.toMatch(/class="[^"]*changed/u);
      const tightened = shop.documents
        .find((d) => d.doc === 'OF-204')
        ?.variants.find((v) => v.label === 'Large')
        ?.stages.flatMap((s) => s.steps)
        .filter((s) => s.tighten !== undefined);
      expect(tightened?.length).toBeGreaterThan(0);
      for (const { number } of tightened ?? [])
        expect(step(number)).toMatch(/<div class="changed">\s*<div class="torque">/u);
      expect(words('C/OF-131/C/')).not.toContain('Changed since');
    });

    test('have the panel of changes with the way to the comparison, approval, signature and review', () => {
      const all = words(page);
      expect(all).toContain('Changed since Rev C Torque of the end-cover joint: 85 → 95 N·m');
      expect(all).toContain('and 2 further changes');
      expect(html(page)).toContain('href="../../../../compare/of-204/c-d/"');
      expect(all).toContain('The approval is signed, key 0123456789abcdef.');
      expect(words('C/OF-117/C/TWO-STAGE/')).toContain('overdue by 55 days');
    });

    test('a draft says so in bar, banner and title, is marked as no card to work from, and leads to the issue', () => {
      const draft = 'C/OF-204/DRAFT/LARGE/';
      expect(html(draft)).toContain('marked-draft');
      expect(html(draft)).toContain('data-standing="draft"');
      expect(words(draft)).toContain('DRAFT: not for work Nobody has approved these steps.');
      expect(html(draft)).toMatch(/<title>[^<]*, draft ·/u);
      expect(html(draft)).toContain('href="../../../../procedures/of-204/"');
      expect(words(draft)).not.toContain('CURRENT');
      expect(words(draft)).not.toContain('Approved by');
      expect(html(page)).not.toContain('marked-draft');
    });
  });

  test('the landing page tells what comes, the temporary change, the receipts, the draft, and the history', () => {
    const all = words('procedures/of-204/');
    expect(all).toContain(
      `Rev E from 2026-12-01 (in 6 days): Torque of the end covers raised ${HOSTILE} What changes with Rev E`,
    );
    expect(all).toContain('TC-07, step 3, until 2026-12-20 (26 days left)');
    expect(all).toContain('1 receipt open, 1 overdue');
    expect(all).toContain('The draft differs from Rev D in 2 points');
    const history = all.slice(all.lastIndexOf('Revisions of OF-204'));
    expect(history).toMatch(/E 2026-12-01 not yet effective .* D 2026-03-02 current .* C 2023-09-04 superseded/u);
    for (const pair of ['d-e', 'c-d', 'b-c', 'a-b'])
      expect(html('procedures/of-204/')).toContain(`href="../../compare/of-204/${pair}/"`);
  });

  test('the master list holds every document with its standing, approver and review', () => {
    const all = words('revisions/');
    for (const { doc, title } of control.documents) expect(all).toContain(`${doc} ${title}`);
    expect(all).toContain('suspended since 2026-11-18. A bonnet was released');
    expect(all).toContain('withdrawn since 2026-08-03. The winch was taken out of service. Use OF-251.');
    expect(all).toContain('not yet effective Rev C from 2026-12-05');
    expect(all).toContain('OF-270 Hawse pipe covers draft only');
    expect(all).toContain('2026-10-01 OVERDUE');
    expect(html('revisions/')).toContain('href="../control/master-list.pdf"');
  });

  test('document control lists what is not in order, the lists and the ledger', () => {
    const all = words('control/');
    for (const text of [
      'OF-163 Renew the bonnet gasket',
      'CN-51 Heat exchange, copy 1',
      'OVERDUE',
      'Cooler manual RWC-4 edition 6 OF-204 rests on an older edition',
      'TC-07 OF-204',
      'OF-204 Rev E',
      'FB-03 OF-204 Rev D, step 4 The socket does not reach.',
      'Torque of the end-cover joint: 85 → 90 N·m',
      'OF-270 Hawse pipe covers never issued',
      'Lines 58',
      'npm run verify',
    ])
      expect(all).toContain(text);
    expect(all.replaceAll(' ', '')).toContain(control.ledger.head);
    expect(all).not.toContain('Everything is in order');
  });

  test('receipts stand oldest first with their age, overdue in words, each with its notice', () => {
    const all = words('control/receipts/');
    expect(all).toMatch(
      /CN-51.*OVERDUE, 15 days, 3 allowed.*CN-57.*1 day, 1 allowed.*Received.*CN-50.*2026-11-12 Silvia Maddern/u,
    );
    expect(all).toContain('Out: OF-204 Rev C (Large). In: OF-204 Rev D (Large).');
    expect(html('control/receipts/')).toContain('href="../../notices/cn-51-heat-exchange.pdf"');
  });

  test('reviews, outside documents and feedback say what is late or waits', () => {
    expect(words('control/reviews/')).toMatch(
      /1 overdue, 1 due soon, .*OF-117 .*OVERDUE by 55 days.*OF-131 .*in 35 days/u,
    );
    const outside = words('control/outside/');
    expect(outside).toContain('NOT COMPARED: OF-204');
    expect(outside).toMatch(/Register .*Cooler manual RWC-4/u);
    expect(outside).toContain('torque of the end-cover joint 85 N·m (page 31)');
    expect(outside).toContain('Maren Osei, 2026-11-02 The page is word for word the same.');
    expect(words('control/feedback/')).toMatch(/FB-03 .*Answered.*FB-02 .*Enlarged in the next issue/u);
  });

  test('a bench names its copy, its cards with fingerprints, its notices and what may not hang there', () => {
    const all = words('benches/heat-exchange/');
    expect(all).toContain('Copy number 1');
    expect(all).toContain('CN-51');
    for (const v of shop.documents.find((d) => d.doc === 'OF-204' && d.standing === undefined)?.variants ?? [])
      expect(all).toContain(v.fingerprint);
    expect(html('benches/heat-exchange/')).toContain('href="audit/"');
    expect(words('benches/pumps-valves/')).toContain('No card of these may hang here OF-163');
    expect(words('benches/pumps-valves/')).not.toContain(
      'OF-163 Renew the bonnet gasket and packing of the fire-main valve C ',
    );
  });

  test('home says what is not in order and what changed lately', () => {
    const all = words('');
    expect(all).toContain('OF-163 SUSPENDED');
    expect(all).toContain('CN-51 without a receipt');
    expect(all).toContain('OF-204 Rev E comes');
    expect(all).toMatch(/What changed OF-184 Rev C .*2026-10-12/u);
    expect(all).not.toContain('OF-117 Rev C Renew');
  });

  test('every page ends with the day of its answers and leads to document control', () => {
    for (const file of site().files.filter((f) => f.endsWith('.html'))) {
      const foot = site().read(file).slice(site().read(file).lastIndexOf('<footer'));
      expect(wordsOf(foot), file).toContain(`As of ${AS_OF}`);
      expect(foot, file).toContain('>Document control</a>');
    }
  });

  test('nothing counts, orders or finds a draft as if it were in force', () => {
    const index = site().read('search-index.json');
    expect(index.match(/\(draft\)/gu)?.length).toBe(1);
    expect(site().read('orders/needs.json')).not.toContain('DRAFT');
    const inForce = shop.documents.filter((d) => d.standing === undefined).length;
    expect(words('procedures/')).toContain(`${inForce} procedures in force.`);
    expect(words('procedures/')).toContain('Drafts: not for work');
    const uses = site().files.filter((f) => /^(?:tools|consumables|machines)\//u.test(f) && f.endsWith('.html'));
    expect(uses.filter((f) => site().read(f).includes('/DRAFT/'))).toEqual([]);
  });

  test('what people wrote stays text on every page', () => {
    const pages = site().files.filter((f) => f.endsWith('.html'));
    expect(pages.filter((f) => /<img\b/u.test(site().read(f)))).toEqual([]);
    for (const page of ['', 'control/', 'control/feedback/', 'control/outside/', 'revisions/', 'procedures/of-204/'])
      expect(words(page), page).toContain(HOSTILE);
  });

  test('the list of fingerprints holds every printed card', () => {
    expect(JSON.parse(site().read('control/fingerprints.json'))).toEqual(control.fingerprints);
  });

  test('nothing of the ledger, its hashing or the view gets into what the browser loads', () => {
    const scripts = site().files.filter((f) => f.startsWith('_astro/') && f.endsWith('.js'));
    expect(scripts.length).toBeGreaterThan(3);
    for (const file of scripts)
      expect(site().read(file), file).not.toMatch(/["'`]node:|createHash|c0ffee00|virtual:control/u);
  });
}
