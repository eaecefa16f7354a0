/** Stages of one variant: new, removed, moved as a whole, with another title, introduction or time. */

import type { Stage, Step } from '../../resolve/types.ts';
import type { StepMatch } from './match-steps.ts';
import { exchanged, paired, risingRows } from './pairing.ts';
import { cut, evenBlanks, proseChange, textChange, valueChange } from './phrases.ts';
import { compareTime } from './step-points.ts';
import type { Finding, Scene, Told } from './types.ts';

interface StagePair {
  readonly older: Stage;
  readonly newer: Stage;
  readonly moved: boolean;
}

export interface StageResult {
  readonly findings: readonly Finding[];
  /** Whether a step moved only because its whole stage did. */
  readonly movedWithStage: (older: Step, newer: Step) => boolean;
}

export function compareStages(scene: Scene, match: StepMatch): StageResult {
  const stageOf = (stages: readonly Stage[]): ReadonlyMap<Step, Stage> =>
    new Map(stages.flatMap((stage) => stage.steps.map((step) => [step, stage] as const)));
  const olderStage = stageOf(scene.older.stages);
  const newerStage = stageOf(scene.newer.stages);
  /** Steps that both stages share. */
  const shared = (a: Stage, b: Stage): number =>
    match.pairs.filter((p) => olderStage.get(p.older) === a && newerStage.get(p.newer) === b).length;
  const titled = paired(scene.older.stages, scene.newer.stages, (s) => evenBlanks(s.title));
  const alike = exchanged(titled, (a, b) => 2 * shared(a, b) > Math.min(a.steps.length, b.steps.length));
  const pairs = withMoves([...titled.both, ...alike.both], shared);
  const partner = new Map(pairs.map((p) => [p.older, p]));
  return {
    findings: [
      ...alike.added.map((s) =>
        whole({ kind: 'added', of: 'step', say: `new stage ${s.number}: ${s.title}`, after: s.title }),
      ),
      ...alike.removed.map((s) =>
        whole({ kind: 'removed', of: 'step', say: `stage removed: ${s.title}`, before: s.title }),
      ),
      ...pairs.flatMap((p) => compareStage(scene, p)),
      ...crossings(match, olderStage, newerStage, partner, new Set(alike.added)),
    ],
    movedWithStage: (older, newer) => {
      const from = olderStage.get(older);
      const pair = from === undefined ? undefined : partner.get(from);
      return pair?.moved === true && pair.newer === newerStage.get(newer);
    },
  };
}

function withMoves(
  both: readonly (readonly [Stage, Stage])[],
  shared: (a: Stage, b: Stage) => number,
): readonly StagePair[] {
  const rows = [...both].sort(([, a], [, b]) => a.number - b.number);
  const stays = risingRows(
    rows.map(([a]) => a.number),
    (row) => rows[row]?.[0].number === rows[row]?.[1].number,
    (row) => 1 + (rows[row] === undefined ? 0 : shared(...rows[row])),
  );
  return rows.map(([older, newer], row) => ({ older, newer, moved: stays[row] === false }));
}

function compareStage(scene: Scene, { older, newer, moved }: StagePair): readonly Finding[] {
  const name = `stage ${newer.number} (${cut(newer.title)})`;
  const intro = scene.likeness(older.intro ?? [], newer.intro ?? [], []) === 'different';
  const told: readonly Told[] = [
    ...textChange('step', `title of stage ${newer.number}`, older.title, newer.title),
    ...(intro ? proseChange('step', `introduction to ${name}`, older.intro, newer.intro) : []),
    ...compareTime(`working time of ${name}`, older.time, newer.time),
    ...(moved ? [stageMoved(older, newer)] : []),
  ];
  return told.map(whole);
}

function stageMoved(older: Stage, newer: Stage): Told {
  const say =
    older.number === newer.number
      ? `stage ${newer.number} (${cut(newer.title)}) stands in another order among the stages`
      : `stage ${older.number} is now stage ${newer.number}: ${cut(newer.title)}`;
  return { kind: 'moved', of: 'step', say, before: older.title, after: newer.title };
}

/** Steps that kept their place and belong to another stage now. */
function crossings(
  match: StepMatch,
  olderStage: ReadonlyMap<Step, Stage>,
  newerStage: ReadonlyMap<Step, Stage>,
  partner: ReadonlyMap<Stage, StagePair>,
  fresh: ReadonlySet<Stage>,
): readonly Finding[] {
  return match.pairs.flatMap(({ older, newer, moved }): readonly Finding[] => {
    const from = olderStage.get(older);
    const to = newerStage.get(newer);
    if (moved || from === undefined || to === undefined || fresh.has(to)) return [];
    const kept = partner.get(from);
    // Steps of a stage that was taken out stand where they stood; the stage is told.
    if (kept === undefined || kept.newer === to) return [];
    const say = `now belongs to stage ${to.number}: ${cut(to.title)}`;
    return [
      {
        ...{ kind: 'moved', of: 'step', form: 'at', say, before: from.title, after: to.title },
        stepsBefore: [older.number],
        stepsAfter: [newer.number],
      },
    ];
  });
}

function whole(told: Told): Finding {
  return { ...told, form: 'whole', stepsBefore: [], stepsAfter: [] };
}

/** Protective equipment of the card, serial numbers, and what its lists say of a thing. */
export function compareHead({ older, newer }: Pick<Scene, 'older' | 'newer'>): readonly Finding[] {
  const ppe = paired(older.ppe, newer.ppe, evenBlanks);
  const tools = paired(older.tools, newer.tools, (t) => t.id);
  const consumables = paired(older.consumables, newer.consumables, (c) => c.id);
  const parts = paired(older.parts, newer.parts, (p) => p.id);
  const list = (words: readonly string[]): string => words.join(', ');
  const told: readonly Told[] = [
    ...ppe.added.flatMap((p) => valueChange('warning', 'protective equipment', '', p)),
    ...ppe.removed.flatMap((p) => valueChange('warning', 'protective equipment', p, '')),
    ...tools.both.flatMap(([a, b]) => valueChange('tool', `size or range of ${b.name}`, a.detail, b.detail)),
    ...consumables.both.flatMap(([a, b]) =>
      valueChange('consumable', `hazards of ${b.name}`, list(a.hazards), list(b.hazards)),
    ),
    ...parts.both.flatMap(([a, b]) => [
      ...valueChange('part', `number of ${b.name}`, a.number ?? '', b.number ?? ''),
      ...valueChange('part', `kit of ${b.name}`, a.kit ?? '', b.kit ?? ''),
    ]),
    ...valueChange('variant', 'serial numbers', list(older.serials), list(newer.serials)),
  ];
  return told.map(whole);
}
