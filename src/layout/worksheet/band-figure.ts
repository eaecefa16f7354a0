/** The bands of a joint as a figure: torque by both routes with the joint's own torque, and the preload that it leaves. */

import type { JointPlan } from '../../resolve/types.ts';
import type { Band } from '../../torque/index.ts';
import { formatQuantity, quantity, valueIn } from '../../units/index.ts';
import { moveMarks } from '../drawing/bounds.ts';
import type { Drawing } from '../drawing/primitives.ts';
import type { Guide } from './band-guides.ts';
import { type Bar, drawPanel, headLines, NO_PANEL, type Panel } from './band-panel.ts';
import { bandText } from './band-text.ts';

/** What the figure needs of a joint, so that the worksheet in the browser can draw it too. */
export type BandInput = Pick<
  JointPlan,
  'name' | 'result' | 'target' | 'targetSecond' | 'origin' | 'preloadShare' | 'strength' | 'thread'
>;

/** From this width on the two panels stand beside each other. */
const BESIDE_FROM = 140;
const PANEL_GAP = 8;

/** Two panels, as wide as asked (60 mm or more). Pure: the same joint and width give the same marks. */
export function bandFigure(plan: BandInput, widthMm: number): Drawing {
  const width = Math.max(60, widthMm);
  const beside = width >= BESIDE_FROM;
  const own = beside ? (width - PANEL_GAP) / 2 : width;
  const panels = [torquePanel(plan), preloadPanel(plan)];
  // Beside each other their bars stand on one level.
  const lines = beside ? Math.max(...panels.map((p) => headLines(p, own))) : 0;
  const [torque = NO_PANEL, preload = NO_PANEL] = panels.map((p) => drawPanel(p, own, lines));
  const level = Math.max(torque.bottom, preload.bottom);
  const height = beside ? level : torque.bottom + 5 + preload.bottom;
  const marks = [
    ...torque.marks,
    ...moveMarks(preload.marks, beside ? own + PANEL_GAP : 0, beside ? 0 : torque.bottom + 5),
  ];
  return {
    width,
    height: Math.ceil(height * 10) / 10,
    title: `Torque and preload of ${plan.name}`,
    description: describe(plan),
    marks,
  };
}

function torquePanel(plan: BandInput): Panel {
  const { result, target } = plan;
  const { unit } = target;
  const inUnit = (nm: number): number => valueIn(quantity('torque', nm, 'N·m'), unit);
  const bands: Bar[] = [
    { name: 'Short form', numbers: bandText(map(result.shortForm, inUnit), unit), band: result.shortForm },
    { name: 'Long form', numbers: bandText(map(result.longForm, inUnit), unit), band: result.longForm },
  ];
  const most = 1.06 * Math.max(result.shortForm.high, result.longForm.high, result.targetNm);
  const second = plan.targetSecond.unit;
  const perNm = (u: string): number => valueIn(quantity('torque', 1, 'N·m'), u);
  return {
    title: `Torque for the preload asked for (${percent(plan.preloadShare)} of the ${result.preloadBasis} load)`,
    most,
    bars: bands,
    guides: [{ at: result.targetNm, words: `${plan.origin} ${formatQuantity(target)}`, look: 'pointer' }],
    axes: [
      { unit, factor: perNm(unit) },
      { unit: second, factor: perNm(second) },
    ],
  };
}

function preloadPanel(plan: BandInput): Panel {
  const { result, strength, thread } = plan;
  const share = (band: Band): Band => map(band, (F) => (100 * F) / result.basisLoadN);
  const kN = (band: Band): string =>
    bandText(
      map(band, (F) => F / 1000),
      'kN',
    );
  const yieldPercent = (100 * strength.yieldMPa * thread.stressAreaMm2) / result.basisLoadN;
  const guides: Guide[] = [
    { at: 0.9 * yieldPercent, words: '90\u00a0% of yield', look: 'dashed' },
    { at: yieldPercent, words: 'yield', look: 'whole' },
  ];
  if (result.preloadBasis === 'proof') guides.push({ at: 100, words: 'proof', look: 'whole' });
  const bars: Bar[] = [
    { name: 'Short form', numbers: kN(result.preloadN), band: share(result.preloadN) },
    { name: 'Long form', numbers: kN(result.longPreloadN), band: share(result.longPreloadN) },
  ];
  return {
    title: `Preload at ${formatQuantity(plan.target)}, share of the ${result.preloadBasis} load`,
    most: 1.08 * Math.max(yieldPercent, ...bars.map((b) => b.band.high)),
    bars,
    guides: guides.sort((a, b) => a.at - b.at),
    axes: [
      { unit: '%', factor: 1 },
      { unit: 'kN', factor: result.basisLoadN / 1e5 },
    ],
  };
}

function map(band: Band, f: (value: number) => number): Band {
  return { low: f(band.low), nominal: f(band.nominal), high: f(band.high) };
}

function percent(share: number): string {
  return `${Number((100 * share).toFixed(1))}\u00a0%`;
}

function describe(plan: BandInput): string {
  const { result: r } = plan;
  const place = r.statedPlace?.inBand === false ? 'outside' : 'inside';
  const load = `the ${r.preloadBasis} load`;
  return (
    `Torque for the preload asked for: short form ${bandText(r.shortForm, 'N·m')}, long form ${bandText(r.longForm, 'N·m')}. ` +
    `The ${plan.origin} torque ${formatQuantity(plan.target)} lies ${place} the short-form band. ` +
    `It leaves a preload of ${bandText(
      map(r.preloadN, (F) => F / 1000),
      'kN',
    )}, which is ` +
    `${bandText(
      map(r.preloadShare, (s) => 100 * s),
      '%',
    )} of ${load}.`
  );
}
