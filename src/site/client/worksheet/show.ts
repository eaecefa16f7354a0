/** Puts the computed worksheet into the parts of the page. */

import type { Worksheet } from './compute.ts';
import { type Child, el, markup, part } from './dom.ts';
import { FIELD_LIST, type Inputs, isAsked } from './fields.ts';
import { patternFigure } from './figures.ts';
import { showBalance, showLeft } from './show-charts.ts';
import { showChecks, showHoles, showOrder } from './show-pattern.ts';
import { showHero, showPreload, showRounds } from './show-torque.ts';
import { showWorking } from './show-working.ts';

/** Replaces the content of every part. */
export function showWorksheet(root: ParentNode, inputs: Inputs, sheet: Worksheet): void {
  const fill = (name: string, children: readonly Child[]): void => part(root, name).replaceChildren(...children);
  const name = inputs.name.trim();
  part(root, 'name').hidden = name === '';
  fill('name', [name]);
  const figure = patternFigure(inputs, sheet);
  const place = part(root, 'figure');
  place.className = `figure ${figure?.size ?? 'narrow'}`;
  place.replaceChildren(...(figure === undefined ? [] : [markup(figure.svg)]));
  // The torque is read out when it changes, and only then.
  const hero = el('div', {}, ...showHero(sheet));
  if (part(root, 'hero').textContent !== hero.textContent) fill('hero', [...hero.childNodes]);
  fill('order', showOrder(sheet));
  fill('typed', typed(inputs));
  fill('checks', showChecks(sheet.checks));
  fill('rounds', showRounds(sheet));
  fill('preload', showPreload(sheet));
  fill('balance', showBalance(sheet));
  fill('holes', showHoles(sheet));
  fill('left', showLeft(inputs, sheet));
  fill('working', showWorking(sheet));
}

/** What was typed, as a list for the printed sheet. */
function typed(inputs: Inputs): readonly Child[] {
  // An angle without an adapter says nothing.
  const isIdle = (key: string): boolean => key === 'angle' && inputs.adapter.trim() === '';
  const asked = FIELD_LIST.filter(
    ({ key }) => isAsked(key, inputs.pattern) && inputs[key].trim() !== '' && !isIdle(key),
  );
  return [
    el(
      'dl',
      { class: 'ws-list' },
      ...asked.map((field) => {
        const text = inputs[field.key];
        const choice = field.options?.find((o) => o.id === text)?.name ?? text;
        return el('div', {}, el('dt', {}, field.label), el('dd', {}, choice));
      }),
    ),
  ];
}
