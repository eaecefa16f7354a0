/** Order, holes, and the checks as elements. */

import { formatDecimal, formatQuantity } from '../../../units/index.ts';
import type { Check } from './check.ts';
import type { Worksheet } from './compute.ts';
import { type Child, el, table } from './dom.ts';
import { missing } from './show-torque.ts';

/** The order as numbers and as a rule, with the distances that go with it. */
export function showOrder({ layout, fastener }: Worksheet): readonly Child[] {
  if (layout === undefined) return [missing()];
  const { sequence } = layout;
  const moves = sequence.moves.map((m) => m.join(' + ')).join(', ');
  const drive = fastener.drive;
  const tool =
    drive === undefined
      ? []
      : [`${drive.kind === 'key' ? 'Key' : 'Across flats'} ${formatQuantity(drive.size)} (${drive.standard}).`];
  return [
    el('p', { class: 'moves' }, el('strong', {}, 'Order of the holes: '), moves),
    el(
      'p',
      { class: 'small' },
      [
        sequence.rule,
        ...(sequence.published === undefined ? [] : [`As in ${sequence.published}.`]),
        `Neighbours ${formatDecimal(layout.chordMm, 1)}\u00a0mm apart, farthest holes ${formatDecimal(layout.acrossMm, 1)}\u00a0mm.`,
        ...tool,
      ].join(' '),
    ),
  ];
}

/** Every check with its verdict as a word and a sign. */
export function showChecks(checks: readonly Check[]): readonly Child[] {
  return [
    el(
      'ul',
      { class: 'ws-checks' },
      ...checks.map((c) =>
        el(
          'li',
          { 'data-verdict': c.verdict },
          el('span', { class: 'ws-word' }, c.verdict),
          el('span', {}, el('strong', {}, c.name), el('br'), el('span', { class: 'ws-why' }, c.text)),
        ),
      ),
    ),
  ];
}

/** The coordinates in tightening order, mm from the centre. */
export function showHoles({ layout }: Worksheet): readonly Child[] {
  if (layout === undefined) return [missing()];
  return [
    table(
      'holes',
      'Places of the holes in tightening order',
      [
        { head: 'Order', isNumber: true },
        { head: 'Hole', isNumber: true },
        { head: 'Across, mm', isNumber: true },
        { head: 'Up, mm', isNumber: true },
      ],
      holeRows(layout).map((row) => row.map(String)),
    ),
  ];
}

type Placed = NonNullable<Worksheet['layout']>;

function holeRows({ sequence, holes }: Placed): readonly (readonly [number, number, string, string])[] {
  return sequence.order.flatMap((number, i) => {
    const hole = holes[number - 1];
    return hole === undefined
      ? []
      : [[sequence.moveAt[number - 1] ?? i + 1, number, formatDecimal(hole.xMm, 2), formatDecimal(hole.yMm, 2)]];
  });
}

/** The same as text for a spreadsheet: tabs, an ordinary minus sign. */
export function holesAsText(layout: Placed): string {
  const rows = holeRows(layout).map((row) => row.join('\t').replaceAll('\u2212', '-'));
  return ['order\thole\tx mm\ty mm', ...rows].join('\n');
}
