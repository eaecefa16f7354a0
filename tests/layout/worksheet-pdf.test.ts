/** The worksheets as a PDF, read back. */

import { describe, expect, test } from 'vitest';
import { paintWorksheets } from '../../src/render/pdf/paint-worksheets.ts';
import { demo } from '../cards/demo.ts';
import { elements, readOutline, readPdf, squeeze } from '../cards/read-pdf.ts';

const { shop } = demo();
const machine = shop.machines.find((m) => m.joints.some((j) => j.plan.adapter !== undefined));
if (machine === undefined) throw new Error('the demo has no joint with an adapter');
const bytes = await paintWorksheets(shop, machine);
const pdf = await readPdf(bytes);

describe(`the worksheets of ${machine.id}`, () => {
  test('give the same bytes every time', async () => {
    expect(Buffer.compare(Buffer.from(await paintWorksheets(shop, machine)), Buffer.from(bytes))).toBe(0);
  });

  test('are tagged: formulas are read out as text, figures described, nothing painted outside marks', () => {
    expect([...new Set(pdf.pages.flatMap((p) => p.faults))]).toEqual([]);
    expect(pdf.info.Title).toContain(machine.name);
    const nodes = pdf.pages.flatMap((p) => elements(p.structure));
    const alts = nodes.map((n) => n.alt ?? '');
    for (const { plan } of machine.joints) {
      for (const line of plan.result.working) {
        expect(
          alts.some((alt) => alt.includes(line.text.withNumbers)),
          line.name,
        ).toBe(true);
      }
    }
    expect(nodes.filter((n) => n.role === 'Figure').every((n) => (n.alt ?? '') !== '')).toBe(true);
    expect(nodes.filter((n) => n.role === 'H1').length).toBe(machine.joints.length);
  });

  test('say on each page who computed them, which page it is, and that the manual governs', () => {
    pdf.pages.forEach((page, i) => {
      expect(page.joined).toContain(squeeze(`Page ${i + 1} of ${pdf.pages.length}`));
      expect(page.joined).toContain(squeeze(shop.info.name));
      expect(page.joined).toContain(squeeze("the maker's manual governs"));
    });
  });

  test('have a bookmark a joint', async () => {
    const titles = (await readOutline(bytes)).map((entry) => entry.title.toLowerCase());
    expect(titles).toEqual(
      machine.joints.map((j) => `${j.plan.name}${j.variants === '' ? '' : `, ${j.variants}`}`.toLowerCase()),
    );
  });
});

test('a machine without joints has no worksheets', async () => {
  await expect(paintWorksheets(shop, { ...machine, joints: [] })).rejects.toThrow(RangeError);
});
