/** Asks the index of the demo shop the questions that a mechanic asks. */

import { beforeAll, describe, expect, test } from 'vitest';
import { buildSearchFile, type Finder, makeFinder, type SearchFile } from '../../src/render/search/index.ts';
import type { JointPlan } from '../../src/resolve/types.ts';
import { formatQuantity } from '../../src/units/index.ts';
import { demoShop } from '../site/demo.ts';

let file: SearchFile;
let finder: Finder;
const shop = demoShop();

beforeAll(() => {
  // Through JSON, as the browser gets it.
  file = JSON.parse(JSON.stringify(buildSearchFile(shop))) as SearchFile;
  finder = makeFinder(file);
});

const found = (query: string) => finder.find(query, 200).findings;
const procedures = (query: string) =>
  found(query)
    .filter((f) => f.entry.kind === 'procedure')
    .map((f) => f.entry.mark);
const joints = shop.documents.flatMap((d) =>
  d.variants.flatMap((v) => v.joints.map((joint) => ({ doc: d.doc, joint }))),
);
const holding = (wanted: (joint: JointPlan) => boolean) => [
  ...new Set(joints.filter((j) => wanted(j.joint)).map((j) => j.doc)),
];

describe('by what stands on the card', () => {
  test('every document number, in capitals or not', () => {
    for (const d of shop.documents) {
      expect(procedures(d.doc)[0]).toBe(d.doc);
      expect(procedures(d.doc.toLowerCase())[0]).toBe(d.doc);
    }
  });

  test('former numbers and other names', () => {
    const formers = shop.documents.flatMap((d) => d.formerly.map((f) => ({ doc: d.doc, f })));
    expect(formers.length).toBeGreaterThan(3);
    for (const { doc, f } of formers) expect(procedures(f), f).toContain(doc);
  });

  test('every machine, and its procedures', () => {
    for (const d of shop.documents) expect(procedures(d.machineName), d.machineName).toContain(d.doc);
    for (const m of shop.machines)
      expect(found(m.name).some((f) => f.entry.kind === 'machine' && f.entry.path === `machines/${m.id}/`)).toBe(true);
  });
});

describe('by part number', () => {
  const numbered = shop.machines.flatMap((m) =>
    m.parts.flatMap((p) =>
      p.number === undefined ? [] : [{ number: p.number, path: `machines/${m.id}/parts/${p.id}/` }],
    ),
  );

  test('whole and run together', () => {
    expect(numbered.length).toBeGreaterThan(20);
    for (const { number, path } of numbered) {
      for (const query of [number, number.toLowerCase(), number.replaceAll('-', '')]) {
        expect(
          found(query).map((f) => f.entry.path),
          query,
        ).toContain(path);
      }
    }
  });

  test('a fragment out of the middle', () => {
    const { number = '', path } = numbered.find((n) => /^[A-Z]+-\d{4}/u.test(n.number)) ?? numbered[0] ?? { path: '' };
    const fragment = number.slice(1, -1);
    expect(
      found(fragment).map((f) => f.entry.path),
      fragment,
    ).toContain(path);
  });
});

