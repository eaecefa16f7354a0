/** Writes a synthetic shop of any size: content that every check lets pass, varied by a seed, shaped like the demo's. */

import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { type Random, seeded } from './random.ts';

export interface SyntheticSize {
  readonly procedures: number;
  /** Steps a procedure, shared stages counted in; more than the 10 that every procedure has. */
  readonly steps: number;
  readonly seed: number;
}

const VERBS = ['Wipe', 'Inspect', 'Clean', 'Mark', 'Lift off', 'Set down', 'Turn', 'Check'];
const THINGS = [
  'the cover face',
  'the bore',
  'the shaft end',
  'the seal seat',
  'the drain',
  'the guard',
  'the base plate',
  'the keyway',
];
const PLACES = [
  'with both hands',
  'on the bench',
  'from the drive end',
  'at the marked side',
  'without scraping it',
  'over the drip tray',
];
const SIZES = [
  { thread: 'M12', socket: 18, torque: 58, count: 6, circle: 160 },
  { thread: 'M16', socket: 24, torque: 145, count: 8, circle: 240 },
  { thread: 'M16', socket: 24, torque: 145, count: 12, circle: 320 },
] as const;

/** Steps of the shared stages, and those of its own that every procedure has: loosen, remove, fit, tighten, measure. */
const FIXED_STEPS = 5 + 5;
const TOOLS = 55;
const CONSUMABLES = 25;
const PARTS = 10;

/** What the steps name: the registers and parts lists hold nothing else. */
interface Named {
  readonly tools: Set<number>;
  readonly consumables: Set<number>;
  readonly parts: Set<number>;
}

/** Returns the number of content files written below `folder`. */
export function writeSyntheticShop(folder: string, { procedures, steps, seed }: SyntheticSize): number {
  const random = seeded(seed);
  const write = (name: string, text: string): void => {
    const full = path.join(folder, name);
    mkdirSync(path.dirname(full), { recursive: true });
    writeFileSync(full, text);
  };
  const docs = Array.from({ length: procedures }, (_, i) => `SY-${1001 + i}`);
  const machines = Math.ceil(procedures / 10);
  const named = { tools: new Set([1]), consumables: new Set<number>() };
  for (let m = 0; m < machines; m++) {
    const parts = new Set([0]);
    for (const doc of docs.slice(m * 10, m * 10 + 10)) {
      write(`procedures/${doc.toLowerCase()}.yaml`, procedure(doc, m, steps, random, { ...named, parts }));
    }
    write(`machines/machine-${m}.yaml`, machine(m, parts));
  }
  write('shop.yaml', SHOP);
  write('people.yaml', PEOPLE);
  write('benches.yaml', benches(docs));
  write('tools.yaml', tools(named.tools, machines));
  write('consumables.yaml', consumables(named.consumables));
  write('stages/isolate.yaml', ISOLATE);
  write('stages/close.yaml', CLOSE);
  return 7 + machines + procedures;
}

const SHOP = `name: Synthetic Works
address: https://binder.synthetic.example/
torque: { leading: N·m, second: lbf·ft }
card: { format: A4 }
safety: The maker's manual, the site's lockout procedure, local codes and licensed practice govern.
`;

const PEOPLE = `writer: { name: Wren Writer, role: Fitter }
lead: { name: Lee Lead, role: Quality lead, approves: [major, minor] }
`;

const ISOLATE = `id: isolate
title: Isolate and prove
steps:
  - do: Lock the switch with <tool:tool-1>.
    warn: { level: danger, hazard: A machine that starts kills., avoid: Keep the key on your person. }
    release: [electric motor]
  - do: Try to start the machine.
    prove: [electric motor]
    record: Tried by
`;

const CLOSE = `id: close
title: Close out
steps:
  - do: Count the tools.
    close_out: [tools counted]
    record: Tools counted
  - do: Refit every guard.
    close_out: [guards refitted]
  - do: Remove your own lock.
    close_out: [own locks removed]
`;

function benches(docs: readonly string[]): string {
  const count = Math.max(1, Math.ceil(docs.length / 25));
  return Array.from({ length: count }, (_, b) => {
    const binder = docs.slice(b * 25, b * 25 + 25).join(', ');
    return `bench-${b + 1}:\n  name: Bench ${b + 1}\n  place: Hall ${1 + (b % 4)}\n  binder: [${binder}]\n`;
  }).join('');
}

