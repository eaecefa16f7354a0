/** Freezes a resolved procedure with all that its cards take from the registers, and brings it back. */

import { jsonWithoutPlaces } from '../resolve/fingerprint.ts';
import { type FromFile, READ_FROM } from '../resolve/read-from.ts';
import type { Document, ResolvedShop } from '../resolve/types.ts';
import { canonical } from './canonical.ts';
import type { IssueEntry, Snapshot } from './types.ts';

/** Raised when a reader of the old format can no longer make sense of a new one. */
export const SNAPSHOT_FORMAT = 1;

/**
 * engine: version of the program. The working of a torque and the elastic model stand on the joint's page, which follows the
 * registers; a card needs neither.
 */
export function freeze(shop: ResolvedShop, document: Document, engine: string): string {
  const machine = shop.machines.find((m) => m.id === document.machine);
  if (machine === undefined) throw new RangeError(`machine \`${document.machine}\` is not in the shop`);
  const named = new Set([document.owner, ...document.revisions.flatMap((r) => [r.author, r.approver])]);
  const used = new Set(document.variants.flatMap((v) => v.tools.map((t) => t.id)));
  const { parts: _parts, joints: _joints, ...about } = machine;
  const { standing: _standing, changes: _changes, incomplete: _incomplete, ...frozen } = document;
  const snapshot = {
    format: SNAPSHOT_FORMAT,
    engine,
    // Where the shop's folder lies is no part of the procedure.
    info: { ...shop.info, file: '' },
    people: shop.people
      .filter((p) => named.has(p.id))
      .map(({ id, name, role, approves }) => ({ id, name, role, approves })),
    tools: shop.tools.filter((t) => used.has(t.id)).map(({ id, name }) => ({ id, name })),
    machine: about,
    document: {
      ...frozen,
      variants: frozen.variants.map((v) => ({
        ...v,
        joints: v.joints.map(({ interaction: _interaction, ...plan }) => ({
          ...plan,
          result: { ...plan.result, working: [] },
        })),
      })),
    },
  };
  // What JSON does not hold, such as absent values, is gone before the canonical form is made.
  const plain: unknown = JSON.parse(jsonWithoutPlaces(snapshot));
  return `${canonical(withoutKeyRanges(plain))}\n`;
}

/** Register entries carry the place of their key as well. */
function withoutKeyRanges(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  const { machine } = value as { machine?: Record<string, unknown> };
  if (machine === undefined) return value;
  const { keyRange: _keyRange, ...rest } = machine;
  return { ...value, machine: rest };
}

/**
 * The snapshot as the rest of the program takes it. file: as diagnostics call it; everything in it is said to stand at its
 * beginning. Undefined for a format that this version does not know.
 */
export function thaw(text: string, file: string): Snapshot | undefined {
  const read = parsed(text);
  if (read?.format !== SNAPSHOT_FORMAT) return undefined;
  const range = { file, start: 0, end: 0 };
  const node: FromFile[typeof READ_FROM] = { kind: 'scalar', value: null, range };
  const snapshot = read as unknown as Snapshot;
  return { ...snapshot, document: placed(snapshot.document, range, node) };
}

function parsed(text: string): { readonly format?: unknown } | undefined {
  try {
    const read: unknown = JSON.parse(text);
    return typeof read === 'object' && read !== null ? read : undefined;
  } catch {
    return undefined;
  }
}

/**
 * In what the snapshot is not the one of this issue; undefined when it is. A snapshot of another revision, sealed anew under this
 * one's name, has its own number, revision and digests in it.
 */
export function strangerIn({ document }: Snapshot, issue: IssueEntry): string | undefined {
  const rev = document.revision.rev;
  if (document.doc !== issue.doc || rev !== issue.rev) return `it is of ${document.doc} Rev ${rev}`;
  const cards = document.variants.map((v) => `${v.key} ${v.digest}`);
  return cards.join() === issue.cards.map((c) => `${c.variant} ${c.digest}`).join()
    ? undefined
    : 'its cards are others';
}

/** The places that the layout of cards and the checks ask for. */
function placed(document: Document, range: Document['range'], node: FromFile[typeof READ_FROM]): Document {
  const at = { range, [READ_FROM]: node };
  return {
    ...document,
    ...at,
    revisions: document.revisions.map((r) => ({ ...r, range })),
    revision: { ...document.revision, range },
    variants: document.variants.map((v) => ({
      ...v,
      joints: v.joints.map((j) => ({ ...j, ...at, ranges: {} })),
      stages: v.stages.map((stage) => ({
        ...stage,
        range,
        steps: stage.steps.map((step) => ({
          ...step,
          ...at,
          warnings: step.warnings.map((w) => ({ ...w, [READ_FROM]: node })),
        })),
      })),
    })),
  };
}

/** A shop of which the cards of one snapshot are laid out: registers as they were when it was frozen. */
export function shopOf(snapshot: Snapshot, now: ResolvedShop): ResolvedShop {
  const at = { keyRange: snapshot.document.range, [READ_FROM]: snapshot.document[READ_FROM] };
  return {
    ...now,
    info: snapshot.info,
    people: snapshot.people.map((p) => ({ ...p, ...at })),
    tools: snapshot.tools.map((t) => ({ ...t, ...at, kind: '', alsoCalled: [] })),
    machines: [{ ...snapshot.machine, ...at, parts: [], joints: [] }],
    documents: [snapshot.document],
  };
}
