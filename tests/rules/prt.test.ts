/** The ledger of parts: what comes off goes back or is replaced, nothing goes on twice, and counts agree. */

import { describe, expect, test } from 'vitest';
import { runExample } from '../../src/pipeline/index.ts';
import { codes, follow } from './flow.ts';

const OPEN = `
- do: Loosen the <joint:cover>.
  loosen: cover
- do: Lift off the <part:cover>.
  remove: { cover: reuse, gasket: discard, screw: inspect }`;
const CLOSE = `
- do: Lay the new <part:gasket> on.
  fit: [gasket, cover]
- do: Tighten the <joint:cover>.
  fit: [screw]
  lubricate: { with: oil, where: thread }
  tighten: cover`;
const WHOLE = `${OPEN}${CLOSE}`;
const closing = (from: string, to: string): string => `${OPEN}${CLOSE.replace(from, to)}`;

describe('comes off and goes back', () => {
  test.each([
    ['all of it', WHOLE, []],
    ['the cover stays off', closing('[gasket, cover]', '[gasket]'), ['PRT003']],
    ['the gasket is not renewed', closing('[gasket, cover]', '[cover]'), ['PRT005']],
    ['the gasket lies there twice', closing('fit: [screw]', 'fit: [screw, gasket]'), ['PRT007']],
    ['the cover was never off', WHOLE.replace('cover: reuse, ', ''), ['PRT007']],
    ['off twice', `${OPEN}\n- do: Take the <part:gasket> out.\n  remove: { gasket: discard }${CLOSE}`, ['PRT008']],
    ['the old gasket again', closing('the new <part:gasket>', 'the old <part:gasket>'), ['PRT004']],
    ['refit in words', closing('Lay the new <part:gasket> on', 'Refit the <part:gasket>'), ['PRT004']],
    ['refit with a new one', closing('Lay the new <part:gasket> on', 'Refit with a new <part:gasket>'), []],
    [
      'trial fit, off again, on for good',
      `${OPEN}
- do: Set the <part:cover> on without its gasket.
  fit: [cover]
- do: Lift off the <part:cover> again.
  remove: { cover: reuse }${CLOSE}`,
      [],
    ],
    [
      'off after the last fitting',
      `${WHOLE}
- do: Loosen the <joint:cover>.
  loosen: cover
- do: Lift off the <part:cover>.
  remove: { cover: reuse, gasket: discard, screw: inspect }`,
      ['PRT003', 'PRT003', 'PRT005'],
    ],
    [
      'renewed within one step',
      `- do: Change the <part:gasket>.
  remove: { gasket: discard }
  fit: [gasket]`,
      [],
    ],
    [
      'without fate',
      WHOLE.replace('{ cover: reuse, gasket: discard, screw: inspect }', '[cover, gasket, screw]'),
      ['PRT014', 'PRT014', 'PRT014'],
    ],
  ])('%s', (_, steps, expected) => {
    expect([...codes({ steps })].sort()).toEqual(expected);
  });

  test('a whole shop is silent where a move could not be read', () => {
    const { diagnostics } = runExample([
      {
        file: 'procedures/mw-1.yaml',
        from: 'remove: { cover: reuse, gasket: discard, screw: inspect }',
        to: 'remove: { cover: reuse, gaskett: discard, screw: inspect }',
      },
    ]);
    expect(diagnostics.map((d) => d.code)).toEqual(['REF003']);
  });

  test('another procedure puts it back', () => {
    const steps = `- do: Send the <part:cover> away with the sheet of <procedure:MW-1>.
  remove: { cover: reuse }`;
    expect(codes({ steps })).toEqual([]);
  });
});

describe('parts that a card adds', () => {
  const shield = ['shield: { name: drip shield, kind: plate, quantity: 1, number: MW-9 }'];
  test.each([
    ['built from new, nothing comes off', `- do: Clip the <part:shield> on.\n  fit: [shield]`, shield, []],
    ['added after an opening', `${WHOLE}\n- do: Clip the <part:shield> on.\n  fit: [shield]`, shield, ['PRT007']],
    ['added, and the step says so', `${WHOLE}\n- do: Add the <part:shield>.\n  fit: [shield]`, shield, []],
    [
      'from nowhere',
      `${WHOLE}\n- do: Add the <part:shield>.\n  fit: [shield]`,
      ['shield: { name: drip shield, kind: plate, quantity: 1 }'],
      ['PRT006'],
    ],
    [
      'from a kit',
      `${WHOLE}\n- do: Add the <part:shield>.\n  fit: [shield]`,
      ['shield: { name: drip shield, kind: plate, quantity: 1, kit: Kit 9 }'],
      [],
    ],
    [
      'thrown away, and no new one to be had',
      `- do: Change the <part:shield>.\n  remove: { shield: discard }\n  fit: [shield]`,
      ['shield: { name: drip shield, kind: plate, quantity: 1 }'],
      ['PRT004'],
    ],
  ])('%s', (_, steps, parts, expected) => {
    expect(codes({ steps, parts })).toEqual(expected);
  });
});

