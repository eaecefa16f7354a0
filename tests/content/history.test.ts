/** The demo's history: what the ledger in `content/issued` holds, and what follows from it on the day of its last line. */

import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { beforeAll, expect, onTestFinished, test } from 'vitest';
import packageJson from '../../package.json' with { type: 'json' };
import { type ControlView, compareIssues, ENGINE, thaw } from '../../src/control/index.ts';
import { type Compiled, compileShop, publishCompiled } from '../../src/pipeline/index.ts';

const DAY = '2026-11-25';
const CONTENT = path.resolve(import.meta.dirname, '..', '..', 'content');
let compiled: Compiled;
let view: ControlView;

beforeAll(() => {
  compiled = compileShop({ folder: CONTENT, shown: 'content', cards: 'suspect' });
  const { published } = publishCompiled(compiled, { asOf: DAY, drafts: false, shown: 'content' });
  if (published === undefined) throw new Error('the demo cannot be published');
  view = published.view;
});

test('at least twenty issues over twelve documents, all approvals signed', () => {
  const issues = compiled.control.ledger.entries.filter((e) => e.kind === 'issue');
  expect(issues.length).toBeGreaterThanOrEqual(20);
  expect(new Set(issues.map((e) => e.doc)).size).toBeGreaterThanOrEqual(12);
  for (const e of compiled.control.ledger.entries) {
    if ('approver' in e) expect(e.signature?.by, `line ${e.seq}`).toBe(e.approver);
  }
  expect(new Set(issues.map((e) => e.change.class))).toEqual(new Set(['major', 'minor']));
});

test('one suspended, one withdrawn with its replacement, one not yet effective, one temporary change', () => {
  const standing = (s: string) => view.documents.filter((d) => d.standing === s).map((d) => d.doc);
  expect(standing('suspended')).toEqual(['OF-155']);
  expect(standing('withdrawn')).toEqual(['OF-109']);
  expect(view.documents.find((d) => d.doc === 'OF-109')?.withdrawn?.replacement).toBe('OF-131');
  expect(view.documents.flatMap((d) => d.coming.map((i) => `${i.doc} ${i.rev}`))).toEqual(['OF-131 C']);
  expect(view.documents.flatMap((d) => d.temporaries.map((t) => t.number))).toEqual(['TC-02']);
});

test('one receipt is overdue; the others that are open are not due yet', () => {
  expect(view.open.filter((n) => n.overdue).map((n) => `${n.doc} ${n.bench}`)).toEqual(['OF-184 heat-exchange']);
  expect(view.open.filter((n) => n.age === undefined).map((n) => `${n.doc} ${n.bench}`)).toEqual([
    'OF-131 heat-exchange',
    'OF-131 pumps-valves',
  ]);
  expect(view.open).toHaveLength(3);
});

test('no draft says something else than its latest issue', () => {
  expect(view.drafts).toEqual([]);
});

test('every card that was ever issued is current or has an answer, and no address answers twice', () => {
  const current = view.fingerprints.filter((f) => f.standing === 'current').map((f) => f.path);
  const answered = view.answers.filter((a) => a.standing !== 'draft').map((a) => a.path);
  const issued = view.documents.flatMap((d) => d.issues.flatMap((i) => i.cards.map((c) => c.path)));
  expect([...current, ...answered].sort()).toEqual([...issued].sort());
  expect(new Set(issued).size).toBe(issued.length);
});

