/** Page and card show the same drawing: both painters visit the same marks in the same order. */

import { describe, expect, test } from 'vitest';
import { balanceChart, type Drawing, patternFigure, roundsChart, safetySign } from '../../src/layout/drawing/index.ts';
import { loadFaces } from '../../src/layout/type/index.ts';
import { paintDrawing } from '../../src/render/pdf/paint-drawing.ts';
import type { Pdf } from '../../src/render/pdf/pdfkit-document.ts';
import { paintSvg } from '../../src/render/svg/index.ts';
import { circle, featuresAbout, jointWith } from '../layout/joints.ts';

interface Call {
  readonly name: string;
  readonly args: readonly unknown[];
}

/** Stands for PDFKit and notes what is asked of it. */
function recorder(): { readonly pdf: Pdf; readonly calls: Call[] } {
  const calls: Call[] = [];
  const pdf: unknown = new Proxy(
    { _font: {} },
    {
      get: (target, name) =>
        name === '_font'
          ? Reflect.get(target, name)
          : (...args: unknown[]) => {
              calls.push({ name: String(name), args });
              return pdf;
            },
    },
  );
  return { pdf: pdf as Pdf, calls };
}

type Visit = readonly [kind: string, text: string];

function visitsOfPdf(drawing: Drawing): Visit[] {
  const { pdf, calls } = recorder();
  paintDrawing(pdf, loadFaces(), drawing, 0, 0);
  const visits: Visit[] = [];
  let path = 'path';
  for (const { name, args } of calls) {
    if (name === 'circle') path = 'circle';
    if (name === 'moveTo') path = 'path';
    if (name === 'fill' || name === 'stroke' || name === 'fillAndStroke') visits.push([path, name]);
    if (name === 'text') visits.push(['text', String(args[0])]);
  }
  return visits;
}

function visitsOfSvg(drawing: Drawing): Visit[] {
  const svg = paintSvg(drawing).replace(/<title[\s\S]*?<\/desc>/u, '');
  return [...svg.matchAll(/<(path|circle|text)( [^>]*?)(?:\/>|>([^<]*)<)/gu)].map(
    ([, kind = '', attributes = '', text = '']): Visit => {
      if (kind === 'text')
        return [
          'text',
          text
            .replaceAll('&amp;', '&')
            .replaceAll('&lt;', '<')
            .replaceAll('&gt;', '>')
            .replaceAll('&#39;', "'")
            .replaceAll('&quot;', '"'),
        ];
      const filled = / fill="/u.test(attributes);
      const stroked = / stroke="/u.test(attributes);
      return [kind, filled && stroked ? 'fillAndStroke' : filled ? 'fill' : 'stroke'];
    },
  );
}

const DRAWINGS: readonly (readonly [string, Drawing])[] = [
  ...[3, 8, 12, 36].map((n) => [`${n} bolts`, patternFigure(jointWith(circle(n, 400)), { widthMm: 80 })] as const),
  [
    'a rectangle',
    patternFigure(jointWith({ kind: 'rectangle', lengthMm: 300, widthMm: 200, along: 4, across: 3 }), { widthMm: 70 }),
  ],
  [
    'an arc',
    patternFigure(jointWith({ kind: 'arc', diameterMm: 300, count: 7, firstDeg: -60, spanDeg: 120 }), { widthMm: 70 }),
  ],
  [
    'a slot with features',
    patternFigure(
      jointWith(
        { kind: 'slot', lengthMm: 400, widthMm: 200, count: 14, straddle: true },
        { features: featuresAbout(170) },
      ),
      { widthMm: 78 },
    ),
  ],
  ['two tools', patternFigure(jointWith(circle(12), {}, { tools: 2 }), { widthMm: 70 })],
  [
    'balance',
    balanceChart({ order: jointWith(circle(8)).balance, circular: jointWith(circle(8)).circularBalance, count: 8 }),
  ],
  ['rounds', roundsChart({ rounds: [{ name: 'Round 1', shares: [0.2, 0.3, 0.25] }] })],
  ['120 bolts', patternFigure(jointWith(circle(120, 4000)), { widthMm: 90 })],
  ...(['danger', 'warning', 'caution', 'notice'] as const).map((level) => [level, safetySign(level, 10)] as const),
];

describe.each(DRAWINGS)('%s', (_, drawing) => {
  test('both painters visit every mark in the same order', () => {
    const pdf = visitsOfPdf(drawing);
    expect(pdf.length).toBe(drawing.marks.length);
    expect(visitsOfSvg(drawing)).toEqual(pdf);
  });

  test('the SVG uses presentation attributes only and is described', () => {
    const svg = paintSvg(drawing, { idPrefix: 'step-3', className: 'figure' });
    expect(svg).not.toMatch(/ style=|<style|<script| on[a-z]+=/u);
    expect(svg).toMatch(/^<svg [^>]*role="img"/u);
    expect(svg).toContain('aria-labelledby="step-3-title"');
    expect(svg).toContain('<title id="step-3-title">');
    expect(svg).toContain('<desc id="step-3-desc">');
    expect(svg).not.toMatch(/NaN|undefined|Infinity/u);
  });
});

test('ink takes the colour of its place, so that dark themes work', () => {
  const svg = paintSvg(patternFigure(jointWith(circle(8, 160)), { widthMm: 60 }));
  expect(svg).toContain('stroke="currentColor"');
  expect(svg).toContain('data-hole="1"');
  expect(svg).toContain('data-order="1"');
});

test('markup in a name appears as text', () => {
  const joint = jointWith(circle(4, 100), { name: '<script>alert(1)</script>', view: 'from "A" & <B>' });
  const svg = paintSvg(patternFigure(joint, { widthMm: 60 }), { idPrefix: '"><script>' });
  expect(svg).not.toContain('<script');
  expect(svg).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
  expect(svg).toContain('&amp; &lt;B&gt;');
});
