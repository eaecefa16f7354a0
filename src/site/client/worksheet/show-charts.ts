/** The balance of the order, and what the rounds leave, as charts with their words. */

import { balanceChart, roundsChart } from '../../../layout/drawing/index.ts';
import { paintSvg } from '../../../render/svg/index.ts';
import type { Worksheet } from './compute.ts';
import { type Child, el, markup } from './dom.ts';
import type { Inputs } from './fields.ts';
import { predictLeft } from './predict.ts';
import { missing } from './show-torque.ts';

/** How far the clamped bolts stand from the middle after each one, beside going round. */
export function showBalance({ layout }: Worksheet): readonly Child[] {
  if (layout === undefined) return [missing()];
  const { balance, circularBalance, holes } = layout;
  const chart = balanceChart({ order: balance, circular: circularBalance, count: holes.length });
  return [
    el('div', { class: 'figure middling' }, markup(paintSvg(chart, { idPrefix: 'ws-balance', className: 'drawing' }))),
    el(
      'p',
      { class: 'small reading' },
      'The less the clamped bolts stand to one side, the more evenly the faces close.',
    ),
  ];
}

/** The prediction of the elastic model, said to be an illustration; the page has its limits. */
export function showLeft(inputs: Inputs, sheet: Worksheet): readonly Child[] {
  const prediction = predictLeft(inputs, sheet);
  if (typeof prediction === 'string') return [el('p', { class: 'soft' }, prediction)];
  const { rounds, onePass, words } = prediction;
  const chart = roundsChart({
    rounds: [
      { name: 'In one pass, to compare', shares: onePass.preload },
      ...rounds.map((r) => ({ name: r.name, shares: r.prediction.preload })),
    ],
  });
  return [
    el(
      'p',
      { class: 'reading' },
      el('strong', {}, 'An illustration, not a prediction. '),
      `${words} Flanges and gasket are assumed from the size of the bolt.`,
    ),
    el('div', { class: 'figure middling' }, markup(paintSvg(chart, { idPrefix: 'ws-left', className: 'drawing' }))),
  ];
}