/** The demo in a folder of its own, with one file changed, as it would be published. */
function publishedWith(file: string, change: (text: string) => string) {
  const folder = mkdtempSync(path.join(tmpdir(), 'history-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  cpSync(CONTENT, folder, { recursive: true });
  const name = path.join(folder, file);
  const before = readFileSync(name, 'utf8');
  writeFileSync(name, change(before));
  expect(readFileSync(name, 'utf8')).not.toBe(before);
  const { published } = publishCompiled(compileShop({ folder, shown: 'content', cards: 'suspect' }), {
    asOf: DAY,
    drafts: false,
    shown: 'content',
  });
  return published;
}

test('a register change alters no issued card, and names every document that it touches with what changes in it', () => {
  const published = publishedWith('tools.yaml', (t) => t.replace('name: vernier caliper', 'name: sliding caliper'));
  const using = compiled.resolved.documents
    .filter((d) => d.variants.some((v) => v.tools.some((u) => u.id === 'vernier')))
    .map((d) => d.doc);
  expect(using.length).toBeGreaterThan(3);
  expect(published?.view.drafts.map((d) => d.doc)).toEqual(using);
  for (const { changes } of published?.view.drafts ?? []) {
    expect(changes.map((c) => c.words).join(' ')).toMatch(/vernier caliper.*sliding caliper/);
  }
  const document = published?.shop.documents.find((d) => d.doc === 'OF-212');
  expect(JSON.stringify(document?.variants)).toContain('vernier caliper');
  expect(JSON.stringify(document?.variants)).not.toContain('sliding caliper');
});

test('a joint change names its document and the torque, and the issued card keeps the old one', () => {
  const published = publishedWith('machines/sea-water-pump.yaml', (t) => t.replace('torque: 66 N·m', 'torque: 67 N·m'));
  const [draft] = published?.view.drafts ?? [];
  expect(published?.view.drafts.map((d) => d.doc)).toEqual(['OF-170']);
  expect(draft?.changes.map((c) => c.words.replaceAll('\u00a0', ' '))).toContain(
    'Step 32: torque of the casing joint 66 → 67 N·m',
  );
  const joints = published?.shop.documents.find((d) => d.doc === 'OF-170')?.variants[0]?.joints;
  expect(joints?.find((j) => j.id === 'casing')?.target.value).toBe(66);
});

test('comments, spacing and the order of keys are no change', () => {
  const published = publishedWith('machines/sea-water-pump.yaml', (t) =>
    t.replace(/^id: (.*)$/m, '# The bronze pump.\n\nid:    $1   # as cast on the casing'),
  );
  expect(published?.view.drafts).toEqual([]);
});

test('a new edition of a manual is one change, told after what it brought', () => {
  const read = (rev: string) => {
    const snapshot = thaw(readFileSync(path.join(CONTENT, 'issued', 'OF-204', `${rev}.json`), 'utf8'), rev);
    if (snapshot === undefined) throw new Error('the snapshot cannot be read');
    return snapshot;
  };
  const { changes } = compareIssues(read('C'), read('D'));
  expect(changes.map((c) => `${c.of}: ${c.words.replaceAll('\u00a0', ' ')}`)).toEqual([
    'torque: Step 26: torque of the front-cover joint 140 → 135 N·m',
    'consumable: Steps 25, 26, 30 and 31: consumable exchanged, copper anti-seize → nickel anti-seize',
    'document: Edition of Brackwater Thermal, cooler handbook 3rd edition → 4th edition',
    'document: Steps 8, 13, 16, 17, 22, 26, 27 and 32: edition of Brackwater Thermal, cooler handbook 3rd edition → 4th edition',
  ]);
});

test('on later days the coming revision is in force, and the temporary change is gone with a notice', () => {
  const on = (asOf: string) => publishCompiled(compiled, { asOf, drafts: false, shown: 'content' }).published;
  const coming = on('2026-12-07');
  expect(coming?.view.documents.find((d) => d.doc === 'OF-131')?.current?.rev).toBe('C');
  expect(coming?.view.answers.find((a) => a.path === 'C/OF-131/B')?.standing).toBe('superseded');
  expect(JSON.stringify(coming?.shop.documents.find((d) => d.doc === 'OF-170'))).toContain('TC-02');
  const gone = on('2027-01-16');
  expect(gone?.view.documents.flatMap((d) => d.temporaries)).toEqual([]);
  expect(JSON.stringify(gone?.shop.documents.find((d) => d.doc === 'OF-170'))).not.toContain('TC-02');
  expect(gone?.view.open.filter((n) => n.cause === 'temporary-expiry').map((n) => n.bench)).toEqual(['pumps-valves']);
  const before = on('2026-03-01');
  expect(before?.view.documents.find((d) => d.doc === 'OF-204')?.current?.rev).toBe('C');
  expect(before?.view.documents.find((d) => d.doc === 'OF-109')?.standing).toBe('in force');
});

test('snapshots name the version of package.json', () => {
  expect(ENGINE).toBe(packageJson.version);
});
