/** The worksheets of every joint of the demo: complete, in their places, nothing over anything else. */

import { describe, expect, test } from 'vitest';
import type { Block, Content, Node } from '../../src/layout/card/index.ts';
import { loadFaces } from '../../src/layout/type/index.ts';
import { bandFigure, jointInputs, layoutWorksheets, type WorksheetLayout } from '../../src/layout/worksheet/index.ts';
import type { JointPlan, Machine } from '../../src/resolve/index.ts';
import { type Expr, evaluate, printSymbol, type SymbolName } from '../../src/torque/formula/index.ts';
import { demo } from '../cards/demo.ts';
import { clashes } from './figure-boxes.ts';

const { shop } = demo();
const joints = shop.machines.flatMap((machine) =>
  machine.joints.map(({ plan, variants }) => ({ plan, variants, machine })),
);
const title = (plan: JointPlan) => `${plan.machine}/${plan.id}`;

test('the demo has joints of many kinds to try', () => {
  expect(joints.length).toBeGreaterThan(20);
  expect(joints.some((j) => j.plan.adapter !== undefined && j.plan.runDown !== undefined)).toBe(true);
  expect(joints.some((j) => j.plan.result.preloadBasis === 'yield')).toBe(true);
  expect(joints.some((j) => j.plan.thread.system === 'unified')).toBe(true);
});

/** Every symbol of a tree with the value that it holds there. */
function symbolsOf(expr: Expr): { readonly name: SymbolName; readonly value: number }[] {
  switch (expr.kind) {
    case 'constant':
      return [];
    case 'quantity':
      return [{ name: expr.name, value: expr.value }];
    case 'sum':
      return expr.terms.flatMap((t) => symbolsOf(t.of));
    case 'product':
      return expr.factors.flatMap(symbolsOf);
    case 'fraction':
      return [...symbolsOf(expr.over), ...symbolsOf(expr.under)];
    case 'root':
      return symbolsOf(expr.of);
    case 'power':
      return symbolsOf(expr.base);
    case 'cosine':
      return symbolsOf(expr.angle);
  }
}

describe('inputs', () => {
  test.each(joints.map((j) => [title(j.plan), j] as const))(
    '%s: whatever the working takes as given is listed',
    (_, { plan }) => {
      const inputs = jointInputs(plan);
      const listed = new Set(
        inputs.flatMap(({ symbol }) => {
          if (symbol === undefined) return [];
          // One line may speak for thread and face: µ with the subscript `G, K`.
          return (symbol.sub?.split(', ') ?? ['']).map((sub) => `${symbol.letter}${sub}`);
        }),
      );
      const made = new Map<string, number>();
      for (const line of plan.result.working) {
        for (const { name, value } of symbolsOf(line.formula)) {
          const before = made.get(printSymbol(name));
          if (before !== undefined) expect(value, `${line.name}: ${printSymbol(name)}`).toBeCloseTo(before, 9);
          else {
            const base = `${name.letter}${(name.sub ?? '').replace(/(?:^|, )(?:low|high)$/u, '')}`;
            expect(listed, `${line.name} uses ${printSymbol(name)}`).toContain(base);
          }
        }
        made.set(printSymbol(line.symbol), evaluate(line.formula));
      }
    },
  );

  test.each(joints.map((j) => [title(j.plan), j] as const))(
    '%s: every input has a value and says where it is from',
    (_, { plan }) => {
      for (const input of jointInputs(plan)) {
        expect(input.value, input.name).not.toMatch(/undefined|NaN|^$/u);
        expect(input.origin, input.name).not.toMatch(/undefined|^$/u);
      }
    },
  );

  test('a grade without proof stress says that preload rests on yield', () => {
    const found = joints.find((j) => j.plan.result.preloadBasis === 'yield');
    const proof = found && jointInputs(found.plan).find((i) => i.name === 'proof stress');
    expect(proof?.value).toBe('none');
    expect(proof?.origin).toContain('preload rests on yield');
  });

  test('a stated torque names its document, a computed one says so', () => {
    for (const { plan } of joints) {
      const torque = jointInputs(plan).find((i) => i.symbol?.letter === 'T' && i.symbol.sub === undefined);
      expect(torque?.origin, title(plan)).toContain(
        plan.origin === 'stated' ? (plan.source?.document.split(' ')[0] ?? '?') : 'computed',
      );
    }
  });
});

describe('the figure of the bands', () => {
  test.each([60, 70, 100, 139, 140, 176])(
    'at %d mm no words of any joint lie on others, and all marks lie within',
    (width) => {
      for (const { plan } of joints) {
        const drawing = bandFigure(plan, width);
        expect(clashes(drawing), title(plan)).toEqual([]);
        for (const mark of drawing.marks) {
          if (mark.kind !== 'line' && mark.kind !== 'path') continue;
          for (const p of mark.kind === 'line' ? [mark.from, mark.to] : mark.points) {
            expect(p.x >= 0 && p.x <= width && p.y >= 0 && p.y <= drawing.height, title(plan)).toBe(true);
          }
        }
      }
    },
  );

  test('bars and torque stand where their numbers are on a scale from zero', () => {
    for (const { plan } of joints) {
      const { marks } = bandFigure(plan, 70);
      const bars = marks.filter((m) => m.kind === 'path' && m.fill === 'tint');
      const pointer = marks.find((m) => m.kind === 'path' && m.fill === 'accent');
      const [first, second] = bars.map((m) => (m.kind === 'path' ? m.points.map((p) => p.x) : []));
      if (first === undefined || second === undefined || pointer?.kind !== 'path') throw new Error('no bars');
      const zero = 1.5;
      const perNm = (Math.max(...first) - zero) / plan.result.shortForm.high;
      const at = (nm: number) => zero + nm * perNm;
      expect(Math.min(...first)).toBeCloseTo(at(plan.result.shortForm.low), 6);
      expect(Math.min(...second)).toBeCloseTo(at(plan.result.longForm.low), 6);
      expect(Math.max(...second)).toBeCloseTo(at(plan.result.longForm.high), 6);
      expect(pointer.points[0]?.x).toBeCloseTo(at(plan.result.targetNm), 6);
    }
  });

  test('says in words what it shows', () => {
    for (const { plan } of joints) {
      const { description } = bandFigure(plan, 100);
      expect(description).toContain(`The ${plan.origin} torque`);
      expect(description).toContain(plan.result.statedPlace?.inBand === false ? 'outside' : 'inside');
      expect(description).not.toMatch(/NaN|undefined/u);
    }
  });
});

