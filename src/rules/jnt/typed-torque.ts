/** A torque is typed into the words of a step. */

import { type Prose, placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { eachStep } from '../rule.ts';

export const typedTorque: Check = {
  code: 'JNT012',
  name: 'typed-torque',
  severity: 'warning',
  title: 'A torque is typed into the words of a step instead of coming from a joint.',
  why: 'A typed torque is compared with nothing: no unit slip, no wrong wrench and no dry thread is ever noticed.',
  sources: ['common practice: one place for each number, from which every card takes it'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: `      - do: Fit the <part:plug>.
`,
        to: `      - do: «Fit the <part:plug> at 45 N·m.»
`,
      },
    ],
  },
  found: eachStep((step) => {
    const inText = torqueIn(step.text);
    const inNote = step.note === undefined ? undefined : torqueIn(step.note);
    if (inText === undefined && inNote === undefined) return undefined;
    const places = [
      { field: 'do', typed: inText },
      { field: 'note', typed: inNote },
    ];
    return places.flatMap(({ field, typed }) => {
      if (typed === undefined) return [];
      const measured = step.measures.some((m) => (m.limit.max ?? m.limit.min)?.dimension === 'torque');
      return [
        {
          range: placeOf(step, field),
          message: `the torque \`${typed}\` is typed into the ${field === 'do' ? 'step' : 'note'}`,
          hint: measured
            ? 'leave the number out of the text: the limit under `measure` says it'
            : step.tighten === undefined
              ? 'give the machine a joint with this torque and write `tighten:` with its id; for a single plug or nut, write the torque as a `measure` with its `limit`'
              : `leave the number out of the text: \`tighten: ${step.tighten}\` prints the torque and its rounds`,
        },
      ];
    });
  }),
};

const TORQUE =
  /\d[\d.,/]*(?: to \d[\d.,/]*)?\s?(?:[kcd]?N\s?[·.∙⋅*-]?\s?m|lbf?[\s·∙⋅.-]?ft|ft[\s·∙⋅.-]?lbf?s?|lbf?[·∙⋅.-]in|lbf\sin|in[·∙⋅.-]lbf?s?|kgf?[·∙⋅.-]?c?m|(?:foot|inch)[\s-]pounds?|newton[\s-]?metres?)(?![\w²])/iu;
/** Rubs out what is no torque but looks like one without regard to capitals: `5 nm` of roughness. */
const NANOMETRE = /^\d[\d.,]*\s?nm$/;

const FIGURE = /\d/;

/** The first torque in the text, as typed. */
export function torqueIn(prose: Prose): string | undefined {
  for (const { runs } of prose) {
    let text = '';
    for (const run of runs) text += run.text;
    const found = FIGURE.test(text) ? TORQUE.exec(text)?.[0] : undefined;
    if (found !== undefined && !NANOMETRE.test(found)) return found;
  }
  return undefined;
}
