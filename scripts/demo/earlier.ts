/** What the demo's content said before a revision: each edit turns the words of today into those of the days before it. */

export interface Edit {
  /** Within the shop folder. */
  readonly file: string;
  readonly from: string | RegExp;
  readonly to: string;
}

export interface Earlier {
  readonly doc: string;
  /** Revision that brought the words of today. */
  readonly rev: string;
  readonly edits: readonly Edit[];
}

const proc = (name: string, from: string | RegExp, to: string): Edit => ({
  file: `procedures/of-${name}.yaml`,
  from,
  to,
});
const machine = (name: string, from: string | RegExp, to: string): Edit => ({
  file: `machines/${name}.yaml`,
  from,
  to,
});

/** A whole step from its words to the next one. */
const step = (words: string): RegExp =>
  new RegExp(` {6}- (do: ${words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}\\n)(?: {8}.*\\n)*`);

const COOLER = '204-raw-water-cooler-end-covers';
const COPPER = `copper-anti-seize:
  name: copper anti-seize
  kind: anti-seize
  number: OS-2019
  pack: 500 g
  condition: anti-seize
  medium: mineral oil
  hazards: [harms water life]
  ppe: [gloves, eye protection]
  safety_data: Data-sheet folder at the stores hatch, tab L1
  shelf_life: 3 years
  waste: Closed can for metal pastes; never down a drain
nickel-anti-seize:
`;

