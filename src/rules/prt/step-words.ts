/** The words of a step with its references as single signs, so that a pattern can look for an order and its object. */

import { onceAText } from '../once.ts';

/** Signs of the private use area: the first 256 parts named in a text, then one each for the other kinds. */
const FIRST_PART = 0xe100;
const LAST_PART = 0xe1ff;
export const PART_SIGN = '[\\ue100-\\ue1ff]';
const OTHER_SIGNS = {
  tool: '\ue001',
  consumable: '\ue002',
  joint: '\ue003',
  step: '\ue004',
  procedure: '\ue005',
} as const;
export const TOOL_OR_CONSUMABLE = '[\\ue001\\ue002]';
export const JOINT_SIGN = OTHER_SIGNS.joint;

export interface Words {
  /** Lower case, single blanks. */
  readonly text: string;
  /** Id of the part behind a sign. */
  partOf(sign: string): string | undefined;
  /** Sign of the part; undefined where the text does not refer to it. */
  signOf(part: string): string | undefined;
  readonly joints: readonly string[];
}

export const wordsOf = onceAText((prose): Words => {
  const parts: string[] = [];
  const joints: string[] = [];
  const texts = prose.map((p) =>
    p.runs
      .map(({ text, ref }) => {
        if (ref === undefined) return text.toLowerCase();
        if (ref.kind === 'joint') joints.push(ref.id);
        if (ref.kind !== 'part') return OTHER_SIGNS[ref.kind];
        if (!parts.includes(ref.id)) parts.push(ref.id);
        return signAt(parts.indexOf(ref.id)) ?? text.toLowerCase();
      })
      .join(''),
  );
  return {
    text: texts.join('. ').replace(/\s+/g, ' ').trim(),
    partOf: (sign) => parts[sign.charCodeAt(0) - FIRST_PART],
    signOf: (part) => (parts.includes(part) ? signAt(parts.indexOf(part)) : undefined),
    joints,
  };
});

function signAt(index: number): string | undefined {
  return FIRST_PART + index > LAST_PART ? undefined : String.fromCharCode(FIRST_PART + index);
}
