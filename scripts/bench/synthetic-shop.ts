/** Writes a synthetic shop of any size: sound content, varied by a seed, shaped like the demo's. */

import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { type Random, seeded } from './random.ts';

export interface SyntheticSize {
  readonly procedures: number;
  /** Steps a procedure, shared stages counted in; at least 12. */
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

/** Returns the number of content files written below `folder`. */
export function writeSyntheticShop(folder: string, { procedures, steps, seed }: SyntheticSize): number {
  const random = seeded(seed);
  const write = (name: string, text: string): void => {
    const full = path.join(folder, name);
    mkdirSync(path.dirname(full), { recursive: true });
    writeFileSync(full, text);
  };
  const docs = Array.from({ length: procedures }, (_, i) => `SY-${1001 + i}`);
  write(
    'shop.yaml',
    `name: Synthetic Works\naddress: https://binder.synthetic.example/\ntorque: { leading: N·m, second: lbf·ft }\ncard: { format: A4 }\nsafety: The maker's manual, the site's lockout procedure, local codes and licensed practice govern.\n`,
  );
  write(
    'people.yaml',
    'writer: { name: Wren Writer, role: Fitter }\nlead: { name: Lee Lead, role: Quality lead, approves: [major, minor] }\n',
  );
  const benches = Math.max(1, Math.ceil(procedures / 25));
  write(
    'benches.yaml',
    Array.from(
      { length: benches },
      (_, b) =>
        `bench-${b + 1}:\n  name: Bench ${b + 1}\n  place: Hall ${1 + (b % 4)}\n  binder: [${docs.slice(b * 25, b * 25 + 25).join(', ')}]\n`,
    ).join(''),
  );
  write('tools.yaml', tools());
  write(
    'consumables.yaml',
    `${Array.from(
      { length: 25 },
      (_, i) => `consumable-${i}: { name: consumable ${i}, kind: cleaner, ppe: [gloves] }\n`,
    ).join('')}oil: { name: machine oil, kind: lubricant, condition: oiled }\n`,
  );
  write(
    'stages/isolate.yaml',
    'id: isolate\ntitle: Isolate and prove\nsteps:\n  - do: Lock the switch with <tool:tool-1>.\n    warn: { level: danger, hazard: A machine that starts kills., avoid: Keep the key on your person. }\n  - do: Try to start the machine.\n    record: Tried by\n',
  );
  write(
    'stages/close.yaml',
    'id: close\ntitle: Close out\nsteps:\n  - do: Count the tools.\n    record: Tools counted\n  - do: Remove your own lock.\n',
  );
  const machines = Math.ceil(procedures / 10);
  for (let m = 0; m < machines; m++) write(`machines/machine-${m}.yaml`, machine(m));
  for (const [i, doc] of docs.entries()) {
    const file = `procedures/${doc.toLowerCase()}.yaml`;
    write(file, procedure(doc, `machine-${Math.floor(i / 10)}`, steps, random));
  }
  return 8 + machines + procedures;
}

function tools(): string {
  const plain = Array.from(
    { length: 55 },
    (_, i) => `tool-${i}: { name: tool ${i}, kind: hand tool, kept: Drawer ${i % 9} }\n`,
  ).join('');
  const sockets = [18, 24].map((s) => `socket-${s}: { name: ${s} mm socket, kind: socket, size: ${s} mm }\n`).join('');
  return `${plain}${sockets}gauge: { name: feeler gauge, kind: measuring tool, range: 0.05 to 1.00 mm }\nwrench-large: { name: large torque wrench, kind: torque wrench, range: 40 to 200 N·m, step: 1 N·m }\nwrench-small: { name: small torque wrench, kind: torque wrench, range: 12 to 60 N·m, step: 0.5 N·m }\n`;
}

function machine(m: number): string {
  const size = SIZES[m % SIZES.length] ?? SIZES[0];
  const parts = Array.from(
    { length: 10 },
    (_, p) => `  part-${p}: { name: part ${p}, kind: other, quantity: 1, number: SY-${m}-${p} }\n`,
  ).join('');
  return `id: machine-${m}\nname: machine ${m}\nbench: bench-1\nparts:\n${parts}  screw: { name: cover screw, kind: screw, number: SY-${m}-S }\njoints:\n  cover:\n    name: cover joint\n    fastener: screw\n    thread: ${size.thread}\n    grade: "8.8"\n    head: hexagon\n    condition: oiled\n    lubricant: oil\n    pattern: { circle: ${size.circle} mm, count: ${size.count} }\n    view: the cover side\n    preload: 65 %\n    torque: ${size.torque} N·m\n    source: { document: Synthetic manual ${m}, place: page ${m + 3} }\n    rounds: [30 %, 70 %, 100 %]\n    circular_passes: 1\n    wrench: wrench-${size.socket === 18 ? 'small' : 'large'}\n    socket: socket-${size.socket}\n`;
}

function procedure(doc: string, machineId: string, steps: number, random: Random): string {
  const out: string[] = [
    `doc: ${doc}\ntitle: Overhaul ${random.pick(THINGS).replace('the ', '')} ${doc.slice(3)}\nmachine: ${machineId}\npurpose: Puts the machine in good order.\nowner: lead\nreview: 24 months\nrevisions:\n  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: writer, approver: lead, what: First issue, why: New machine }\nstages:\n  - use: isolate\n  - title: Strip\n    steps:\n      - do: Loosen the <joint:cover>.\n        loosen: cover\n`,
  ];
  const middle = steps - 4 - 4;
  for (let i = 0; i < middle; i++) {
    if (i === Math.floor(middle / 2)) out.push('  - title: Put together\n    steps:\n');
    const use = random.pick([
      `<tool:tool-${random.whole(55)}>`,
      `<consumable:consumable-${random.whole(25)}>`,
      `<part:part-${random.whole(10)}>`,
    ]);
    out.push(`      - do: ${random.pick(VERBS)} ${random.pick(THINGS)} ${random.pick(PLACES)}, using ${use}.\n`);
    if (random.whole(6) === 0)
      out.push(
        `        warn: { level: warning, hazard: Sharp edges cut., avoid: Wear gloves at ${random.pick(THINGS)}. }\n`,
      );
    if (random.whole(8) === 0) out.push(`        note: The face of part ${random.whole(10)} shows wear first.\n`);
  }
  out.push(
    `      - do: Remove the <part:part-0>.\n        remove: { part-0: inspect, screw: reuse }\n      - do: Fit the <part:part-0>.\n        fit: [part-0, screw]\n      - do: Tighten the <joint:cover>.\n        lubricate: { with: oil, where: thread and under the head }\n        tighten: cover\n      - do: Measure the gap.\n        measure: { what: Gap, at: [12, 3, 6, 9], limit: 0.05 to 0.${30 + random.whole(20)} mm, with: gauge, if out: Repeat this stage., record: as left }\n  - use: close\n`,
  );
  return out.join('');
}
