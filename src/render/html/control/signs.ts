/** Signs of the standings, drawn by us after the shapes of ISO 3864-1 and of the road's stop: each is told without colour. */

import type { CardStanding } from '../../../control/types.ts';

export type Sign = Exclude<CardStanding, 'current'>;

/** A hand held up, in an octagon. */
const STOP = `<path class="edge" d="M28.5 1h39L95 28.5v39L67.5 95h-39L1 67.5v-39Z"/>
<path class="red" d="M30.2 5h35.6L91 30.2v35.6L65.8 91H30.2L5 65.8V30.2Z"/>
<g class="on-line" stroke-width="7.6"><path d="M35.5 52V34M44.5 50V25.5M53.5 50V24M62.5 52V30M35.8 62 25 50.5"/></g>
<path class="on" d="M31.7 50h34.6v10c0 11-6.3 18-15.3 18h-4c-5 0-8-1.5-11-5L25 61l7-5Z"/>`;

/** A card under a ring with a bar. */
const FORBIDDEN = `<circle class="edge" cx="48" cy="48" r="47"/><circle class="plate" cx="48" cy="48" r="40"/>
<path class="glyph" d="M31 26h34v44H31Z"/><path class="plate-line" stroke-width="3.5" d="M37 36h14M37 45h22M37 54h22M37 62h15"/>
<circle class="red-line" cx="48" cy="48" r="39.5" stroke-width="9"/><path class="red-line" stroke-width="9" d="M20 20 76 76"/>`;

/** A card that is drawn out of its pocket, on a disc. */
const EXCHANGE = `<circle class="edge" cx="48" cy="48" r="47"/><circle class="blue" cx="48" cy="48" r="43"/>
<path class="on" d="M30 40h36v21H30Z"/><path class="blue-line" stroke-width="3.5" d="M36 48h24M36 55h24"/>
<path class="on-line" stroke-width="5.5" d="M22 54v20h52V54"/>
<path class="on" d="M48 10 62 25h-8.5v10h-11V25H34Z"/>`;

/** An hourglass in a triangle. */
const WAIT = `<path class="glyph" d="M44 7.5a4.6 4.6 0 0 1 8 0L93 79a4.6 4.6 0 0 1-4 7H7a4.6 4.6 0 0 1-4-7Z"/>
<path class="yellow" d="M48 16.5 83.5 79h-71Z"/>
<path class="glyph" d="M34 38h28v6H34ZM34 70h28v6H34Z"/>
<path class="glyph-line" stroke-width="3.5" d="M38 44c0 8 10 8 10 13s-10 5-10 13M58 44c0 8-10 8-10 13s10 5 10 13"/>
<path class="glyph" d="M40.5 70c1.5-5 5.5-5.5 7.5-8 2 2.5 6 3 7.5 8ZM42 48h12l-6 6Z"/>`;

/** A pencil in a broken frame. */
const PENCIL = `<path class="ink-line" stroke-width="6" stroke-dasharray="17.5 11" d="M5 5h86v86H5Z"/>
<path class="ink" d="M66 20 76 30 40 66 30 56ZM27 59l10 10-15 5Z"/>`;

const DRAWN: Readonly<Record<Sign, string>> = {
  suspended: STOP,
  withdrawn: FORBIDDEN,
  superseded: EXCHANGE,
  'not yet effective': WAIT,
  draft: PENCIL,
};

/** The sign, 96 units wide and high; it always stands beside its word, so that readers pass over it. */
export function signSvg(sign: Sign): string {
  return `<svg class="sign" viewBox="0 0 96 96" width="96" height="96" aria-hidden="true" focusable="false">${DRAWN[sign]}</svg>`;
}

/** The word beside the sign, in capitals. */
export const WORDS: Readonly<Record<Sign, string>> = {
  suspended: 'STOP – SUSPENDED',
  withdrawn: 'WITHDRAWN',
  superseded: 'SUPERSEDED',
  'not yet effective': 'NOT YET EFFECTIVE',
  draft: 'DRAFT',
};

/** Sign and word on their field: the top edge of the page. */
export function verdictHtml(sign: Sign, word: string = WORDS[sign]): string {
  return `<div class="verdict is-${sign.replaceAll(' ', '-')}">${signSvg(sign)}<p class="word">${word}</p></div>`;
}
