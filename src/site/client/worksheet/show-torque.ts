/** Torque, setting, rounds and preload as elements. */

import { bandFigure } from '../../../layout/worksheet/band-figure.ts';
import { paintSvg } from '../../../render/svg/index.ts';
import { formatDecimal, formatNumber, formatQuantity } from '../../../units/index.ts';
import type { Verdict } from './check.ts';
import type { Worksheet } from './compute.ts';
import { type Child, el, markup, table } from './dom.ts';

/** Narrow enough for its type to be read on a phone. */
const BANDS_MM = 84;

/** The torque as the largest thing of the page, and the verdicts counted in words. */
export function showHero({ read, checks, faults }: Worksheet): readonly Child[] {
  const { tightening } = read;
  const bad = checks.filter((c) => c.verdict === 'does not hold').length;
  const good = checks.filter((c) => c.verdict === 'holds').length;
  const mark: Verdict = bad > 0 ? 'does not hold' : 'holds';
  const counted = [
    ...(bad === 0 ? [] : [`${bad} of ${good + bad} checks ${bad === 1 ? 'does' : 'do'} not hold`]),
    ...(bad === 0 && good > 0 ? [`${good} checks hold`] : []),
    ...(faults.length === 0 ? [] : [`${faults.length === 1 ? '1 field' : `${faults.length} fields`} to mend`]),
  ].join(', ');
  const verdict = el('p', { class: 'ws-verdict', 'data-verdict': faults.length > 0 ? 'does not hold' : mark }, counted);
  if (tightening === undefined) return [el('p', { class: 'hero' }, 'No torque: a field is to be mended.'), verdict];
  const { setting, settingSecond, origin, result } = tightening;
  const share = formatDecimal(result.preloadShare.nominal * 100, 0);
  const corrected = correctionText(read);
  return [
    ...(corrected === '' ? [] : [el('p', { class: 'ws-what' }, 'Set the wrench to')]),
    el(
      'p',
      { class: 'hero' },
      el('span', { class: 'hero-main' }, formatQuantity(setting)),
      ' ',
      el('span', { class: 'hero-second' }, `(${formatQuantity(settingSecond)})`),
    ),
    ...(corrected === '' ? [] : [el('p', { class: 'ws-share strong' }, corrected)]),
    el('p', { class: 'ws-share' }, `${origin}, nominally ${share}\u00a0% of the ${result.preloadBasis} load`),
    verdict,
  ];
}

/** Why the setting is not the torque at the bolt; empty when it is. */
function correctionText({ tightening, adapter, runDown }: Worksheet['read']): string {
  if (tightening === undefined || (adapter === undefined && runDown === undefined)) return '';
  return [
    `${formatQuantity(tightening.target)} at the bolt`,
    ...(runDown === undefined ? [] : [`${formatQuantity(runDown)} run-down torque added`]),
    ...(adapter === undefined
      ? []
      : [`adapter ${formatDecimal(adapter.lengthMm, 0)}\u00a0mm at ${formatDecimal(adapter.angleDeg, 0)}°`]),
  ].join(', ');
}

/** A row for each round: share, torque at the bolt in both units, setting where it differs. */
export function showRounds({ read }: Worksheet): readonly Child[] {
  const { tightening, adapter, runDown } = read;
  if (tightening === undefined) return [missing()];
  const isSet = adapter !== undefined || runDown !== undefined;
  const { target, targetSecond } = tightening;
  return [
    table(
      'ws-rounds',
      'Rounds',
      [
        { head: 'Round' },
        { head: 'Share', isNumber: true },
        { head: target.unit, isNumber: true },
        { head: targetSecond.unit, isNumber: true },
        ...(isSet ? [{ head: `Set, ${target.unit}`, isNumber: true }] : []),
        { head: 'Order' },
      ],
      tightening.rounds.map((r) => [
        String(r.number),
        `${formatDecimal(r.share * 100, 0)}\u00a0%`,
        isSet ? formatNumber(r.torque) : el('strong', {}, formatNumber(r.torque)),
        formatNumber(r.second),
        ...(isSet ? [el('strong', {}, formatNumber(r.setting))] : []),
        r.pass === 'circular' ? 'all round' : 'in order',
      ]),
    ),
  ];
}

/** Preload at the torque, low, nominal and high, by both routes. */
export function showPreload({ read: { tightening, preloadShare }, fastener }: Worksheet): readonly Child[] {
  const { strength, thread } = fastener;
  if (tightening === undefined || preloadShare === undefined || strength === undefined || thread === undefined) {
    return [missing()];
  }
  const { result } = tightening;
  const bands = bandFigure({ name: 'this joint', ...tightening, preloadShare, strength, thread }, BANDS_MM);
  const kn = (n: number) => formatDecimal(n / 1000, 1);
  const percent = (share: number) => `${formatDecimal(share * 100, 0)}\u00a0%`;
  const ends = ['low', 'nominal', 'high'] as const;
  return [
    el('div', { class: 'figure middling' }, markup(paintSvg(bands, { idPrefix: 'ws-bands', className: 'drawing' }))),
    table(
      'ws-preload',
      'Preload of one bolt',
      [
        { head: 'Preload of one bolt' },
        { head: 'Low', isNumber: true },
        { head: 'Nominal', isNumber: true },
        { head: 'High', isNumber: true },
      ],
      [
        ['by nut factor, kN', ...ends.map((e) => kn(result.preloadN[e]))],
        [`share of ${result.preloadBasis} load`, ...ends.map((e) => percent(result.preloadShare[e]))],
        ['by friction, kN', ...ends.map((e) => kn(result.longPreloadN[e]))],
        ['stress, share of yield', ...ends.map((e) => percent(result.yieldUse[e]))],
      ],
    ),
    el(
      'p',
      { class: 'reading small' },
      `Low: high friction and a wrench that reads high. High: low friction and a wrench that reads low, by ${percent(result.wrenchDeviation)} (ISO 6789). ` +
        `${result.preloadBasis === 'proof' ? 'Proof' : 'Yield'} load ${kn(result.basisLoadN)}\u00a0kN.`,
    ),
    ...(result.preloadBasis === 'yield'
      ? [
          el(
            'p',
            { class: 'reading small' },
            'The specification of this grade gives no proof stress: the preload rests on yield.',
          ),
        ]
      : []),
  ];
}

/** What stands in a section that cannot be computed. */
export function missing(): HTMLElement {
  return el('p', { class: 'soft' }, 'Not computed: a field is to be mended.');
}