/** The first machine takes the small wrench, the two after it the large one. */
function tools(used: ReadonlySet<number>, machines: number): string {
  const plain = rising(used).map((i) => `tool-${i}: { name: tool ${i}, kind: hand tool, kept: Drawer ${i % 9} }\n`);
  const sockets = [18, 24].map((s) => `socket-${s}: { name: ${s} mm socket, kind: socket, size: ${s} mm }\n`);
  const large = `wrench-large: { name: large torque wrench, kind: torque wrench, range: 40 to 200 N·m, step: 1 N·m, serial: SY-T1, calibration_due: 2027-03-01 }
`;
  return `${[...plain, ...sockets].join('')}gauge: { name: feeler gauge, kind: measuring tool, range: 0.05 to 1.00 mm, step: 0.01 mm, serial: SY-G1, calibration_due: 2027-06-01 }
wrench-small: { name: small torque wrench, kind: torque wrench, range: 12 to 60 N·m, step: 0.5 N·m, serial: SY-T2, calibration_due: 2027-03-01 }
${machines > 1 ? large : ''}`;
}

function consumables(used: ReadonlySet<number>): string {
  const cleaners = rising(used).map(
    (i) =>
      `consumable-${i}: { name: consumable ${i}, kind: cleaner, hazards: [irritates the skin], ppe: [gloves], safety_data: folder L${i}, waste: solvent can }\n`,
  );
  return `${cleaners.join('')}oil: { name: machine oil, kind: lubricant, condition: oiled, medium: mineral oil, hazards: [irritates the skin], ppe: [gloves], safety_data: folder L90, shelf_life: 5 years, waste: used-oil drum }
`;
}

function machine(m: number, used: ReadonlySet<number>): string {
  const size = SIZES[m % SIZES.length] ?? SIZES[0];
  const parts = rising(used).map(
    (p) => `  part-${p}: { name: part ${p}, kind: other, quantity: 1, number: SY-${m}-${p} }\n`,
  );
  return `id: machine-${m}
name: machine ${m}
bench: bench-1
energy: [electric motor]
parts:
${parts.join('')}  screw: { name: cover screw, kind: screw, number: SY-${m}-S }
joints:
  cover:
    name: cover joint
    fastener: screw
    thread: ${size.thread}
    grade: "8.8"
    head: hexagon
    condition: oiled
    lubricant: oil
    pattern: { circle: ${size.circle} mm, count: ${size.count} }
    view: the cover side
    preload: 65 %
    torque: ${size.torque} N·m
    source: ${manual(m, m + 3)}
    rounds: [30 %, 70 %, 100 %]
    circular_passes: 1
    wrench: wrench-${size.socket === 18 ? 'small' : 'large'}
    socket: socket-${size.socket}
`;
}

function manual(m: number, page: number): string {
  return `{ document: Synthetic manual ${m}, edition: "2", place: page ${page} }`;
}

function procedure(doc: string, m: number, steps: number, random: Random, named: Named): string {
  const out: string[] = [
    `doc: ${doc}
title: Overhaul ${random.pick(THINGS).replace('the ', '')} ${doc.slice(3)}
machine: machine-${m}
purpose: Puts the machine in good order.
owner: lead
review: 24 months
revisions:
  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: writer, approver: lead, what: First issue, why: New machine }
stages:
  - use: isolate
  - title: Strip
    steps:
      - do: Loosen the <joint:cover>.
        loosen: cover
`,
  ];
  const middle = steps - FIXED_STEPS;
  for (let i = 0; i < middle; i++) {
    if (i === Math.floor(middle / 2)) out.push('  - title: Put together\n    steps:\n');
    const use = naming(random, named);
    out.push(`      - do: ${random.pick(VERBS)} ${random.pick(THINGS)} ${random.pick(PLACES)}, using ${use}.\n`);
    if (random.whole(6) === 0)
      out.push(
        `        warn: { level: warning, hazard: Sharp edges cut., avoid: Wear gloves at ${random.pick(THINGS)}. }\n`,
      );
    if (random.whole(8) === 0) out.push(`        note: The face of part ${random.whole(PARTS)} shows wear first.\n`);
  }
  out.push(`      - do: Remove the <part:part-0>.
        remove: { part-0: inspect, screw: reuse }
      - do: Fit the <part:part-0>.
        fit: [part-0, screw]
      - do: Tighten the <joint:cover>.
        lubricate: { with: oil, where: thread and under the head }
        tighten: cover
      - do: Measure the gap.
        measure: { what: Gap, at: [12, 3, 6, 9], limit: 0.05 to 0.${30 + random.whole(20)} mm, with: gauge, if out: Repeat this stage., record: as left, source: ${manual(m, 40)} }
  - use: close
`);
  return out.join('');
}

/** A tool, a consumable or a part, noted as named. */
function naming(random: Random, named: Named): string {
  const one = (set: Set<number>, below: number): number => {
    const i = random.whole(below);
    set.add(i);
    return i;
  };
  return random.pick([
    () => `<tool:tool-${one(named.tools, TOOLS)}>`,
    () => `<consumable:consumable-${one(named.consumables, CONSUMABLES)}>`,
    () => `<part:part-${one(named.parts, PARTS)}>`,
  ])();
}

function rising(numbers: ReadonlySet<number>): readonly number[] {
  return [...numbers].sort((a, b) => a - b);
}
