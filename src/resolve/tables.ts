/** The torque tables that the shop asks for, computed for every size that the grade covers. */

import { parseGrade, parseThread, strengthOf, threadsOf } from '../fasteners/index.ts';
import { type At, field, items, optional } from '../model/index.ts';
import { findCondition, type TorqueTable, torqueTable } from '../torque/index.ts';
import type { Context } from './context.ts';
import { readQuantity } from './quantities.ts';
import { conditionHint } from './registers.ts';

export function resolveTables(context: Context): readonly TorqueTable[] {
  const { content, report } = context;
  const asked = content.shop === undefined ? undefined : optional(content.shop, 'tables');
  if (asked === undefined) return [];
  return items(asked).flatMap((at): TorqueTable[] => {
    const grade = parseGrade(at.value.grade);
    if (!grade.ok) report('FLD010', field(at, 'grade').node.range, grade.problem, { hint: grade.hint });
    const condition = findCondition(at.value.condition);
    if (condition === undefined) {
      report('FLD004', field(at, 'condition').node.range, `\`${at.value.condition}\` is not a joint condition`, {
        hint: conditionHint(at.value.condition),
      });
    }
    const share = readQuantity(report, field(at, 'preload'), 'ratio');
    if (!grade.ok || condition === undefined || share === undefined) return [];
    if (share.si > 0.9) {
      report(
        'FLD005',
        field(at, 'preload').node.range,
        `\`${at.value.preload}\` is more than 90 %, the ceiling of VDI 2230`,
        { hint: 'joints that are taken apart again are usually set to 75 %' },
      );
      return [];
    }
    const ends = readEnds(context, at);
    if (ends === undefined) return [];
    const threads = threadsOf(at.value.series).filter(
      (t) => strengthOf(grade.value, t).ok && t.diameterMm >= ends.fromMm && t.diameterMm <= ends.toMm,
    );
    if (threads.length === 0) {
      report(
        'FLD010',
        at.node.range,
        `${grade.value.id} covers no size of the series ${at.value.series} that is wanted`,
        {
          hint: 'choose a series of the same system, or other ends',
        },
      );
      return [];
    }
    return [torqueTable(threads, grade.value, condition, share.si)];
  });
}

/** The smallest and largest diameter wanted; undefined when an end cannot be read. */
function readEnds(
  context: Context,
  at: At<{ readonly from?: string | undefined; readonly to?: string | undefined }>,
): { readonly fromMm: number; readonly toMm: number } | undefined {
  const end = (written: At<string> | undefined, none: number): number | undefined => {
    if (written === undefined) return none;
    const thread = parseThread(written.value);
    if (thread.ok) return thread.value.diameterMm;
    context.report('FLD009', written.node.range, thread.problem, { hint: thread.hint });
    return undefined;
  };
  const fromMm = end(optional(at, 'from'), 0);
  const toMm = end(optional(at, 'to'), Number.POSITIVE_INFINITY);
  return fromMm === undefined || toMm === undefined ? undefined : { fromMm, toMm };
}
