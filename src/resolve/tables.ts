/** The torque tables that the shop asks for, computed for every size that the grade covers. */

import { parseGrade, strengthOf, threadsOf } from '../fasteners/index.ts';
import { field, items, optional } from '../model/index.ts';
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
    const threads = threadsOf(at.value.series).filter((t) => strengthOf(grade.value, t).ok);
    if (threads.length === 0) {
      report('FLD010', at.node.range, `${grade.value.id} covers no size of the series ${at.value.series}`, {
        hint: 'choose a series of the same system',
      });
      return [];
    }
    return [torqueTable(threads, grade.value, condition, share.si)];
  });
}
