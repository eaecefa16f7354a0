/** Torque tables typed from manuals, each cell compared with what is computed for it. */

import type { Range } from '../diagnostics/index.ts';
import { parseGrade, parseThread, strengthOf } from '../fasteners/index.ts';
import { type At, type Entry, entries, field, type StatedTableContent } from '../model/index.ts';
import { compareStatedTable, findCondition, type StatedCell } from '../torque/index.ts';
import type { Torque } from '../units/index.ts';
import type { Context } from './context.ts';
import { defined, plainText, readQuantity, readSource } from './quantities.ts';
import { READ_FROM } from './read-from.ts';
import { conditionHint } from './registers.ts';
import type { StatedTable } from './types.ts';

export function resolveStatedTables(context: Context): readonly StatedTable[] {
  return [...context.content.tables.entries.values()].flatMap((at) => {
    const table = resolveTable(context, at);
    return table === undefined ? [] : [table];
  });
}

function resolveTable(context: Context, at: Entry<StatedTableContent>): StatedTable | undefined {
  const v = at.value;
  const condition = findCondition(v.condition);
  if (condition === undefined) {
    context.report('FLD004', field(at, 'condition').node.range, `\`${v.condition}\` is not a joint condition`, {
      hint: conditionHint(v.condition),
    });
  }
  const share = readQuantity(context.report, field(at, 'preload'), 'ratio');
  const cells: StatedCell[] = [];
  const ranges: Range[] = [];
  for (const row of entries(field(at, 'rows'))) {
    const thread = parseThread(row.key);
    if (!thread.ok) {
      context.report('FLD009', row.keyRange, thread.problem, { hint: thread.hint });
      continue;
    }
    for (const cell of entries(row)) {
      const grade = parseGrade(cell.key);
      if (!grade.ok) {
        context.report('FLD010', cell.keyRange, grade.problem, { hint: grade.hint });
        continue;
      }
      const strength = strengthOf(grade.value, thread.value);
      if (!strength.ok) {
        context.report('FLD010', cell.keyRange, strength.problem, { hint: strength.hint });
        continue;
      }
      const torque = readCell(context, cell);
      if (torque === undefined) continue;
      cells.push({ thread: thread.value, grade: grade.value, strength: strength.value, ...torque });
      ranges.push(cell.node.range);
    }
  }
  if (condition === undefined || share === undefined || cells.length === 0) return undefined;
  if (share.si > 1) {
    context.report(
      'FLD005',
      field(at, 'preload').node.range,
      `a preload of \`${v.preload}\` is more than the whole load`,
      {
        hint: 'manuals aim at 60 to 75 % as a rule',
      },
    );
    return undefined;
  }
  const source = readSource(v.source);
  if (source === undefined) return undefined;
  return {
    id: at.key,
    title: v.title,
    source,
    condition,
    preloadShare: share.si,
    comparison: compareStatedTable({ condition, preloadShare: share.si, cells }),
    ranges,
    range: at.keyRange,
    [READ_FROM]: at.node,
    ...defined({ reason: plainText(v.reason), note: plainText(v.note) }),
  };
}

type CellContent = StatedTableContent['rows'][string][string];

function readCell(context: Context, at: At<CellContent>): { stated: Torque; second?: Torque } | undefined {
  if (typeof at.value === 'string') {
    const stated = readQuantity(context.report, at as At<string>, 'torque');
    return stated === undefined ? undefined : { stated };
  }
  const both = at as At<Exclude<CellContent, string>>;
  const stated = readQuantity(context.report, field(both, 'torque'), 'torque');
  const second = readQuantity(context.report, field(both, 'second'), 'torque');
  return stated === undefined || second === undefined ? undefined : { stated, second };
}
