/** Entries copied and not changed enough, and shapes that do not hold. */

import type { YAMLMap } from 'yaml';
import { entryLines, lineOf, over, type Slip, slip, textOf } from './edit.ts';
import type { Kind, Site } from './kind.ts';
import { inEntries, inSteps, retype, scalars, typedOver } from './make.ts';
import { type Entry, measuresOf, type Scene } from './scene.ts';
import { keyOf, mapAt, type Sheet, scalarAt, stretchOf, wordsAt } from './sheet.ts';
import { mistyped } from './typing.ts';

/** A copy of the entry below itself; change: what the author did change of it. */
function copied(entry: Entry, register: YAMLMap, change: (text: string) => string): Slip | undefined {
  const lines = entryLines(entry.sheet, register, entry.id);
  if (lines === undefined) return undefined;
  return slip(entry.sheet, [{ start: lines.end, end: lines.end, put: change(textOf(entry.sheet, lines)) }], [entry.id]);
}

const newId = (text: string): string => text.replace(/^( *)([a-z0-9-]+):/, '$1$2-b:');

/** A value of an entry typed over with that of another entry of the register. */
function takenFrom(entries: readonly Entry[], key: string, differs: (a: Entry, b: Entry) => boolean): Site[] {
  return entries
    .filter((e) => e.map.has(key))
    .map((e) => (random) => {
      const others = entries.filter((o) => wordsAt(o.map, key) !== '' && differs(e, o));
      const scalar = scalarAt(e.map, key);
      if (others.length === 0 || scalar === undefined) return undefined;
      return slip(e.sheet, [over(e.sheet, scalar, wordsAt(random.pick(others).map, key))]);
    });
}

/** Key of a step, measure, warning, joint or part with a slip in it. */
function keys(scene: Scene): Site[] {
  const maps: (readonly [Sheet, YAMLMap])[] = [
    ...scene.steps.map((s) => [s.sheet, s.map] as const),
    ...scene.steps.flatMap((s) => measuresOf(s.map).map((m) => [s.sheet, m] as const)),
    ...[...scene.joints, ...scene.parts].map((e) => [e.sheet, e.map] as const),
  ];
  return maps.flatMap(([sheet, map]) =>
    map.items.map(
      (p): Site =>
        (random) =>
          typedOver(sheet, stretchOf(sheet, p.key), mistyped(random, keyOf(p))),
    ),
  );
}

/** Keys without which an entry is not one. */
const REQUIRED = {
  joint: ['name', 'fastener', 'thread', 'grade', 'head', 'condition', 'view', 'wrench'],
  measure: ['limit', 'with', 'if out'],
  warning: ['hazard', 'avoid'],
  procedure: ['owner', 'review', 'purpose'],
} as const;

function required(scene: Scene): Site[] {
  const lost = (sheet: Sheet, map: YAMLMap, wanted: readonly string[]): Site[] =>
    wanted.flatMap((key) => {
      const lines = entryLines(sheet, map, key);
      // The first key of a list item stands on the line of the dash, and goes only with the item.
      if (lines === undefined || map.items.findIndex((p) => keyOf(p) === key) === 0) return [];
      return [() => slip(sheet, [{ ...lines, put: '' }], [`has no \`${key}\``])];
    });
  return [
    ...lost(scene.procedure, scene.procedure.root, REQUIRED.procedure),
    ...scene.joints.flatMap((j) => lost(j.sheet, j.map, REQUIRED.joint)),
    ...scene.steps.flatMap((s) => measuresOf(s.map).flatMap((m) => lost(s.sheet, m, REQUIRED.measure))),
    ...scene.steps.flatMap((s) => {
      const warn = mapAt(s.map, 'warn');
      return warn === undefined ? [] : lost(s.sheet, warn, REQUIRED.warning);
    }),
  ];
}

