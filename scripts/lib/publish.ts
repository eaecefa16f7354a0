/** Writes a checked shop into a folder: site, cards, binders, worksheets, posters, schemas, manifest. */

import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { DocumentState } from '../../src/control/index.ts';
import type { BinderState } from '../../src/layout/binder/index.ts';
import { jsonSchemas } from '../../src/model/index.ts';
import type { BuildReport, Published } from '../../src/pipeline/index.ts';
import {
  answerPage,
  comparisonFacts,
  comparisonPage,
  documentAnswerPage,
  type SiteFacts,
} from '../../src/render/html/control/index.ts';
import { paths } from '../../src/render/html/index.ts';
import {
  paintBinder,
  paintCard,
  paintMasterList,
  paintNotice,
  paintTables,
  paintWorksheets,
} from '../../src/render/pdf/index.ts';
import { buildSite } from '../../src/site/build-site.ts';
import { writeManifest } from './manifest.ts';
import type { Progress } from './progress.ts';

/** Returns the number of files written. The site is rendered in a process of its own while the PDFs are drawn here. */
export async function publish(
  published: Published,
  report: BuildReport,
  folder: string,
  progress: Progress,
): Promise<number> {
  const stop = new AbortController();
  // Its failure must not go unhandled while the PDFs are drawn; it is thrown again where it is awaited.
  const site = buildSite(published.shop, { report, control: published.view, outDir: folder, signal: stop.signal }).then(
    () => undefined,
    (cause: unknown) => ({ cause }),
  );
  try {
    await writePdfs(published, folder, progress);
    writeAnswers(published, folder, progress);
    for (const [name, text] of jsonSchemas()) write(folder, `schema/${name}`, text);
    progress.stage('site', 0);
    const failed = await site;
    if (failed !== undefined) throw failed.cause;
  } catch (cause) {
    // The site must have stopped writing before the caller clears the folder away.
    stop.abort();
    await site;
    throw cause;
  }
  progress.stage('manifest', 0);
  const files = writeManifest(folder, published);
  progress.end();
  return files;
}

async function writePdfs(published: Published, folder: string, progress: Progress): Promise<void> {
  const { shop, cards, coming, atBench, view } = published;
  progress.stage('cards', cards.length + coming.length);
  let done = 0;
  for (const { layout, shop: own } of cards) {
    write(folder, paths.card(layout.name), await paintCard(layout, own));
    progress.done(++done);
  }
  for (const { layout, shop: own } of coming) {
    write(folder, paths.comingCard(layout.name, layout.rev), await paintCard(layout, own));
    progress.done(++done);
  }
  progress.stage('binders', shop.benches.length);
  const states = view.documents.filter((d) => d.standing !== 'in force').map(binderState);
  for (const [i, bench] of shop.benches.entries()) {
    const own = new Map((atBench.get(bench.id) ?? []).map((c) => [c.layout.name, c.layout]));
    const bound = cards.filter((c) => c.layout.standing !== 'draft').map((c) => own.get(c.layout.name) ?? c.layout);
    const control = { asOf: view.asOf, copies: shop.benches.length, states };
    write(folder, `binders/${bench.id}.pdf`, await paintBinder(shop, bench, bound, control));
    progress.done(i + 1);
  }
  if (view.open.length > 0) {
    progress.stage('change notices', view.open.length);
    for (const [i, notice] of view.open.entries()) {
      write(folder, paths.notice(notice.number, notice.bench), await paintNotice(notice, shop, view.asOf));
      progress.done(i + 1);
    }
  }
  progress.stage('master list', 1);
  write(folder, paths.masterList, await paintMasterList(view, shop));
  const withJoints = shop.machines.filter((m) => m.joints.length > 0);
  progress.stage('worksheets', withJoints.length);
  for (const [i, machine] of withJoints.entries()) {
    write(folder, `worksheets/${machine.id}.pdf`, await paintWorksheets(shop, machine));
    progress.done(i + 1);
  }
  if (shop.tables.length + shop.statedTables.length > 0) {
    progress.stage('torque table posters', 1);
    write(folder, 'posters/torque-tables.pdf', await paintTables(shop));
  }
}

/** What a binder says of a document whose cards are not bound. */
function binderState(d: DocumentState): BinderState {
  const issue = d.current ?? d.coming[0];
  const reason = d.withdrawn?.reason ?? d.suspended?.reason;
  return {
    doc: d.doc,
    title: d.title,
    standing: d.standing === 'in force' || d.standing === 'draft only' ? 'not issued' : d.standing,
    ...(issue === undefined ? {} : { rev: issue.rev, effective: issue.effective }),
    ...(reason === undefined ? {} : { reason }),
  };
}

/** Plain pages: what every address of a card that is not in force answers, and the comparisons of all issues. */
function writeAnswers({ shop, view, comparisons }: Published, folder: string, progress: Progress): void {
  progress.stage('answers', view.answers.length);
  const { info } = shop;
  const site: SiteFacts = {
    name: info.name,
    language: info.language,
    safety: info.safety,
    asOf: view.asOf,
    freshDays: info.control.freshDays,
    ...(info.report === undefined ? {} : { report: info.report }),
  };
  for (const answer of view.answers) write(folder, `${answer.path}/index.html`, answerPage(answer, site));
  const own = new Set(shop.documents.map((d) => d.doc));
  for (const state of view.documents) {
    if (own.has(state.doc) && state.standing === 'in force') continue;
    write(
      folder,
      `${paths.procedure(state.doc.toLowerCase())}index.html`,
      documentAnswerPage(state, view.answers, site),
    );
  }
  const people = new Map(shop.people.map((p) => [p.id, `${p.name}, ${p.role}`]));
  for (const { path: page, comparison } of comparisons()) {
    const facts = comparisonFacts(comparison, view, (id) => people.get(id) ?? id);
    write(folder, `${page}index.html`, comparisonPage(comparison, facts, site));
  }
}

function write(folder: string, name: string, bytes: Uint8Array | string): void {
  const full = path.join(folder, name);
  mkdirSync(path.dirname(full), { recursive: true });
  writeFileSync(full, bytes);
}
