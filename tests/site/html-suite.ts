/** What must hold of every built page, read from its HTML. */

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import type { ResolvedShop } from '../../src/resolve/types.ts';
import { formatNumber } from '../../src/units/index.ts';
import { attributes, type Built, textOf } from './built.ts';

/** PDFs are made by another stage; links to them are checked against the shop. */
function madeElsewhere(shop: ResolvedShop): ReadonlySet<string> {
  return new Set([
    ...shop.documents.flatMap((d) => d.variants.map((v) => `cards/${v.cardName}.pdf`)),
    ...shop.benches.map((b) => `binders/${b.id}.pdf`),
    ...shop.machines.filter((m) => m.joints.length > 0).map((m) => `worksheets/${m.id}.pdf`),
    'posters/torque-tables.pdf',
  ]);
}

/** more: files and pages of another stage to which this site also leads. */
export function htmlSuite(site: () => Built, shop: ResolvedShop, more: readonly string[] = []): void {
  const pages = () => site().files.filter((f) => f.endsWith('.html'));

  describe('pages', () => {
    test('there is one for everything in the shop', () => {
      const files = new Set(site().files);
      const wanted = [
        ...['', 'procedures/', 'machines/', 'benches/', 'tools/', 'consumables/', 'tables/', 'revisions/', 'about/'],
        ...shop.documents.flatMap((d) => [`procedures/${d.slug}/`, ...d.variants.map((v) => `${v.path}/`)]),
        ...shop.machines.flatMap((m) => [
          `machines/${m.id}/`,
          ...m.parts.map((p) => `machines/${m.id}/parts/${p.id}/`),
          ...m.joints.map((j) => `machines/${m.id}/joints/${j.plan.id}/`),
        ]),
        ...shop.benches.map((b) => `benches/${b.id}/`),
        ...shop.tools.map((t) => `tools/${t.id}/`),
        ...shop.consumables.map((c) => `consumables/${c.id}/`),
        ...shop.tables.map((t) => `tables/${t.id}/`),
        ...shop.statedTables.map((t) => `tables/from-manuals/${t.id}/`),
        'worksheet/',
        'orders/',
      ];
      expect(wanted.filter((w) => !files.has(`${w}index.html`))).toEqual([]);
      expect(files.has('404.html')).toBe(true);
    });

    test('every link and every asset leads to a file that is there, letter for letter', () => {
      const files = new Set(site().files);
      const elsewhere = new Set([...madeElsewhere(shop), ...more]);
      const ids = new Map<string, Set<string>>();
      const idsOf = (file: string) => {
        const known = ids.get(file) ?? new Set(attributes(site().read(file), 'id'));
        ids.set(file, known);
        return known;
      };
      const wrong: string[] = [];
      for (const page of pages()) {
        if (page === '404.html') continue;
        const html = site().read(page);
        for (const link of [...attributes(html, 'href'), ...attributes(html, 'src'), ...attributes(html, 'action')]) {
          if (/^https?:/u.test(link)) continue;
          const [whole = '', anchor] = link.split('#');
          const [to = ''] = whole.split('?');
          const target = to === '' ? page : path.posix.join(path.posix.dirname(page), to);
          const file = to.endsWith('/') || to === '.' ? path.posix.join(target, 'index.html') : target;
          if (link.startsWith('/')) wrong.push(`${page}: ${link} is not relative`);
          else if (!files.has(file) && !elsewhere.has(file)) wrong.push(`${page}: ${link} is nowhere`);
          else if (anchor !== undefined && anchor !== '' && !idsOf(file).has(anchor))
            wrong.push(`${page}: ${link} has no such place`);
        }
      }
      expect(wrong.slice(0, 20)).toEqual([]);
    });

    test('the page for lost addresses alone has whole ones, since it is shown at any depth', () => {
      const links = attributes(site().read('404.html'), 'href').filter((l) => !l.startsWith('#'));
      expect(links.length).toBeGreaterThan(5);
      expect(links.filter((l) => !l.startsWith(shop.info.basePath))).toEqual([]);
    });

    test('a page names its language, has one first heading, unique ids and the safety words', () => {
      const safety = textOf(`<p>${shop.info.safety.replaceAll('&', '&amp;')}</p>`).trim();
      for (const page of pages()) {
        const html = site().read(page);
        expect(html, page).toMatch(/^<!DOCTYPE html><html lang="en"/iu);
        expect(html.match(/<h1[\s>]/gu)?.length, page).toBe(1);
        const ids = attributes(html, 'id');
        expect(
          ids.filter((id, i) => ids.indexOf(id) !== i),
          page,
        ).toEqual([]);
        expect(textOf(html), page).toContain(safety);
      }
    });

    test('no page has a style attribute, an inline handler or an inline script', () => {
      for (const page of pages()) {
        const html = site().read(page);
        expect(attributes(html, 'style'), page).toEqual([]);
        expect(html, page).not.toMatch(/<[a-z][^>]*\son[a-z]+=/u);
        for (const [, attrs = ''] of html.matchAll(/<script([^>]*)>/gu)) expect(attrs, page).toContain('src=');
      }
    });
  });

  describe('numbers', () => {
    test('a torque is never glued to its unit, nor parted from it by a blank that may break', () => {
      const wrong: string[] = [];
      for (const page of pages()) {
        const text = textOf(site().read(page));
        for (const [found] of text.matchAll(/.{0,30}\d(?:[ \n]{0,3})(?:N·m|lbf·ft)(?!\p{L})/gu))
          wrong.push(`${page}: ${found}`);
      }
      expect(wrong.slice(0, 20)).toEqual([]);
    });

    test('every torque and limit of every step stands on its page', () => {
      for (const d of shop.documents) {
        for (const v of d.variants) {
          const text = textOf(site().read(`${v.path}/index.html`));
          for (const step of v.stages.flatMap((s) => s.steps)) {
            for (const m of step.measures) expect(text).toContain(m.limitText);
          }
          for (const joint of v.joints) {
            if (!v.stages.some((s) => s.steps.some((step) => step.tighten === joint.id))) continue;
            for (const round of joint.rounds)
              expect(text, `${d.doc} ${joint.id}`).toContain(`\n${String(round.setting.value)}\n`);
          }
        }
      }
    });

    test('every cell of a table from a manual stands on its page, beside the computed torque', () => {
      for (const { id, comparison } of shop.statedTables) {
        const text = textOf(site().read(`tables/from-manuals/${id}/index.html`));
        for (const cell of comparison.cells) {
          const row = text.slice(text.indexOf(cell.thread.designation, text.indexOf(`${cell.grade.id}, `)));
          expect(row, `${id} ${cell.thread.designation} ${cell.grade.id}`).toContain(formatNumber(cell.stated));
        }
      }
    });

    test('a joint says every line of its working, and what is an illustration stands on no procedure', () => {
      for (const m of shop.machines) {
        for (const { plan } of m.joints) {
          const html = site().read(`machines/${m.id}/joints/${plan.id}/index.html`);
          const text = textOf(html).toLowerCase();
          for (const line of plan.result.working)
            expect(text, `${plan.id} ${line.name}`).toContain(line.name.toLowerCase());
          expect(html).toContain('<math');
          expect(text.includes('what the rounds do')).toBe(
            m.joints.some((j) => j.plan.id === plan.id && j.plan.interaction !== undefined),
          );
        }
      }
      for (const page of pages().filter((p) => p.startsWith('C/')))
        expect(site().read(page)).not.toContain('llustration');
    });

    test('a computed torque is never shown without saying so', () => {
      for (const d of shop.documents) {
        for (const v of d.variants) {
          if (!v.joints.some((j) => j.origin === 'computed')) continue;
          expect(textOf(site().read(`${v.path}/index.html`))).toContain('computed,');
        }
      }
    });
  });

  test('a procedure with drawings, styles and scripts weighs less than 60 kB', () => {
    const weight = (file: string) => gzipSync(readFileSync(path.join(site().folder, file)), { level: 9 }).length;
    /** Files under `_astro/` that a page or a script of it asks for, itself and through others. */
    const asked = (file: string, found = new Set<string>()): ReadonlySet<string> => {
      for (const [name] of site()
        .read(file)
        .matchAll(/[\w.-]+\.(?:js|css)\b/g)) {
        const asset = `_astro/${name}`;
        if (!site().files.includes(asset) || found.has(asset)) continue;
        found.add(asset);
        asked(asset, found);
      }
      return found;
    };
    for (const page of pages().filter((p) => p.startsWith('C/'))) {
      const shared = [...asked(page)].reduce((sum, f) => sum + weight(f), 0);
      expect(shared, page).toBeGreaterThan(0);
      expect(weight(page) + shared, page).toBeLessThan(60_000);
    }
  });
}
