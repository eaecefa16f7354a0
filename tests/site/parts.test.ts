/** The small pure pieces under the pages: links, words, prose, groups of steps. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addInterval } from '../../src/control/dates.ts';
import {
  capital,
  duration,
  escapeHtml,
  href,
  joinUnits,
  list,
  proseHtml,
  ranges,
} from '../../src/render/html/index.ts';
import type { JointPlan, Step } from '../../src/resolve/types.ts';
import { partAtPoint } from '../../src/site/decimals.ts';
import { stepGroups } from '../../src/site/step-groups.ts';
import { demoShop } from './demo.ts';

describe('href', () => {
  test.each([
    ['', '', './'],
    ['', 'tools/', 'tools/'],
    ['tools/', 'tools/', './'],
    ['tools/', '', '../'],
    ['tools/a/', 'tools/b/', '../b/'],
    ['C/OF-204/B/LARGE/', 'cards/OF-204-LARGE.pdf', '../../../../cards/OF-204-LARGE.pdf'],
    ['C/OF-204/B/LARGE/', 'C/OF-204/B/LARGE/#step-3', '#step-3'],
    ['procedures/', 'C/A/B/#step-1', '../C/A/B/#step-1'],
  ])('from %j to %j is %j', (from, to, expected) => {
    expect(href(from, to)).toBe(expected);
  });

  test('always leads there, as a browser reads it', () => {
    const name = fc.stringMatching(/^[a-zA-Z0-9-]{1,5}$/u);
    const folder = fc.array(name, { maxLength: 5 }).map((parts) => parts.map((p) => `${p}/`).join(''));
    const file = fc.tuple(folder, fc.option(name, { nil: '' })).map(([f, n]) => `${f}${n}`);
    fc.assert(
      fc.property(folder, file, (from, to) => {
        const base = 'http://host/any/where/';
        expect(new URL(href(from, to), `${base}${from}`).href).toBe(`${base}${to}`);
      }),
    );
  });
});

describe('words', () => {
  test('runs of step numbers are drawn together', () => {
    expect(ranges([])).toBe('');
    expect(ranges([3])).toBe('3');
    expect(ranges([4, 3, 3])).toBe('3, 4');
    expect(ranges([1, 2, 3, 7, 9, 10, 11, 12])).toBe('1 to 3, 7, 9 to 12');
  });

  test('durations', () => {
    expect([0, 30, 2700, 7200, 8100].map(duration)).toEqual([
      '',
      '30\u00a0s',
      '45\u00a0min',
      '2\u00a0h',
      '2\u00a0h\u00a015\u00a0min',
    ]);
  });

  test('reviews fall due on a day of the calendar', () => {
    expect(addInterval('2024-08-31', '6 months')).toBe('2025-02-28');
    expect(addInterval('2023-08-31', '6 months')).toBe('2024-02-29');
    expect(addInterval('2024-02-29', '2 years')).toBe('2026-02-28');
    expect(addInterval('2024-11-05', '24 months')).toBe('2026-11-05');
    expect(addInterval('2024-11-05', 'soon')).toBeUndefined();
  });

  test('units are joined to their numbers, and only units', () => {
    expect(joinUnits('24 mm socket')).toBe('24\u00a0mm socket');
    expect(joinUnits('100 N·m torque wrench')).toBe('100\u00a0N·m torque wrench');
    expect(joinUnits('4 inspection lamps')).toBe('4 inspection lamps');
    expect(joinUnits('15/16 in socket, 2 t hoist')).toBe('15/16\u00a0in socket, 2\u00a0t hoist');
  });

  test('lists, capitals and decimal points', () => {
    expect([list([]), list(['a']), list(['a', 'b', 'c'])]).toEqual(['', 'a', 'a, b and c']);
    expect([capital(''), capital('front cover'), capital('ørsted')]).toEqual(['', 'Front cover', 'Ørsted']);
    expect([partAtPoint('8.5'), partAtPoint('120')]).toEqual([
      { whole: '8', rest: '.5' },
      { whole: '120', rest: '' },
    ]);
  });
});

describe('prose', () => {
  const none = () => undefined;

  test('author text is escaped wherever it stands', () => {
    const evil = '<b onclick="x">&\'';
    const html = proseHtml(
      [
        {
          kind: 'paragraph',
          runs: [
            { text: evil },
            { text: evil, strong: true, ref: { kind: 'tool', id: 'x' } },
            { text: evil, href: `https://x.example/${evil}` },
          ],
        },
      ],
      () => evil,
    );
    expect(html).not.toContain('<b ');
    expect(html).not.toMatch(/href="[^"]*[<>]/u);
    expect(html).toContain(escapeHtml(evil));
  });

  test('only web addresses become links', () => {
    const html = proseHtml([{ kind: 'paragraph', runs: [{ text: 'x', href: 'javascript:alert(1)' }] }], none);
    expect(html).toBe('<p>x</p>');
  });

  test('neighbouring items stand in one list', () => {
    const html = proseHtml(
      [
        { kind: 'paragraph', runs: [{ text: 'a' }] },
        { kind: 'item', runs: [{ text: 'b' }] },
        { kind: 'item', runs: [{ text: 'c', emphasis: true }] },
        { kind: 'paragraph', runs: [{ text: 'd' }] },
      ],
      none,
    );
    expect(html).toBe('<p>a</p><ul><li>b</li><li><em>c</em></li></ul><p>d</p>');
  });
});

describe('groups of steps', () => {
  const stages = demoShop().documents.flatMap((d) =>
    d.variants.flatMap((v) => v.stages.map((s) => ({ steps: s.steps, joints: v.joints }))),
  );
  const isJoint = (step: Step | undefined, joint: JointPlan | undefined) =>
    joint !== undefined && (step?.tighten === joint.id || step?.loosen === joint.id);

  test('hold every step once, in order', () => {
    for (const { steps, joints } of stages) {
      expect(stepGroups(steps, joints).flatMap((g) => g.steps.map((s) => s.number))).toEqual(
        steps.map((s) => s.number),
      );
    }
  });

  test('have one drawing each, at their first or last step, and at most four steps beside it', () => {
    const drawn = stages.flatMap(({ steps, joints }) => stepGroups(steps, joints)).filter((g) => g.joint !== undefined);
    expect(drawn.length).toBeGreaterThan(20);
    for (const g of drawn) {
      expect(isJoint(g.steps[0], g.joint) || isJoint(g.steps.at(-1), g.joint)).toBe(true);
      expect(g.steps.filter((s) => s.tighten !== undefined || s.loosen !== undefined).length).toBe(1);
      expect(g.steps.length).toBeLessThanOrEqual(4);
    }
  });
});