describe('counts', () => {
  const withCount = (count: string): string => closing('fit: [screw]', `fit: ${count}`);
  test('eight screws of the small size and twelve of the large one', () => {
    expect(codes({ steps: withCount('[screw]') })).toEqual([]);
    expect(follow({ steps: withCount('{ screw: 8 }') }).map((r) => r.message)).toEqual([
      '12 of `screw` came off, and 8 go back (Large)',
    ]);
    expect(follow({ steps: withCount('{ screw: 12 }') }).map((r) => r.message)).toEqual([
      '12 of `screw` are fitted here, and only 8 are off (Small)',
    ]);
  });
  test('in two portions', () => {
    const shims = ['shim: { name: shim, kind: shim, quantity: 4, number: MW-8 }'];
    const portions = (first: number, second: number): string => `
- do: Take the <part:shim>s out.
  remove: { shim: reuse }
- do: Lay the lower ones in.
  fit: { shim: ${first} }
- do: Lay the upper ones in.
  fit: { shim: ${second} }`;
    expect(codes({ steps: portions(2, 2), parts: shims })).toEqual([]);
    expect(follow({ steps: portions(2, 1), parts: shims })[0]?.message).toBe('4 of `shim` came off, and 3 go back');
    expect(follow({ steps: portions(3, 2), parts: shims })[0]?.message).toBe(
      '2 of `shim` are fitted here, and only 1 is off',
    );
  });
});

/** TB 43-0218 section III and workshop practice: what is thrown away whenever it comes off, and what is not. */
describe('serves once', () => {
  test.each([
    ['kind: gasket', true],
    ['kind: o-ring', true],
    ['kind: packing', true],
    ['kind: seal', true],
    ['kind: lock washer', true],
    ['kind: split pin', true],
    ['kind: washer, material: annealed copper', true],
    ['kind: washer, material: steel and rubber bonded seal', true],
    ['kind: washer, material: steel', false],
    ['kind: ring, material: spring steel', false],
    ['kind: ring, material: spring steel, always_replace: true', true],
    ['kind: key', false],
    ['kind: shim, material: brass', false],
    ['kind: seal, always_replace: false', false],
  ])('%s', (facts, once) => {
    const parts = [`thing: { name: thing, quantity: 1, number: MW-7, ${facts} }`];
    const steps = (more: string): string => `
- do: Take the <part:thing> out.
  remove: { thing: inspect }
- do: Push the <part:thing> in.
  fit: [thing]${more}`;
    expect(codes({ steps: steps(''), parts })).toEqual(once ? ['PRT011'] : []);
    const reason =
      '\n  reuse: { thing: { reason: made to be used again, source: { document: Pump manual, edition: "3" } } }';
    expect(codes({ steps: steps(reason), parts })).toEqual([]);
  });
});

describe('assemblies', () => {
  const parts = [
    'valve: { name: valve, kind: valve, quantity: 1, number: MW-20, made_of: [disc] }',
    'disc: { name: disc, kind: plate, quantity: 1, number: MW-21 }',
  ];
  const strip =
    '- do: Take the <part:valve> out.\n  remove: { valve: reuse }\n- do: Unscrew the <part:disc>.\n  remove: { disc: inspect }';
  test.each([
    [
      'built, then fitted',
      `${strip}\n- do: Screw the <part:disc> on.\n  fit: [disc]\n- do: Fit the <part:valve>.\n  fit: [valve]`,
      [],
    ],
    [
      'fitted, then built',
      `${strip}\n- do: Fit the <part:valve>.\n  fit: [valve]\n- do: Screw the <part:disc> on.\n  fit: [disc]`,
      ['PRT013'],
    ],
    ['never built', `${strip}\n- do: Fit the <part:valve>.\n  fit: [valve]`, ['PRT003']],
    [
      'renewed whole: the new one brings its own',
      `- do: Take the <part:valve> out.\n  remove: { valve: discard }\n- do: Fit the new <part:valve>.\n  fit: [valve]`,
      [],
    ],
    [
      'stripped, thrown away and renewed whole',
      `${strip.replace('valve: reuse', 'valve: discard')}\n- do: Fit the new <part:valve>.\n  fit: [valve]`,
      [],
    ],
    [
      'thrown away, and a new one built from new parts',
      `- do: Take the <part:valve> out.\n  remove: { valve: discard }\n- do: Screw the new <part:disc> on.\n  fit: [disc]\n- do: Fit the <part:valve>.\n  fit: [valve]`,
      [],
    ],
  ])('%s', (_, steps, expected) => {
    expect(codes({ steps, parts })).toEqual(expected);
  });
});
