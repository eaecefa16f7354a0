/** Consumables: the elastomer table against statements from outside, and tables of cases for the checks that use it. */

import { describe, expect, test } from 'vitest';
import { ELASTOMERS } from '../../src/model/shapes/machine.ts';
import { MEDIA } from '../../src/model/shapes/registers.ts';
import { runExample } from '../../src/pipeline/index.ts';
import { READ, textBehind, type Verdict, verdictOf } from '../../src/rules/csm/elastomers.ts';
import type { Edit } from '../../src/rules/index.ts';

const PROCEDURE = 'procedures/mw-1.yaml';
const PUMP = 'machines/pump.yaml';
const WIPE = 'wipe: { name: lint-free wipe, kind: wipe }\n';
const LAY = '      - do: Lay on the new <part:gasket>.\n        fit: [gasket, cover]\n';

function codes(edits: readonly Edit[]): string[] {
  return runExample(edits)
    .diagnostics.map((d) => d.code)
    .filter((c) => c.startsWith('CSM'));
}

describe('table of elastomers and media', () => {
  test('has a verdict for every symbol and medium that content may use', () => {
    for (const e of ELASTOMERS) for (const m of MEDIA) expect(verdictOf(e, m), `${e}, ${m}`).toMatch(/^(?:ok|no|ask)$/);
    expect(verdictOf('NR', 'mineral oil')).toBeUndefined();
    expect(verdictOf('NBR', 'water')).toBeUndefined();
    expect(verdictOf('constructor', 'mineral oil')).toBeUndefined();
  });

  test('names the text behind each cell that is not from memory', () => {
    for (const cell of Object.keys(READ)) {
      const [elastomer = '', medium = ''] = cell.split(', ');
      expect(verdictOf(elastomer, medium), cell).toBeDefined();
      expect(textBehind(elastomer, medium)).toMatch(/[a-z]{4}/);
    }
    expect(textBehind('FFKM', 'ketone')).toBeUndefined();
  });

  /**
   * Statements read elsewhere after the verdicts were set. pti-latam.com, glossary, seal chemical compatibility;
   * ficientdesign.com, O-ring material comparison table (poor: may not be `ok`); henniggasket.com on acetone;
   * memory: polyglycol brake fluid goes with EPDM only.
   */
  const OUTSIDE: readonly (readonly [elastomer: string, medium: string, may: readonly Verdict[]])[] = [
    // Glossary: NBR for oils, fuels, greases, and not for ketones and esters.
    ['NBR', 'mineral oil', ['ok']],
    ['NBR', 'ketone', ['no']],
    ['NBR', 'ester oil', ['no', 'ask']],
    // EPDM not for mineral oils; FKM for oils, not ketones; silicone not for hydrocarbon solvents; FFKM nearly everything.
    ['EPDM', 'mineral oil', ['no']],
    ['FKM', 'mineral oil', ['ok']],
    ['FKM', 'ketone', ['no']],
    ['VMQ', 'mineral spirits', ['no']],
    ['FFKM', 'ketone', ['ok']],
    ['FFKM', 'chlorinated cleaner', ['ok']],
    // Comparison table, petroleum oils: NBR, FKM and PTFE excellent, chloroprene fair, EPDM and silicone poor.
    ['PTFE', 'mineral oil', ['ok']],
    ['CR', 'mineral oil', ['ask', 'ok']],
    ['VMQ', 'mineral oil', ['no', 'ask']],
    // Acetone: EPDM is not harmed, NBR and FKM swell.
    ['EPDM', 'ketone', ['ok']],
    // Brake fluid.
    ['EPDM', 'brake fluid', ['ok']],
    ['NBR', 'brake fluid', ['no']],
    ['FKM', 'brake fluid', ['no']],
  ];
  test.each(OUTSIDE)('%s and %s: %j', (elastomer, medium, may) => {
    expect(may).toContain(verdictOf(elastomer, medium));
  });
});

