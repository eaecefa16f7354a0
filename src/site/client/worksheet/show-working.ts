/** The working of the torque, formula by formula, each with its numbers. */

import { lineMathml } from '../../../render/html/formula.ts';
import { figures } from '../../../torque/formula/index.ts';
import type { WorkingLine } from '../../../torque/index.ts';
import type { Worksheet } from './compute.ts';
import { type Child, el, markup } from './dom.ts';
import { missing } from './show-torque.ts';

/** A section of the working under each heading, as on the page of a joint. */
export function showWorking({ read: { tightening } }: Worksheet): readonly Child[] {
  if (tightening === undefined) return [missing()];
  const { working } = tightening.result;
  const sections = [...new Set(working.map((line) => line.section))];
  return sections.map((section) => {
    const lines = working.filter((line) => line.section === section);
    const head = section.slice(0, 1).toUpperCase() + section.slice(1);
    return el(
      'section',
      { class: 'wk-section' },
      el('h3', { class: 'wk-head' }, head),
      el('dl', { class: 'wk-lines' }, ...lines.map(showLine)),
    );
  });
}

function showLine(line: WorkingLine): HTMLElement {
  const letters = el('span', { class: 'fx' }, markup(lineMathml(line, 'letters')));
  // A value that is taken over as it stands has nothing to put in.
  const isPlain = line.text.formula === line.text.withNumbers;
  const numbers = isPlain ? [] : [el('span', { class: 'fx fx-numbers' }, markup(lineMathml(line, 'numbers')))];
  return el(
    'div',
    { class: 'wk-line' },
    el('dt', {}, line.name),
    el('dd', { class: 'wk-formula' }, letters, ...numbers),
    el(
      'dd',
      { class: 'wk-result' },
      el('span', { class: 'wk-value' }, figures(line.value)),
      el('span', { class: 'wk-unit' }, line.unit === '' ? '' : `\u00a0${line.unit}`),
    ),
  );
}
