/** Safety checks over small changes of the example shop: what is caught, what is left alone, and nothing echoed. */

import { describe, expect, test } from 'vitest';
import { runExample } from '../../src/pipeline/index.ts';
import type { Edit } from '../../src/rules/index.ts';

const MW = 'procedures/mw-1.yaml';

/** `SAF001 procedures/mw-1.yaml` for each diagnostic, whatever the family. */
function found(...edits: Edit[]): string[] {
  return runExample(edits)
    .diagnostics.map((d) => d.code)
    .sort();
}

function messages(...edits: Edit[]): string[] {
  return runExample(edits).diagnostics.map((d) => d.message.replaceAll('\u00a0', ' '));
}

const energy = (list: string): Edit => ({
  file: MW,
  from: 'energy: [water pressure, electric motor]\n',
  to: list === '' ? '' : `energy: [${list}]\n`,
});
/** Lines put in before the first work: own steps. */
const beforeWork = (lines: string): Edit => ({
  file: MW,
  from: '  - title: Open\n    steps:\n',
  to: `  - title: Open\n    steps:\n${lines}`,
});
const liftOff = (lines: string): Edit => ({
  file: MW,
  from: '        lift: { mass: 18 kg, by: chain hoist }\n',
  to: lines,
});
const layOn = (lines: string): Edit => ({
  file: MW,
  from: '        fit: [gasket, cover]\n',
  to: `        fit: [gasket, cover]\n${lines}`,
});

describe('stored energy', () => {
  test('names are compared without regard to capitals and blanks', () => {
    expect(found(energy('Water  Pressure, ELECTRIC motor'))).toEqual([]);
  });

  test('a procedure that lists none answers for those of its machine, at the machine’s name', () => {
    const machine: Edit = {
      file: 'machines/pump.yaml',
      from: 'energy: [water pressure, electric motor]',
      to: 'energy: [water pressure, electric motor, seal spring]',
    };
    const { diagnostics, textOf } = runExample([energy(''), machine]);
    expect(diagnostics.map((d) => [d.code, d.message])).toEqual([
      ['SAF001', '`seal spring` of `pump` is released by no step'],
    ]);
    const [{ range } = { range: { file: '', start: 0, end: 0 } }] = diagnostics;
    expect(textOf(range.file)?.slice(range.start, range.end)).toBe('pump');
  });

  test('what only some variants release is named with the others', () => {
    const step = beforeWork(`      - do: Let the gas out.
        only: { size: large }
        release: [gas charge]
        prove: [gas charge]
`);
    expect(messages(energy('water pressure, electric motor, gas charge'), step)).toEqual([
      '`gas charge` is released by no step (Small)',
    ]);
  });

  test.each([
    ['proved and released', '        release: [gas charge]\n        prove: [gas charge]\n', []],
    ['released only', '        release: [gas charge]\n', ['SAF002']],
    ['proved only', '        prove: [gas charge]\n', ['SAF001']],
  ])('an energy that is %s', (_, lines, codes) => {
    const step = beforeWork(`      - do: Let the gas out.\n${lines}`);
    expect(found(energy('water pressure, electric motor, gas charge'), step)).toEqual(codes);
  });

  test('a proof before the last release proves nothing', () => {
    const steps = beforeWork(`      - do: Read the gas gauge.
        prove: [gas charge]
      - do: Let the gas out.
        release: [gas charge]
`);
    expect(messages(energy('water pressure, electric motor, gas charge'), steps)).toEqual([
      '`gas charge` is released here, after the last step that proves it gone',
    ]);
  });

  const moves = (name: string, extra = ''): Edit => ({
    file: MW,
    from: '        loosen: cover\n',
    to: `        loosen: cover\n        release: [${name}]\n        prove: [${name}]\n${extra}`,
  });
  test.each([
    ['pressure that the first joint lets out', 'gas charge', '', ['SAF003']],
    ['a spring that the step itself lets go', 'seal spring', '', []],
    ['air that is read only through the opening', 'lack of oxygen', '', []],
    ['a weight that nothing carries', 'weight of the cover', '', ['SAF003']],
    ['a weight in lifting gear', 'weight of the cover', '        with: [hoist]\n', []],
    ['heat of the machine', 'heat', '', ['SAF003']],
  ])('%s', (_, name, extra, codes) => {
    expect(found(energy(`water pressure, electric motor, ${name}`), moves(name, extra))).toEqual(codes);
  });

  test('a weight that hangs in its gear needs no other proof', () => {
    const lift = liftOff('        lift: { mass: 18 kg, by: chain hoist }\n        release: [weight of the cover]\n');
    expect(found(energy('water pressure, electric motor, weight of the cover'), lift)).toEqual([]);
  });

  test('heat that the job brings is gone before nothing', () => {
    const heated = layOn(`        heat: { to: 50 degC, most: 60 degC }
        release: [heat]
        prove: [heat]
`);
    expect(found(energy('water pressure, electric motor, heat'), heated)).toEqual([]);
  });

  test('a proof after the work has begun', () => {
    const late: Edit[] = [
      beforeWork('      - do: Let the gas out.\n        release: [gas charge]\n'),
      { file: MW, from: '        loosen: cover\n', to: '        loosen: cover\n        prove: [gas charge]\n' },
    ];
    expect(messages(energy('water pressure, electric motor, gas charge'), ...late)).toEqual([
      'the work begins here, before `gas charge` is proved gone',
    ]);
  });

  test('a shared stage may name energies of other machines', () => {
    const stage: Edit = {
      file: 'stages/isolate.yaml',
      from: '    release: [water pressure]\n',
      to: '    release: [water pressure, compressed air]\n',
    };
    expect(found(stage)).toEqual([]);
  });

  test.each([
    ['a shared stage that is not there', { file: MW, from: '  - use: isolate\n', to: '  - use: isolat\n' }, ['REF010']],
    [
      'a step that cannot be read',
      { file: 'stages/isolate.yaml', from: '    release: [water pressure]\n', to: '    release: water pressure\n' },
      ['FLD003'],
    ],
  ])('%s is the one report', (_, edit, codes) => expect(found(edit)).toEqual(codes));
});