export const REGISTERS: readonly Kind[] = [
  {
    name: 'tool copied, serial number left as it was',
    checks: ['REF023'],
    sites: ({ toolsUsed, tools }) =>
      toolsUsed
        .filter((e) => e.map.has('serial'))
        .map((e) => () => copied(e, tools.root, (text) => newId(text).replace(/^( +name: )(.*)$/m, '$1second $2'))),
  },
  {
    name: 'entry copied, name left as it was',
    checks: ['REF024'],
    sites: ({ toolsUsed, consumablesUsed, tools, consumables }) => [
      ...toolsUsed.map((e) => () => copied(e, tools.root, (text) => newId(text).replace(/^ +serial:.*\n/m, ''))),
      ...consumablesUsed.map((e) => () => copied(e, consumables.root, newId)),
    ],
  },
  {
    name: 'entry copied, id left as it was',
    checks: ['SRC009'],
    sites: ({ parts, joints, machine }) => {
      const [p, j] = [mapAt(machine.root, 'parts'), mapAt(machine.root, 'joints')];
      return [
        ...(p === undefined ? [] : parts.map((e) => () => copied(e, p, (text) => text))),
        ...(j === undefined ? [] : joints.map((e) => () => copied(e, j, (text) => text))),
      ];
    },
  },
  {
    name: 'file of a stage copied, id left as it was',
    checks: ['REF011'],
    sites: ({ stages }) =>
      stages.map((s) => () => {
        const file = s.file.replace('.yaml', '-b.yaml');
        return { file, text: s.text, lines: [[1, lineOf(s.text, s.text.length)]], names: [wordsAt(s.root, 'id')] };
      }),
  },
  {
    name: 'two steps given one id',
    checks: ['REF011'],
    // Two ids of one procedure or of one stage; a stage has a space of ids of its own.
    sites: ({ steps }) =>
      steps
        .filter((s) => s.map.has('id'))
        .flatMap((s) =>
          steps
            .filter((o) => o.sheet === s.sheet && o.map !== s.map && !o.map.has('id') && o.map.items.length > 1)
            .map((o) => () => {
              const second = o.map.items[1];
              if (second === undefined) return undefined;
              const { start } = stretchOf(o.sheet, second.key);
              const indent = ' '.repeat(start - o.sheet.text.lastIndexOf('\n', start) - 1);
              return slip(o.sheet, [{ start, end: start, put: `id: ${wordsAt(s.map, 'id')}\n${indent}` }]);
            }),
        ),
  },
  {
    name: "part number copied from another part's line",
    checks: ['REF025'],
    // Two parts of the same kind, thread and grade may share a number: only a part of another kind makes it a mistake, and
    // `other` is no kind.
    sites: ({ parts }) =>
      takenFrom(
        parts.filter((p) => wordsAt(p.map, 'kind') !== 'other'),
        'number',
        (a, b) => wordsAt(a.map, 'kind') !== wordsAt(b.map, 'kind'),
      ),
  },
  { name: 'key mistyped', checks: ['FLD001'], sites: keys },
  { name: 'line with a required key lost', checks: ['FLD002'], sites: required },
  {
    name: 'fate, kind or level mistyped',
    checks: ['FLD004'],
    sites: (scene) => [
      ...retype(
        () =>
          scene.steps.flatMap((s) => {
            const remove = mapAt(s.map, 'remove');
            return (remove?.items ?? []).flatMap((p) =>
              remove === undefined ? [] : scalars(s.sheet, remove, keyOf(p)),
            );
          }),
        (v, random) => mistyped(random, v),
      )(scene),
      ...retype(
        () => inEntries([...scene.parts, ...scene.toolsUsed, ...scene.consumablesUsed], 'kind'),
        (v, random) => mistyped(random, v),
      )(scene),
      ...retype(
        () => inEntries(scene.joints, 'head', 'condition'),
        (v, random) => mistyped(random, v),
      )(scene),
    ],
  },
  {
    name: 'id written with a capital or a blank',
    checks: ['FLD007', 'FLD001'],
    sites: ({ parts, joints, toolsUsed }) =>
      [...parts, ...joints, ...toolsUsed].map((e) => (random) => {
        const at = e.sheet.text.search(new RegExp(`^ *${e.id}:`, 'm'));
        if (at < 0) return undefined;
        const start = e.sheet.text.indexOf(e.id, at);
        const made =
          e.id.includes('-') && random.whole(2) === 0
            ? e.id.replace('-', ' ')
            : e.id.replace(/[a-z]/, (c) => c.toUpperCase());
        return typedOver(e.sheet, { start, end: start + e.id.length }, made);
      }),
  },
  {
    name: 'list written where one value belongs',
    checks: ['FLD003'],
    sites: ({ steps }) =>
      inSteps(steps, 'hold', 'tighten', 'loosen').map(({ sheet, scalar }) => () => {
        const stretch = stretchOf(sheet, scalar);
        return typedOver(sheet, stretch, `[${JSON.stringify(String(scalar.value))}]`);
      }),
  },
];