describe('elastomer conflict', () => {
  const gasket = (more: string): Edit => ({
    file: PUMP,
    from: '  gasket: { name: cover gasket, kind: gasket, quantity: 1, number: MW-101,',
    to: `  gasket: { name: cover gasket, kind: gasket, quantity: 1, number: MW-101, ${more}`,
  });
  const step = (more: string, lay = LAY): Edit => ({ file: PROCEDURE, from: LAY, to: `${lay}${more}` });
  const medium = (m: string): Edit => ({
    file: 'consumables.yaml',
    from: 'medium: mineral oil',
    to: `medium: ${m}`,
  });
  const USE = '        use: [oil]\n';

  const CASES: readonly (readonly [why: string, edits: readonly Edit[], found: string[]])[] = [
    ['EPDM and oil', [gasket('elastomer: EPDM,'), step(USE)], ['CSM003']],
    ['NBR and oil', [gasket('elastomer: NBR,'), step(USE)], []],
    ['chloroprene and oil: it depends', [gasket('elastomer: CR,'), step(USE)], []],
    ['no elastomer stated', [step(USE)], []],
    ['EPDM and silicone', [gasket('elastomer: EPDM,'), medium('silicone'), step(USE)], []],
    ['silicone and silicone', [gasket('elastomer: VMQ,'), medium('silicone'), step(USE)], ['CSM003']],
    ['nitrile and ketone', [gasket('elastomer: NBR,'), medium('ketone'), step(USE)], ['CSM003']],
    ['with an amount', [gasket('elastomer: EPDM,'), step('        use: { oil: 5 ml }\n')], ['CSM003']],
    [
      'laid on with it',
      [gasket('elastomer: EPDM,'), step('        lubricate: { with: oil, where: gasket face }\n')],
      ['CSM003'],
    ],
    [
      'oil for the threads beside it',
      [gasket('elastomer: EPDM,'), step('        lubricate: { with: oil, where: thread and under the head }\n')],
      [],
    ],
    [
      'oil for the threads and the gasket',
      [gasket('elastomer: EPDM,'), step('        lubricate: { with: oil, where: threads and gasket }\n')],
      ['CSM003'],
    ],
    [
      'in the words',
      [
        gasket('elastomer: EPDM,'),
        step('', LAY.replace('the new <part:gasket>.', 'the new <part:gasket>, wetted with <consumable:oil>.')),
      ],
      ['CSM003'],
    ],
    [
      'a warning that names it is no use of it',
      [
        gasket('elastomer: EPDM,'),
        step(`        warn:
          level: notice
          hazard: A drop of <consumable:oil> swells it until it creeps out of the joint.
          avoid: Clean gloves only.
`),
      ],
      [],
    ],
    [
      'thrown away',
      [
        gasket('elastomer: EPDM,'),
        {
          file: PROCEDURE,
          from: '        remove: { cover: reuse, gasket: discard, screw: inspect }\n',
          to: `        remove: { cover: reuse, gasket: discard, screw: inspect }\n${USE}`,
        },
      ],
      [],
    ],
    [
      'allowed by the maker',
      [gasket('elastomer: EPDM, resists: { oil: { document: Data sheet, edition: "2", place: page 3 } },'), step(USE)],
      [],
    ],
    [
      'inside a sub-assembly',
      [
        gasket('elastomer: EPDM,'),
        {
          file: PUMP,
          from: '  plug: { name: vent plug, kind: plug, quantity: 1, number: MW-103, only: { size: large } }\n',
          to: `  plug: { name: vent plug, kind: plug, quantity: 1, number: MW-103, made_of: [ring], only: { size: large } }
  ring: { name: plug ring, kind: o-ring, quantity: 1, number: MW-104, elastomer: VMQ, only: { size: large } }\n`,
        },
        medium('ketone'),
        {
          file: PROCEDURE,
          from: '      - do: Fit the <part:plug>.\n',
          to: '      - do: Fit the <part:plug>, wetted with <consumable:oil>.\n',
        },
      ],
      ['CSM003'],
    ],
  ];
  test.each(CASES)('%s', (_why, edits, found) => {
    expect(codes(edits)).toEqual(found);
  });

  test('says both sides, what the verdict rests on, and what to use', () => {
    const [d] = runExample([
      gasket('elastomer: EPDM,'),
      step(USE),
      {
        file: 'consumables.yaml',
        from: WIPE,
        to: `${WIPE}grease: { name: rubber grease, kind: lubricant, medium: silicone, safety_data: folder L2, waste: bin }\n`,
      },
    ]).diagnostics.filter((x) => x.code === 'CSM003');
    expect(d?.message).toBe(
      'EPDM does not stand mineral oil: `oil` comes onto `gasket` (Materials Research Express, 2018: EPDM degraded in mineral engine oil (abstract))',
    );
    expect(d?.hint).toContain('`grease`');
    expect(d?.hint).toContain('`resists: { oil: … }`');
    expect(d?.related?.map((r) => r.message)).toEqual(['`gasket` is EPDM', '`oil` is mineral oil']);
  });
});