describe('by thread, wrench and torque', () => {
  test('every thread', () => {
    for (const designation of new Set(joints.map((j) => j.joint.thread.designation))) {
      const expected = holding((j) => j.thread.designation === designation);
      expect(procedures(designation), designation).toEqual(expect.arrayContaining(expected));
    }
  });

  test('a unified thread without its series', () => {
    const unified = joints.filter((j) => j.joint.thread.system === 'unified');
    expect(unified.length).toBeGreaterThan(0);
    for (const { doc, joint } of unified) {
      expect(procedures(joint.thread.designation.replace(/ [A-Z0-9]+$/u, '')), joint.thread.designation).toContain(doc);
    }
  });

  test('every torque in both units, with and without the unit', () => {
    for (const { doc, joint } of joints) {
      for (const torque of [joint.target, joint.targetSecond]) {
        const text = formatQuantity(torque);
        expect(procedures(text), text).toContain(doc);
        expect(procedures(text.split('\u00a0')[0] ?? ''), text).toContain(doc);
      }
    }
  });

  test('a torque that nothing has is not found as a piece of another', () => {
    const values = new Set([
      ...joints.flatMap(({ joint }) => joint.rounds.map((r) => r.torque.value)),
      ...joints.map((j) => j.joint.target.value),
    ]);
    const absent = [7, 11, 13].find((v) => !values.has(v)) ?? 3;
    for (const hit of found(`${absent} N·m`)) {
      for (const fact of hit.why) expect(fact.text).toMatch(new RegExp(String.raw`(?<![\d.])${absent}\u00a0N·m`, 'u'));
    }
  });

  test('every socket by its size', () => {
    const sizes = shop.tools.flatMap((t) =>
      t.kind === 'socket' && t.size !== undefined ? [{ id: t.id, text: formatQuantity(t.size) }] : [],
    );
    expect(sizes.some((s) => s.text.includes('/'))).toBe(true);
    for (const { id, text } of sizes)
      expect(
        found(text).map((f) => f.entry.path),
        text,
      ).toContain(`tools/${id}/`);
  });
});

describe('by words', () => {
  test('tools by their other names', () => {
    const named = shop.tools.flatMap((t) => t.alsoCalled.map((name) => ({ name, id: t.id })));
    expect(named.length).toBeGreaterThan(5);
    for (const { name, id } of named)
      expect(
        found(name).map((f) => f.entry.path),
        name,
      ).toContain(`tools/${id}/`);
  });

  test('one slip in a common word, and the words shown instead', () => {
    for (const [slip, word] of [
      ['gaskte', 'gasket'],
      ['bering', 'bearing'],
      ['sockett', 'socket'],
      ['tourque', 'torque'],
    ] as const) {
      const answer = finder.find(slip, 200);
      expect(answer.instead, slip).toBe(word);
      expect(answer.findings.length, slip).toBeGreaterThan(0);
      expect(answer.findings.map((f) => f.entry.path)).toEqual(
        finder.find(word, 200).findings.map((f) => f.entry.path),
      );
    }
  });

  test('a slip in a number finds nothing like it', () => {
    expect(finder.find('M166').findings).toEqual([]);
    expect(finder.find('OF-2044').findings).toEqual([]);
  });

  test('all words are asked for, over several steps', () => {
    const [first] = shop.documents;
    const words = `${first?.machineName ?? ''} ${first?.variants[0]?.tools[0]?.name ?? ''}`;
    expect(procedures(words)).toContain(first?.doc);
  });
});

describe('the answer', () => {
  test('says why, and for which variants', () => {
    const several = shop.documents.find(
      (d) => d.variants.length > 1 && new Set(d.variants.map((v) => v.joints.map((j) => j.count).join())).size > 1,
    );
    const serial = several?.variants[1]?.serials[0] ?? '';
    const hit = found(serial).find((f) => f.entry.mark === several?.doc);
    expect(hit?.why.map((w) => w.text)).toContain(`Serial numbers ${serial}`);
    expect(hit?.variants).toEqual([1]);
  });

  test('stands procedures before everything else', () => {
    const kinds = found('gasket').map((f) => f.entry.kind === 'procedure');
    expect(kinds.includes(true) && kinds.includes(false)).toBe(true);
    expect(kinds).toEqual([...kinds].sort((a, b) => Number(b) - Number(a)));
  });

  test('is empty for an empty question', () => {
    expect(finder.find('').findings).toEqual([]);
    expect(finder.find('   ').findings).toEqual([]);
  });

  test('comes from an index that depends on the shop alone', () => {
    expect(JSON.stringify(buildSearchFile(shop))).toBe(JSON.stringify(file));
  });
});
