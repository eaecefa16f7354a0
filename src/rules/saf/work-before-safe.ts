/** Work that begins before every stored energy is released and proved gone. */

import { keyPlaceOf, listed } from '../../resolve/index.ts';
import type { Check, Fault } from '../check.ts';
import { eachVariant } from '../rule.ts';
import { comesWithTheWork, energiesOf, openedBy, opens, placeIn } from './energy.ts';

const ISOLATE = `  - use: isolate
`;
const OPEN = `  - title: Open
    steps:
      - do: Loosen the <joint:cover>.
        loosen: cover
`;

export const workBeforeSafe: Check = {
  code: 'SAF003',
  name: 'work-before-safe',
  severity: 'error',
  title: 'Something is loosened, taken off or fitted before a stored energy is released and proved gone.',
  why: 'The mechanic follows the numbers: he slackens the joint while it still holds pressure, because the drain stands further down the card.',
  sources: ['29 CFR 1910.147(d)(1) to (d)(6): isolate, release and verify come in this order, all before the work'],
  example: {
    bad: [
      { file: 'procedures/mw-1.yaml', from: `${ISOLATE}${OPEN}`, to: OPEN.replace('loosen: cover', '«loosen»: cover') },
      { file: 'procedures/mw-1.yaml', from: '  - title: Close\n', to: `${ISOLATE}  - title: Close\n` },
    ],
  },
  found: eachVariant(function* (scene): Iterable<Fault> {
    const first = scene.steps.find(opens);
    const key = first && openedBy(first);
    if (first === undefined || key === undefined) return;
    const late: { name: string; what: string; place: Fault['range'] }[] = [];
    for (const { name, released, proved } of energiesOf(scene)) {
      const [release] = released;
      if (release === undefined || comesWithTheWork(name, release, scene)) continue;
      const proof = proved.find((s) => s.number >= release.number);
      if (release.number >= first.number)
        late.push({ name, what: 'released', place: placeIn(release, 'release', name) });
      else if (proof !== undefined && proof.number >= first.number)
        late.push({ name, what: 'proved gone', place: placeIn(proof, 'prove', name) });
    }
    if (late.length === 0) return;
    const what = listed([...new Set(late.map((l) => l.what))]);
    yield {
      range: keyPlaceOf(first, key),
      message: `the work begins here, before ${listed(late.map((l) => `\`${l.name}\``))} ${late.length === 1 ? 'is' : 'are'} ${what}`,
      related: late.map((l) => ({ range: l.place, message: `\`${l.name}\` is ${l.what} only here` })),
      ...(first.label === undefined ? {} : { label: first.label }),
      hint: 'move the steps that isolate, release and prove to the front, before anything is loosened, taken off or fitted',
    };
  }),
};
