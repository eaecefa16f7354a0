/** A tool named in plain words that is not among the tools of the step. */

import type { Check } from '../check.ts';
import { eachVariant } from '../rule.ts';
import { measurePlace } from './measured.ts';
import { wordsPlace } from './places.ts';
import { isOfMachine, isRefused, saidIn } from './spoken.ts';

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
  found: eachVariant(function* (scene) {
    for (const { step, measure, spoken } of saidIn(scene)) {
      const { kind, ids, phrase } = spoken;
      if (kind !== 'tool' || ids.some((id) => step.tools.includes(id))) continue;
      if (isRefused(spoken) || isOfMachine(spoken, scene.machine)) continue;
      const [first = ''] = ids;
      const alone = ids.length === 1;
      yield {
        label: step.label,
        range:
          measure === undefined
            ? wordsPlace(step, phrase)
            : measurePlace(step, measure, scene.variant.choices, 'if out'),
        message: alone
          ? `the step names the \`${phrase}\` in plain words, and \`${first}\` is not among its tools`
          : `the step names a \`${phrase}\` in plain words, and none that is called so is among its tools`,
        hint: alone
          ? `write \`<tool:${first}>\` for it, or add \`with: [${first}]\` to the step`
          : `write the one that is meant: ${ids.map((id) => `\`<tool:${id}>\``).join(', ')}`,
      };
    }
  }),
};
