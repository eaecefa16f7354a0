/** A tool named in plain words that is not among the tools of the step. */

import type { Prose, Step } from '../../resolve/index.ts';
import type { Check, Fault } from '../check.ts';
import { eachStep, type Scene } from '../rule.ts';
import { measurePlace } from './measured.ts';
import { wordsPlace } from './places.ts';
import { isOfMachine, isRefused, spokenIn } from './spoken.ts';

export const unlistedTool: Check = {
  code: 'TOL001',
  name: 'unlisted-tool',
  severity: 'warning',
  title: 'A step names a tool of the register in plain words, and its tools do not list it.',
  why: 'The list at the head of the card leaves it out, so nobody carries it to the bench and the job stops half way.',
  sources: ['common practice: the tools of a job are laid out from the list and counted before the first step'],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Lay on the new <part:gasket>.\n',
        to: '      - do: Lay on the new <part:gasket> under the «chain hoist».\n',
      },
    ],
  },
  found: eachStep(function* (step, scene) {
    yield* unlisted(step, step.text, scene, (words) => wordsPlace(step, words));
    for (const [i, measure] of step.measures.entries())
      yield* unlisted(step, measure.ifOut, scene, () => measurePlace(step, i, scene.variant.choices, 'if out'));
  }),
};

function* unlisted(
  step: Step,
  prose: Prose,
  { shop, machine }: Scene,
  place: (words: string) => Fault['range'],
): Generator<Fault> {
  for (const spoken of spokenIn(shop, prose)) {
    const { kind, ids, phrase } = spoken;
    if (kind !== 'tool' || ids.some((id) => step.tools.includes(id))) continue;
    if (isRefused(spoken) || isOfMachine(spoken, machine)) continue;
    const [first = ''] = ids;
    yield {
      range: place(phrase),
      message:
        ids.length === 1
          ? `the step names the \`${phrase}\` in plain words, and \`${first}\` is not among its tools`
          : `the step names a \`${phrase}\` in plain words, and none that is called so is among its tools`,
      hint:
        ids.length === 1
          ? `write \`<tool:${first}>\` for it, or add \`with: [${first}]\` to the step`
          : `write the one that is meant: ${ids.map((id) => `\`<tool:${id}>\``).join(', ')}`,
    };
  }
}
