/** A joint of the shop as an address of the worksheet. */

import { driveMm, driveOf, nutDriveOf, socketOutsideMm } from '../../../fasteners/index.ts';
import { defaultMethod, type Pattern } from '../../../geometry/index.ts';
import type { JointPlan, Tool } from '../../../resolve/index.ts';
import { findCondition } from '../../../torque/index.ts';
import { formatLimit, formatQuantity, NO_BREAK_SPACE, type Torque } from '../../../units/index.ts';
import { encodeInputs } from './address.ts';
import { type FieldKey, INITIAL, type Inputs, inputsFrom } from './fields.ts';

/** The query, without `?`, that opens the worksheet with this joint. tools: the register, for wrench and lever. */
export function worksheetQuery(plan: JointPlan, tools: readonly Tool[]): string {
  return encodeInputs(worksheetInputs(plan, tools));
}

/** The fields of the worksheet as this joint fills them; the worksheet then computes what the build computed. */
export function worksheetInputs(plan: JointPlan, tools: readonly Tool[]): Inputs {
  const filled: Partial<Record<FieldKey, string>> = {
    ...fastenerFields(plan),
    ...patternFields(plan.pattern),
    ...torqueFields(plan),
    ...wrenchFields(plan, tools),
  };
  return inputsFrom((key) => (filled[key] ?? INITIAL[key]).replaceAll(NO_BREAK_SPACE, ' '));
}

type Fields = Partial<Record<FieldKey, string>>;

function fastenerFields(plan: JointPlan): Fields {
  const { condition } = plan;
  const usual = findCondition(condition.id)?.nutFactor;
  const own = condition.nutFactor;
  const isOwn = usual?.low !== own.low || usual.nominal !== own.nominal || usual.high !== own.high;
  const estimated = socketOutsideMm(plan.drive);
  return {
    name: plan.name.slice(0, 80),
    thread: plan.thread.designation,
    grade: plan.grade.id,
    head: plan.head,
    turned: plan.turned,
    heavy: isHeavyNut(plan) ? 'yes' : 'no',
    condition: condition.id,
    ...(isOwn ? { k: `${own.low} ${own.nominal} ${own.high}` } : {}),
    ...(plan.nut === undefined ? {} : { nut: plan.nut.grade.id }),
    ...(plan.wallMm === undefined ? {} : { wall: mm(plan.wallMm) }),
    ...(plan.flange === undefined ? {} : { flange: plan.flange.designation }),
    ...(Math.abs(plan.socketOutsideMm - estimated) > 0.01 ? { socket: mm(plan.socketOutsideMm) } : {}),
  };
}

/** A plan keeps the wrench size of its nut and not its form: it is heavy when the size is not the usual one. */
function isHeavyNut(plan: JointPlan): boolean {
  if (plan.turned !== 'nut') return false;
  const usual =
    plan.head === 'stud'
      ? driveOf('stud', plan.thread, plan.grade)
      : nutDriveOf(plan.thread, { din: plan.head === 'hexagon DIN' });
  return !usual.ok || Math.abs(driveMm(usual.value) - driveMm(plan.drive)) > 0.01;
}

function patternFields(p: Pattern): Fields {
  const numbering = p.kind === 'points' ? undefined : p.numbering;
  const common: Fields = { pattern: p.kind, ...(numbering === undefined ? {} : { numbering }) };
  switch (p.kind) {
    case 'circle':
    case 'arc':
      return {
        ...common,
        n: String(p.count),
        circle: mm(p.diameterMm),
        first: plain(p.firstDeg),
        ...(p.kind === 'arc' ? { span: plain(p.spanDeg) } : {}),
      };
    case 'circles': {
      const [a, b, c] = p.circles;
      return {
        ...common,
        ...(a === undefined ? {} : { n: String(a.count), circle: mm(a.diameterMm), first: plain(a.firstDeg) }),
        ...(b === undefined ? {} : { n2: String(b.count), circle2: mm(b.diameterMm), first2: plain(b.firstDeg) }),
        ...(c === undefined ? {} : { n3: String(c.count), circle3: mm(c.diameterMm), first3: plain(c.firstDeg) }),
      };
    }
    case 'rectangle':
      return {
        ...common,
        length: mm(p.lengthMm),
        width: mm(p.widthMm),
        along: String(p.along),
        across: String(p.across),
      };
    case 'slot':
      return {
        ...common,
        length: mm(p.lengthMm),
        width: mm(p.widthMm),
        n: String(p.count),
        straddle: p.straddle ? 'yes' : 'no',
      };
    case 'points':
      return { ...common, points: p.points.map((q) => `${plain(q.xMm)} ${plain(q.yMm)}`).join('\n') };
  }
}

function torqueFields(plan: JointPlan): Fields {
  const { sequence } = plan;
  const inOrder = plan.rounds.filter((r) => r.pass === 'sequence');
  return {
    preload: plain(plan.preloadShare * 100),
    ...(plan.origin === 'stated' ? { torque: torque(plan.target) } : {}),
    ...(plan.runDown === undefined ? {} : { 'run-down': torque(plan.runDown) }),
    rounds: inOrder.map((r) => roundText(r.share, plan.target)).join(', '),
    passes: String(plan.rounds.length - inOrder.length),
    method: sequence.method === defaultMethod(plan.pattern) ? 'usual' : sequence.method,
    tools: String(sequence.tools),
  };
}

/** A share of up to two decimals was written as one; any other came from a torque and is written as that. */
function roundText(share: number, target: Torque): string {
  const percent = Number((share * 100).toPrecision(12));
  return Number.isInteger(Number((percent * 100).toPrecision(12)))
    ? plain(percent)
    : `${plain(share * target.value)} ${target.unit}`;
}

function wrenchFields(plan: JointPlan, tools: readonly Tool[]): Fields {
  const tool = tools.find((t) => t.id === plan.wrench);
  const { adapter } = plan;
  return {
    ...(tool?.range === undefined ? {} : { wrench: formatLimit(tool.range) }),
    ...(tool?.step === undefined ? {} : { step: tool.step.text }),
    ...(adapter === undefined
      ? {}
      : {
          lever: formatQuantity(adapter.lever),
          adapter: formatQuantity(adapter.length),
          angle: plain(adapter.angleDeg),
        }),
  };
}

function torque(t: Torque): string {
  return `${t.fraction ?? t.value} ${t.unit}`;
}

function mm(value: number): string {
  return `${plain(value)} mm`;
}

/** The number as short as it can be written without another value being read: twelve figures are finer than any drawing. */
function plain(value: number): string {
  return String(Number(value.toPrecision(12)));
}