describe('close-out', () => {
  const closeOut = (from: string, to: string): Edit => ({ file: 'stages/close-out.yaml', from, to });
  const TURN = '  - do: Turn the shaft by hand through a full turn.\n    close_out: [turned by hand]\n';

  test('a machine that does not turn is not turned by hand', () => {
    const still: Edit = { file: 'machines/pump.yaml', from: 'rotates: true\n', to: '' };
    expect(found(still, closeOut(TURN, ''))).toEqual([]);
  });

  test('without a lock there is none to remove', () => {
    const tool: Edit = {
      file: 'tools.yaml',
      from: 'lock: { name: padlock, kind: lockout }',
      to: 'lock: { name: barrier, kind: lockout }',
    };
    expect(found(tool, closeOut('  - do: Remove your own lock.\n    close_out: [own locks removed]\n', ''))).toEqual(
      [],
    );
  });

  test('a turn by hand after the locks is too late, and two points too late are two reports', () => {
    const end = `  - do: Remove your own lock.
    close_out: [own locks removed]
`;
    const early: Edit[] = [closeOut(TURN, ''), closeOut(end, `${end}${TURN}`)];
    expect(found(...early)).toEqual(['SAF018']);
  });

  test('work after the locks have come off', () => {
    const swapped: Edit[] = [
      { file: MW, from: '  - use: close-out\n', to: '' },
      { file: MW, from: '  - title: Close\n', to: '  - use: close-out\n  - title: Close\n' },
    ];
    expect(found(...swapped)).toEqual(['SAF018']);
  });
});