/** Texts of a block with their places from the corner of the page. */
function textsOf(
  block: Block,
  dx: number,
  dy: number,
): { text: string; x: number; y: number; width: number; size: number }[] {
  const of = (n: Node): readonly Content[] => [...n.items, ...n.kids.flatMap(of)];
  return block.nodes
    .flatMap(of)
    .flatMap((i) =>
      i.kind === 'text' ? [{ text: i.text, x: i.x + dx, y: i.y + dy, width: i.width, size: i.size }] : [],
    );
}

describe('the sheets', () => {
  const mm = 72 / 25.4;
  const machines = shop.machines.filter((m) => m.joints.length > 0);
  const laid = new Map(machines.map((m) => [m, layoutWorksheets(shop, m, loadFaces())]));
  const sheetsOf = (machine: Machine): WorksheetLayout => laid.get(machine) ?? { width: 0, height: 0, pages: [] };

  test.each(machines.map((m) => [m.id, m] as const))(
    '%s: every joint begins a page and takes two, or three when its wrench is corrected',
    (_, machine) => {
      const { pages } = sheetsOf(machine);
      const starts = pages.flatMap((p, i) => (p.bookmark === '' ? [] : [i]));
      expect(starts.length).toBe(machine.joints.length);
      machine.joints.forEach(({ plan }, k) => {
        const count = (starts[k + 1] ?? pages.length) - (starts[k] ?? 0);
        const corrected = plan.adapter !== undefined || plan.runDown !== undefined;
        expect(count, plan.id).toBeLessThanOrEqual(corrected ? 3 : 2);
      });
    },
  );

  test('fit two pages a joint on Letter paper too, which is the shorter', () => {
    const letter = { ...shop, info: { ...shop.info, cardFormat: 'Letter' as const } };
    for (const machine of machines) {
      const joints = machine.joints.filter((j) => j.plan.adapter === undefined && j.plan.runDown === undefined);
      if (joints.length === 0) continue;
      const { pages, height } = layoutWorksheets(letter, { ...machine, joints }, loadFaces());
      expect(height).toBe(792);
      expect(pages.length, machine.id).toBeLessThanOrEqual(2 * joints.length);
    }
  });

  test.each(machines.map((m) => [m.id, m] as const))(
    '%s: every input and every result stands on its sheets',
    (_, machine) => {
      const { pages } = sheetsOf(machine);
      const starts = pages.flatMap((p, i) => (p.bookmark === '' ? [] : [i]));
      const squeeze = (text: string) => text.replace(/\s/gu, '');
      machine.joints.forEach(({ plan }, k) => {
        const own = pages.slice(starts[k] ?? 0, starts[k + 1] ?? pages.length);
        const words = squeeze(
          own.flatMap((p) => p.blocks.flatMap((b) => textsOf(b.block, 0, 0).map((t) => t.text))).join(''),
        );
        for (const line of plan.result.working) expect(words, line.name).toContain(squeeze(line.result));
        for (const input of jointInputs(plan)) {
          expect(words, input.name).toContain(squeeze(input.value));
          expect(words, input.name).toContain(squeeze(input.origin));
        }
        expect(words).toContain(squeeze('A check, computed by the shop.'));
      });
    },
  );

  test.each(machines.map((m) => [m.id, m] as const))(
    '%s: nothing lies on anything else or outside its margins',
    (_, machine) => {
      const { pages, width, height } = sheetsOf(machine);
      for (const page of pages) {
        const texts = [...page.blocks, page.footer].flatMap((b) => textsOf(b.block, b.x, b.y));
        const outside = texts.filter(
          (t) => t.x < 22 * mm - 0.01 || t.x + t.width > width - 12 * mm + 0.6 || t.y > height - 9 * mm || t.size < 8,
        );
        expect(outside).toEqual([]);
        const foot = page.footer.y;
        for (const b of page.blocks) expect(b.y + b.block.height, page.bookmark).toBeLessThanOrEqual(foot + 0.01);
        const clashing: string[] = [];
        texts.forEach((a, i) => {
          for (const b of texts.slice(i + 1)) {
            // Height of figures; an exponent's foot may reach below the top of its base.
            const over = a.x < b.x + b.width - 0.3 && b.x < a.x + a.width - 0.3;
            const level = Math.min(a.y, b.y) > Math.max(a.y - 0.6 * a.size, b.y - 0.6 * b.size);
            if (over && level) clashing.push(`${a.text} on ${b.text}`);
          }
        });
        expect(clashing).toEqual([]);
      }
    },
  );
});