describe('cure', () => {
  const PASTE = `${WIPE}paste: { name: joint paste, kind: sealant, cure: 2 h, safety_data: folder S1, shelf_life: 1 year, waste: closed can }\n`;
  const GAP = '      - do: Measure the gap.\n';
  const wait = (time: string): string => `        wait: { for: ${time}, why: the paste sets }\n`;
  const cure = (use: string, later: string, after = ''): Edit[] => [
    { file: 'consumables.yaml', from: WIPE, to: PASTE },
    { file: PROCEDURE, from: LAY, to: `${LAY}${use}` },
    { file: PROCEDURE, from: GAP, to: `${later}${GAP}${after}` },
  ];
  const USE = '        use: [paste]\n';
  const run = (text: string, more = ''): string => `      - do: ${text}\n        record: Seen by\n${more}`;

  const CASES: readonly (readonly [why: string, edits: readonly Edit[], found: string[]])[] = [
    ['nothing waits', cure(USE, ''), ['CSM004']],
    ['the step itself waits', cure(USE + wait('2 h'), ''), []],
    ['a later step waits', cure(USE, '', wait('2 h')), []],
    ['in minutes', cure(USE, '', wait('120 min')), []],
    ['a minute short', cure(USE, '', wait('119 min')), ['CSM004']],
    ['two waits that add up', cure(USE + wait('30 min'), '', wait('1.5 h')), []],
    ['two that do not', cure(USE + wait('30 min'), '', wait('1 h')), ['CSM004']],
    ['run before the wait', cure(USE, run('Run the pump for ten minutes.'), wait('2 h')), ['CSM004']],
    ['run at the wait', cure(USE, run('Run the pump for ten minutes.', wait('2 h'))), ['CSM004']],
    ['run after the wait', cure(USE + wait('2 h'), run('Run the pump for ten minutes.')), []],
    ['test pressure before the wait', cure(USE, run('Hold the test pressure.'), wait('2 h')), ['CSM004']],
    ['a nut is run down meanwhile', cure(USE, run('Run the nuts down by hand.'), wait('2 h')), []],
    ['a tap is run through meanwhile', cure(USE, run('Run the gauge along the thread.'), wait('2 h')), []],
    ['old paste is scraped off', cure('', run('Scrape off the old <consumable:paste>.')), []],
    ['new paste is laid on', cure('', run('Lay a bead of <consumable:paste> round the bore.')), ['CSM004']],
  ];
  test.each(CASES)('%s', (_why, edits, found) => {
    expect(codes(edits)).toEqual(found);
  });

  test('a wait of one variant is none for the other', () => {
    const [d] = runExample([
      { file: 'consumables.yaml', from: WIPE, to: PASTE },
      { file: PROCEDURE, from: LAY, to: `${LAY}${USE}` },
      {
        file: PROCEDURE,
        from: GAP,
        to: `      - do: Leave the joint alone.\n        only: { size: large }\n${wait('2 h')}${GAP}`,
      },
    ]).diagnostics.filter((x) => x.code === 'CSM004');
    expect(d?.message).toMatch(
      /`paste` cures in 2.h, and nothing waits from this step to the end of the card \(Small\)/,
    );
  });
});

describe('register', () => {
  const KINDS: readonly (readonly [entry: string, found: string[]])[] = [
    ['kind: wipe', []],
    ['kind: packing', []],
    ['kind: protection', []],
    ['kind: wipe, hazards: [sheds glass fibre]', ['CSM001']],
    ['kind: lubricant', ['CSM001', 'CSM006']],
    ['kind: cleaner, safety_data: folder C1', ['CSM006']],
    ['kind: gas, safety_data: folder G1, waste: vented outdoors', []],
    ['kind: adhesive, safety_data: folder S1, waste: closed can', ['CSM002']],
    ['kind: threadlocker, safety_data: folder S1, waste: closed can', ['CSM002']],
    ['kind: marking, cure: 1 h', ['CSM002']],
    ['kind: adhesive, safety_data: folder S1, waste: closed can, shelf_life: use-by date', []],
  ];
  test.each(KINDS)('%s: %j', (entry, found) => {
    const edits = [{ file: 'consumables.yaml', from: WIPE, to: `${WIPE}probe: { name: test probe, ${entry} }\n` }];
    expect(codes(edits)).toEqual(found);
  });

  test('what could not be read is not said to be missing', () => {
    const { diagnostics } = runExample([
      { file: 'consumables.yaml', from: 'safety_data: folder L1', to: 'safety_data: [folder L1]' },
    ]);
    expect(diagnostics.map((d) => d.code)).toEqual(['FLD003']);
  });
});

describe('plain words', () => {
  const MORE = `${WIPE}gear-oil: { name: gear oil, kind: fluid, safety_data: folder F1, waste: drum, also_called: [winch oil] }
isopropanol: { name: isopropanol, kind: cleaner, safety_data: folder C1, waste: closed can }
ipa: { name: face cleaner, kind: cleaner, safety_data: folder C1, waste: closed can }
tape: { name: tape, kind: packing }
`;
  const WORDS: readonly (readonly [text: string, found: number])[] = [
    ['Wet the lip with gear oil.', 1],
    ['Wet the lip with winch oil.', 1],
    ['Wet the lip with <consumable:gear-oil>.', 0],
    ['Fill the case with gear oil.', 1],
    ['Drain the gear oil into the pan.', 0],
    ['Wipe old gear oil off the face.', 0],
    ['Wash the case out with gear oil.', 1],
    ['Wash the face with isopropanol.', 1],
    ['Wipe the screws free of oil with isopropanol.', 1],
    ['Wash the face with face cleaner.', 1],
    ['Assemble the lip without gear oil.', 0],
    ['Wind tape round the thread.', 0],
  ];
  test.each(WORDS)('%s', (text, found) => {
    const { diagnostics } = runExample([
      { file: 'consumables.yaml', from: WIPE, to: MORE },
      { file: 'stages/close-out.yaml', from: '  - do: Refit every guard.\n', to: `  - do: ${text}\n` },
    ]);
    expect(diagnostics.filter((d) => d.code === 'CSM005')).toHaveLength(found);
  });
});