/** NIOSH lifting equation: load constant 23 kg, 51 lb (memory). */
describe('lifting by hand', () => {
  test.each([
    ['23 kg', 'one person', []],
    ['51 lb', 'one person', []],
    ['24 kg', 'one person', ['SAF009']],
    ['55 lb', 'one person', ['SAF009']],
    ['26 kg', 'chain hoist on the eye', []],
    ['60 kg', 'three people', ['SAF020']],
  ])('%s by %s', (mass, by, codes) =>
    expect(found(layOn(`        lift: { mass: ${mass}, by: ${by} }\n`))).toEqual(codes),
  );

  const two: Edit = { file: MW, from: 'review: 24 months\n', to: 'review: 24 months\npeople: 2\n' };
  test.each([
    ['46 kg', 'two people', []],
    ['47 kg', 'two people', ['SAF009']],
  ])('%s by %s, who are there', (mass, by, codes) =>
    expect(found(two, layOn(`        lift: { mass: ${mass}, by: ${by} }\n`))).toEqual(codes),
  );

  test('the shop sets its own limit', () => {
    const limit: Edit = {
      file: 'shop.yaml',
      from: 'card: { format: A4 }\n',
      to: 'card: { format: A4 }\nlimits: { lift_alone: 15 kg }\n',
    };
    expect(found(limit, layOn('        lift: { mass: 18 kg, by: one person }\n'))).toEqual(['SAF009']);
  });

  test('gear named in the text or in `with` carries it', () => {
    const lift = layOn('        lift: { mass: 80 kg, by: from above }\n        with: [hoist]\n');
    expect(found(lift)).toEqual([]);
  });

  test('a lift that is less than the part weighs', () => {
    const cover: Edit = { file: 'machines/pump.yaml', from: 'mass: 18 kg', to: 'mass: 180 kg' };
    const again = layOn('        lift: { mass: 180 kg, by: chain hoist }\n');
    expect(messages(cover, again)).toEqual(['the lift is of 18 kg, and `cover` alone weighs 180 kg']);
  });

  test.each([
    ['260 kg', 'chain hoist', ['SAF011']],
    ['260 kg', 'two chain hoists', []],
    ['250 kg', 'chain hoist', []],
  ])('%s on gear for 250 kg by %s', (mass, by, codes) =>
    expect(found(liftOff(`        lift: { mass: ${mass}, by: ${by} }\n`))).toEqual(codes),
  );
});

describe('heat', () => {
  const gloves: Edit = {
    file: MW,
    from: 'ppe: [gloves, eye protection]',
    to: 'ppe: [gloves, eye protection, heat gloves]',
  };

  test.each([
    ['110 degC', '120 degC', []],
    ['110 degC', '121 degC', ['SAF012']],
    ['130 degC', '140 degC', ['SAF012']],
  ])('to %s, at most %s', (to, most, codes) =>
    expect(found(gloves, layOn(`        heat: { to: ${to}, most: ${most} }\n`))).toEqual(codes),
  );

  /** ASTM C1055: 60 degC burns within five seconds (memory). */
  test.each([
    ['60 degC', []],
    ['61 degC', ['SAF013']],
  ])('bare hands at %s', (to, codes) =>
    expect(found(layOn(`        heat: { to: ${to}, most: 90 degC }\n`))).toEqual(codes),
  );

  test('the shop sets its own limit', () => {
    const limit: Edit = {
      file: 'shop.yaml',
      from: 'card: { format: A4 }\n',
      to: 'card: { format: A4 }\nlimits: { heat: 180 degC }\n',
    };
    expect(found(gloves, limit, layOn('        heat: { to: 150 degC, most: 180 degC }\n'))).toEqual([]);
  });
});

