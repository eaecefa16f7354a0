/** All that may change in a joint, in the order in which it is told. */

import { isCorrected } from '../../resolve/joint-words.ts';
import type { JointPlan } from '../../resolve/types.ts';
import { formatDecimal, formatQuantity, type Quantity } from '../../units/index.ts';
import * as words from './joint-words.ts';
import { quantityArrow, sameWords, sourceChange, textChange, valueChange } from './phrases.ts';
import type { Subject, Told } from './types.ts';

export interface Aspect {
  /** Whether the step that loosens the joint shows it too. */
  readonly loosening: boolean;
  readonly compare: (before: JointPlan, after: JointPlan) => readonly Told[];
}

type Text = (joint: JointPlan) => string;

/** A short value: `grade of the cover joint 8.8 → 10.9`. */
function value(of: Subject, name: string, text: Text, loosening = false): Aspect {
  return {
    loosening,
    compare: (a, b) => valueChange(of, `${name} of the ${b.name}`, text(a), text(b)),
  };
}

/** A sentence of the author. */
function sentence(of: Subject, name: string, text: Text, loosening = false): Aspect {
  return {
    loosening,
    compare: (a, b) => textChange(of, `${name} of the ${b.name}`, text(a), text(b)),
  };
}

/** A quantity, both with their unit once. */
function amount(of: Subject, name: string, read: (joint: JointPlan) => Quantity | undefined): Aspect {
  const text = (q: Quantity | undefined): string => (q === undefined ? '' : formatQuantity(q));
  return {
    loosening: false,
    compare: (a, b) => {
      const before = read(a);
      const after = read(b);
      const arrow = before === undefined || after === undefined ? undefined : quantityArrow(before, after);
      return valueChange(of, `${name} of the ${b.name}`, text(before), text(after), arrow);
    },
  };
}

function tightness(compare: Aspect['compare']): Aspect {
  return { loosening: false, compare };
}

const differs = (text: Text, a: JointPlan, b: JointPlan): boolean => !sameWords(text(a), text(b));
const target: Text = (j) => formatQuantity(j.target);
const setting: Text = (j) => formatQuantity(j.setting);
const tightenedAlike = (a: JointPlan, b: JointPlan): boolean => !differs(target, a, b) && !differs(setting, a, b);

/** Of a plain joint the setting follows from the torque, and is told with it. */
function compareSetting(a: JointPlan, b: JointPlan): readonly Told[] {
  if (!isCorrected(a) && !isCorrected(b) && differs(target, a, b)) return [];
  const name = `wrench setting for the ${b.name}`;
  return valueChange('torque', name, setting(a), setting(b), quantityArrow(a.setting, b.setting));
}

/** Where the torque comes from. */
function compareOrigin(a: JointPlan, b: JointPlan): readonly Told[] {
  const name = `source of the torque of the ${b.name}`;
  return a.origin === 'stated' && b.origin === 'stated'
    ? sourceChange('joint', name, a.source, b.source)
    : valueChange('joint', name, words.originWords(a), words.originWords(b));
}

/** The torques of the rounds follow from the last one; what is told is another division. */
function compareRounds(a: JointPlan, b: JointPlan): readonly Told[] {
  const name = `rounds of the ${b.name}`;
  if (!words.sameRounds(a, b)) return valueChange('torque', name, words.roundsWords(a), words.roundsWords(b));
  return tightenedAlike(a, b) ? valueChange('torque', name, words.settingsWords(a), words.settingsWords(b)) : [];
}

function compareOrder(a: JointPlan, b: JointPlan): readonly Told[] {
  const name = `tightening order of the ${b.name}`;
  if (differs(words.methodWords, a, b)) return valueChange('pattern', name, words.methodWords(a), words.methodWords(b));
  // Other holes have another order; that goes without saying.
  const sameHoles = !differs((j) => words.patternWords(j.pattern), a, b);
  return sameHoles ? valueChange('pattern', name, words.orderWords(a), words.orderWords(b)) : [];
}

/** The second unit in brackets: only its own change, not that of the torque. */
function compareSecond(a: JointPlan, b: JointPlan): readonly Told[] {
  const before = formatQuantity(a.targetSecond);
  const after = formatQuantity(b.targetSecond);
  if (a.targetSecond.unit === b.targetSecond.unit && !tightenedAlike(a, b)) return [];
  return valueChange('torque', `second torque of the ${b.name}`, before, after);
}

function compareCondition(a: JointPlan, b: JointPlan): readonly Told[] {
  const name = `condition of the ${b.name}`;
  if (a.condition.id !== b.condition.id) return valueChange('joint', name, a.condition.name, b.condition.name);
  return valueChange('joint', `nut factor of the ${b.name}`, words.nutFactorWords(a), words.nutFactorWords(b));
}

const percent: Text = (j) => `${formatDecimal(j.preloadShare * 100, 1).replace(/\.0$/, '')}\u00a0%`;
const looseningWithoutCount: Aspect['compare'] = (a, b) =>
  // One or two bolts come apart in other rounds than many: the pattern says so already.
  a.count === b.count
    ? textChange('pattern', `loosening of the ${b.name}`, words.loosenWords(a), words.loosenWords(b))
    : [];

export const ASPECTS: readonly Aspect[] = [
  amount('torque', 'torque', (j) => j.target),
  tightness(compareSetting),
  tightness(compareSecond),
  amount('torque', 'run-down torque', (j) => j.runDown),
  value('torque', 'adapter', words.adapterWords),
  tightness(compareRounds),
  value('pattern', 'bolt pattern', (j) => words.patternWords(j.pattern), true),
  tightness(compareOrder),
  sentence('pattern', 'view', (j) => j.view, true),
  sentence('pattern', 'mark at the top', (j) => j.top ?? '', true),
  value('pattern', 'dowels and marks', (j) => words.featureWords(j.features), true),
  sentence('pattern', 'jacking', words.jackingWords, true),
  { loosening: true, compare: looseningWithoutCount },
  value('joint', 'thread', (j) => j.thread.designation, true),
  value('joint', 'grade', (j) => j.grade.id),
  value('joint', 'head', (j) => j.head, true),
  value('joint', 'side that is turned', (j) => j.turned),
  value('joint', 'nut', (j) => j.nut?.grade.id ?? ''),
  sentence('joint', 'reason for the nut', (j) => j.nut?.reason ?? ''),
  tightness(compareCondition),
  value('joint', 'lubricated surface', (j) => j.where ?? ''),
  value('joint', 'preload', percent),
  tightness(compareOrigin),
  sentence('joint', 'reason for the torque', (j) => j.reason ?? ''),
  value('joint', 'clamp force', words.clampWords),
  value('joint', 'material of the tapped hole', (j) => j.into ?? ''),
  value('joint', 'thread engagement', (j) => (j.engagement === undefined ? '' : formatQuantity(j.engagement))),
  value('joint', 'thread insert', (j) => (j.insert === true ? 'fitted' : '')),
  value('joint', 'thread beyond the nut', (j) => (j.protrusion === undefined ? '' : formatQuantity(j.protrusion))),
  value('joint', 'pressure limit under the head', words.bearingWords),
  value('joint', 'gasket load', words.gasketLoadWords),
  value('joint', 'standard flange', (j) => j.flange?.designation ?? ''),
  value('joint', 'distance to the wall', (j) =>
    j.wallMm === undefined ? '' : `${formatDecimal(j.wallMm, 1)}\u00a0mm`,
  ),
  sentence('joint', 'note', (j) => j.note ?? ''),
];