export const EARLIER: readonly Earlier[] = [
  {
    doc: 'OF-212',
    rev: 'C',
    edits: [
      proc(
        '212-slipway-winch-output',
        'Pay out rope until the cradle, one wheel rim marked to the rail, rests on the chocks alone.',
        'Pay out rope until the cradle rests on the chocks alone.',
      ),
      proc(
        '212-slipway-winch-output',
        'wait: { for: 10 min, why: a chock on a greasy',
        'wait: { for: 5 min, why: a chock on a greasy',
      ),
      proc(
        '212-slipway-winch-output',
        'limit: at most 0.5 mm\n          with: vernier',
        'limit: at most 1.0 mm\n          with: vernier',
      ),
    ],
  },
  {
    doc: 'OF-251',
    rev: 'C',
    edits: [
      proc('251-bow-ramp-hinge-bearing', 'limit: 0.055 to 0.110 mm', 'limit: 0.050 to 0.120 mm'),
      proc('251-bow-ramp-hinge-bearing', 'wait: { for: 15 min, why: the dye', 'wait: { for: 10 min, why: the dye'),
      proc(
        '251-bow-ramp-hinge-bearing',
        step('Raise and lower the corner 50 mm on the <tool:chain-hoist-3t> and feel the hinge move.'),
        '',
      ),
    ],
  },
  {
    doc: 'OF-163',
    rev: 'C',
    edits: [
      proc(
        '163-fire-main-valve-bonnet',
        'Turn each gland nut one flat in turn until the pull at the rim is within the limit.',
        'Turn each gland nut one flat in turn until the follower stands square.',
      ),
      proc('163-fire-main-valve-bonnet', 'limit: 60 to 90 N\n', 'limit: 60 to 120 N\n'),
    ],
  },
  {
    doc: 'OF-221',
    rev: 'D',
    edits: [
      proc(
        '221-steering-ram-reseal',
        step('Close the <tool:ring-sizing-sleeve> over the <part:piston-seal> and leave it.'),
        '',
      ),
      proc(
        '221-steering-ram-reseal',
        'avoid: The sleeve stays on the piston until the ring is inside the lead-in of the bore.',
        'avoid: The ring is pressed flat with the thumbs all round before it meets the lead-in of the bore.',
      ),
    ],
  },
  {
    doc: 'OF-204',
    rev: 'D',
    edits: [
      { file: 'consumables.yaml', from: 'nickel-anti-seize:\n', to: COPPER },
      machine('raw-water-cooler', /nickel-anti-seize/g, 'copper-anti-seize'),
      machine('raw-water-cooler', 'torque: 135 N·m', 'torque: 140 N·m'),
      machine('raw-water-cooler', /4th edition/g, '3rd edition'),
      proc(COOLER, /nickel-anti-seize/g, 'copper-anti-seize'),
      proc(COOLER, /4th edition/g, '3rd edition'),
      { file: 'outside.yaml', from: /(cooler handbook\n(?:.*\n)??.*edition: )4th edition/, to: '$13rd edition' },
    ],
  },
  {
    doc: 'OF-233',
    rev: 'C',
    edits: [
      proc('233-crane-slewing-ring', /(tilt of the ring under the jack\n {10}at: )\[12, 3, 6, 9\]/g, '$1[12, 6]'),
      proc(
        '233-crane-slewing-ring',
        'Raise the <tool:gauge-jack> under the platform bracket to 30 kN and read the tilt.',
        'Raise the <tool:gauge-jack> under the platform bracket to 20 kN and read the tilt.',
      ),
    ],
  },
  {
    doc: 'OF-170',
    rev: 'D',
    edits: [machine('sea-water-pump', /torque: 66 N·m(\n(?:.*\n)*? {4}rounds: )\[30 %/, 'torque: 62 N·m$1[35 %')],
  },
  {
    doc: 'OF-240',
    rev: 'C',
    edits: [
      proc('240-fresh-water-tank-cover', 'limit: 2.0 to 2.6 mm', 'limit: 1.8 to 2.6 mm'),
      proc(
        '240-fresh-water-tank-cover',
        step('Swing the float arm by hand through the test hole and watch the pointer.'),
        '',
      ),
      proc('240-fresh-water-tank-cover', 'record: Lot numbers of both gaskets', 'record: Lot number of the gasket'),
    ],
  },
  {
    doc: 'OF-184',
    rev: 'B',
    edits: [
      machine('sea-chest', '    sequence: { method: quadrants, tools: 4 }\n', ''),
      proc(
        '184-sea-chest',
        'Tighten the <joint:entry-blank> with four wrenches at once, one fitter to each quadrant.',
        'Tighten the <joint:entry-blank> in order and in rounds.',
      ),
      proc('184-sea-chest', / {8}note: One of the four calls each move.*\n/, ''),
    ],
  },
  {
    doc: 'OF-262',
    rev: 'C',
    edits: [
      proc(
        '262-davit-power-pack',
        'Paste as fine as graphite is running wear. Splinters that can be felt are a part coming to pieces.',
        'Fine paste is wear. Splinters are a part coming to pieces.',
      ),
    ],
  },
  {
    doc: 'OF-131',
    rev: 'C',
    edits: [
      machine('raw-water-main', 'torque: 90 N·m', 'torque: 85 N·m'),
      proc(
        '131-raw-water-flange',
        'wait: { for: 45 min, why: a fibre gasket',
        'wait: { for: 30 min, why: a fibre gasket',
      ),
      proc(
        '131-raw-water-flange',
        'limit: 0 to 0.10 mm\n          with: feeler-gauge',
        'limit: 0 to 0.15 mm\n          with: feeler-gauge',
      ),
    ],
  },
];

/** A document of former days that stands in the content no more. */
export const OLD_MAIN = {
  doc: 'OF-109',
  file: 'procedures/of-109-old-raw-water-flange.yaml',
  like: 'procedures/of-131-raw-water-flange.yaml',
  edits: [
    { from: 'doc: OF-131', to: 'doc: OF-109' },
    { from: /^title: .*$/m, to: 'title: Renew a flange gasket of the old raw-water main of MV Tern' },
    { from: /^formerly: .*\n/m, to: '' },
    {
      from: /^revisions:\n(?: .*\n)*/m,
      to: `revisions:
  - rev: A
    effective: 2019-05-06
    approved: 2019-04-23
    author: heat-fitter
    approver: shop-lead
    what: First issue, from work sheet WS-12
    why: The old main of MV Tern has flanges of its own
`,
    },
  ],
} as const;