/** UN GHS, annex 3: hazard statements and the protection of their precautionary statements P280, P282 and P284 (memory). */
describe('protection against consumables', () => {
  test.each([
    ['H312', 'harmful in contact with skin', ['gloves']],
    ['H314', 'causes severe skin burns and eye damage', ['gloves', 'eye protection']],
    ['H315', 'causes skin irritation', ['gloves']],
    ['H317', 'may cause an allergic skin reaction', ['gloves']],
    ['H318', 'causes serious eye damage', ['eye protection']],
    ['H319', 'causes serious eye irritation', ['eye protection']],
    ['H281', 'may cause cryogenic burns or injury', ['gloves', 'eye protection']],
    ['H330', 'fatal if inhaled', ['respirator']],
    ['H334', 'may cause allergy or asthma symptoms or breathing difficulties if inhaled', ['respirator']],
    ['H225', 'highly flammable liquid and vapour', []],
    ['H290', 'may be corrosive to metals', []],
    ['H304', 'may be fatal if swallowed and enters airways', []],
    ['H336', 'may cause drowsiness or dizziness', []],
    ['H411', 'toxic to aquatic life with long-lasting effects', []],
  ])('%s %s', (_, hazard, wanted) => {
    const bare: Edit = { file: MW, from: 'ppe: [gloves, eye protection]\n', to: '' };
    const oil: Edit = {
      file: 'consumables.yaml',
      from: 'hazards: [irritates the skin], ppe: [gloves]',
      to: `hazards: [${hazard}]`,
    };
    const asked = messages(bare, oil).map((m) => /asks for `(.*)`$/.exec(m)?.[1]);
    expect(asked.sort()).toEqual([...wanted].sort());
  });
});

describe('words of warnings', () => {
  const warn = (hazard: string, avoid = 'Open the vent first.'): Edit => ({
    file: MW,
    from: `          hazard: Trapped water scalds the hands.
          avoid: Open the vent first.
`,
    to: `          hazard: ${JSON.stringify(hazard)}\n          avoid: ${JSON.stringify(avoid)}\n`,
  });

  test.each([
    ['Close the valve, or water scalds the hands.', ['SAF019']],
    ['Water scalds the hands. Never open it hot.', ['SAF019']],
    ['Open gear teeth crush fingers.', []],
    ['Drain water scalds the hands.', []],
    ['Lock pins shear and the jib falls.', []],
  ])('hazard: %s', (hazard, codes) => expect(found(warn(hazard))).toEqual(codes));

  test.each([
    ['Loosen the <joint:cover> by one turn first.', ['SAF019']],
    ['Tighten it to 20 N·m before the drain is shut.', ['JNT012', 'SAF019']],
    ['Take off rings and watches.', []],
    ['Keep the <part:cover> between you and the jet.', []],
  ])('avoidance: %s', (avoid, codes) =>
    expect(found(warn('Trapped water scalds the hands.', avoid)).filter((c) => c !== 'JNT012')).toEqual(
      codes.filter((c) => c !== 'JNT012'),
    ),
  );

  const note = (words: string): Edit => ({
    file: MW,
    from: '      - do: Wipe both faces with a <consumable:wipe>.\n',
    to: `      - do: Wipe both faces with a <consumable:wipe>.\n        note: ${JSON.stringify(words)}\n`,
  });
  test.each([
    ['WARNING: hot.', ['SAF005']],
    ['Beware of the edge.', ['SAF005']],
    ['The old gasket is thin. Danger of leaks.', ['SAF005']],
    ['The edge cuts fingers.', ['SAF005']],
    ['Warning lamps go out when the pump stands.', []],
    ['Caution tape lies in the drawer.', []],
    ['A scratch cuts through the paint.', []],
  ])('note: %s', (words, codes) => expect(found(note(words)).filter((c) => c.startsWith('SAF'))).toEqual(codes));

  test('words in another language are left alone', () => {
    const dansk: Edit = { file: 'shop.yaml', from: 'name: Mini Works\n', to: 'name: Mini Works\nlanguage: da\n' };
    expect(found(dansk, warn('Varm.', 'Be careful.')).filter((c) => c.startsWith('SAF'))).toEqual([]);
  });
});
