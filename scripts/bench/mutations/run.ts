/** Makes mistakes of a kind at places that the seed chooses, and looks who catches them. */

import { type Diagnostic, placer } from '../../../src/diagnostics/index.ts';
import type { Compiled } from '../../../src/pipeline/index.ts';
import { type Random, seeded } from '../random.ts';
import { compileMemory, demoIssued, procedureFiles, type ShopFiles, subShop } from '../sub-shop.ts';
import type { Slip } from './edit.ts';
import type { Kind, Site } from './kind.ts';
import { type Entry, type Scene, sceneOf } from './scene.ts';

export interface Mistake {
  readonly kind: Kind;
  readonly slip: Slip;
  readonly verdict: 'intended' | 'other' | 'missed';
  /** Caught by an intended check at the line that slipped, or by the name of what was lost. */
  readonly placed: boolean;
  /** What the sound shop does not report. */
  readonly reported: readonly Diagnostic[];
}

/** A kind with the mistakes that were made of it. */
export interface Tally {
  readonly kind: Kind;
  readonly mistakes: readonly Mistake[];
}

/**
 * The cut-out of one procedure leaves tools, consumables and stages of others unused, so reports of that sort count only
 * for kinds that are meant for them.
 */
const OF_THE_CUT = new Set(['REF017', 'REF018', 'REF021', 'REF022']);

/** Mistakes of each kind in the full table, where there are so many places. */
export const MISTAKES_A_KIND = 8;

const SEED = 20261125;

/** asked: FETTLEBOOK_SEED; nothing gives the fixed seed, `random` another one each time. */
export function seedOf(asked: string | undefined): number {
  if (asked === undefined) return SEED;
  return asked === 'random' ? Math.floor(Math.random() * 2 ** 32) : Number(asked);
}

interface Ground {
  readonly scene: Scene;
  readonly files: ShopFiles;
}

export interface Runner {
  /** Makes at most `count` mistakes of the kind, as many as there are places. */
  readonly run: (kind: Kind, count: number) => Tally;
}

/** files: the sound shop. seed: chooses places and slips; each kind draws from a source of its own. */
export function runnerOf(files: ShopFiles, seed: number): Runner {
  const cuts = procedureFiles(files).map((procedure): Ground => {
    const cut = cutOf(files, procedure);
    return { scene: sceneOf(cut, procedure), files: cut };
  });
  let whole: readonly Ground[] | undefined;
  let issued: readonly Ground[] | undefined;
  const sound = new Map<ShopFiles, ReadonlySet<string>>();
  const soundOf = (shop: ShopFiles): ReadonlySet<string> => {
    const known = sound.get(shop);
    if (known !== undefined) return known;
    const made = new Set(compileMemory(shop).diagnostics.map(keyOf));
    sound.set(shop, made);
    return made;
  };
  return {
    run: (kind, count) => {
      if (kind.whole) whole ??= procedureFiles(files).map((p) => ({ scene: sceneOf(files, p), files }));
      if (kind.ledger) {
        const all = demoIssued();
        issued ??= cuts.map(({ scene, files: cut }) => {
          const together = { ...cut, ...all };
          return { scene: { ...scene, files: together }, files: together };
        });
      }
      const grounds = kind.whole ? whole : kind.ledger ? issued : cuts;
      const random = seeded(seed ^ hash(kind.name));
      const mistakes: Mistake[] = [];
      for (const { ground, slip } of slipsOf(kind, grounds ?? [], random)) {
        mistakes.push(judge(kind, ground, slip, soundOf(ground.files)));
        if (mistakes.length >= count) break;
      }
      return { kind, mistakes };
    },
  };
}

/** The procedure with all it stands on, the procedures that its texts name included. */
function cutOf(files: ShopFiles, procedure: string): ShopFiles {
  const named = new Set([...(files[procedure] ?? '').matchAll(/<procedure:([A-Z0-9-]+)>/g)].map((m) => m[1]));
  const others = procedureFiles(files).filter((p) => named.has(/^doc: (\S+)/m.exec(files[p] ?? '')?.[1]));
  return Object.assign({}, ...others.map((p) => subShop(files, p)), subShop(files, procedure));
}

/** Places in an order that the seed chooses; a place in a shared file that several procedures reach is used once. */
function* slipsOf(kind: Kind, grounds: readonly Ground[], random: Random): Generator<{ ground: Ground; slip: Slip }> {
  const sites = grounds.flatMap((ground) => kind.sites(ground.scene).map((site): [Ground, Site] => [ground, site]));
  const seen = new Set<string>();
  for (let left = sites.length; left > 0; left -= 1) {
    const at = random.whole(left);
    const chosen = sites[at];
    const last = sites[left - 1];
    if (chosen === undefined || last === undefined) return;
    sites[at] = last;
    const slip = chosen[1](random);
    const place = slip === undefined ? '' : `${slip.file} ${slip.lines.join(' ')}`;
    if (slip === undefined || seen.has(place)) continue;
    seen.add(place);
    yield { ground: chosen[0], slip };
  }
}

function judge(kind: Kind, { scene, files }: Ground, slip: Slip, sound: ReadonlySet<string>): Mistake {
  const compiled = compileMemory({ ...files, [slip.file]: slip.text });
  const intended = new Set<string>(kind.checks);
  const reported = compiled.diagnostics.filter(
    (d) => !sound.has(keyOf(d)) && (intended.has(d.code) || !OF_THE_CUT.has(d.code)),
  );
  const meant = reported.filter((d) => intended.has(d.code));
  const placed = meant.some(nearTo(slip, scene, compiled));
  return {
    kind,
    slip,
    verdict: meant.length > 0 ? 'intended' : reported.length > 0 ? 'other' : 'missed',
    placed,
    reported,
  };
}

function nearTo(slip: Slip, scene: Scene, compiled: Compiled): (d: Diagnostic) => boolean {
  const place = placer(compiled.textOf);
  const words = slip.names.flatMap((n) => [n, ...namesOf(scene, n)]).filter((w) => w !== '');
  return (d) =>
    words.some((w) => d.message.includes(w)) ||
    [d.range, ...(d.related ?? []).map((r) => r.range)].some((range) => {
      const { line } = place(range);
      const written = (compiled.textOf(range.file) ?? '').split('\n')[line - 1] ?? '';
      if (words.some((w) => written.includes(w))) return true;
      return (
        range.file === `content/${slip.file}` && slip.lines.some(([from, to]) => line >= from - 1 && line <= to + 1)
      );
    });
}

/** The printed name of an id. */
function namesOf(scene: Scene, id: string): string[] {
  const entries: readonly Entry[] = [...scene.parts, ...scene.joints, ...scene.toolsUsed, ...scene.consumablesUsed];
  return entries.filter((e) => e.id === id).map((e) => String(e.map.get('name') ?? ''));
}

/** Lines move when something is lost, so a report is known again by its words. */
function keyOf(d: Diagnostic): string {
  return `${d.code} ${d.range.file} ${d.message}`;
}

function hash(word: string): number {
  let h = 2166136261;
  for (const letter of word) h = Math.imul(h ^ (letter.codePointAt(0) ?? 0), 16777619);
  return h >>> 0;
}
