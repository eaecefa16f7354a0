/** A standard flange that is drilled with one of two numbers of holes. */

import { placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';
import { eachJoint } from '../rule.ts';

const COUNTED = ['', '', '', '', 'four', '', '', '', 'eight', '', '', '', 'twelve'];

export const flangeTwoForms: Check = {
  code: 'BLT009',
  name: 'flange-two-forms',
  severity: 'warning',
  title: 'A flange is named that is drilled in two ways, and nothing says which one is on the pipe.',
  why: 'The mechanic stands before four holes with eight bolts in the kit, or the new gasket has its holes where the flange has none.',
  sources: ['EN 1092-1:2018, connection dimensions: DN 65 in PN 10 and PN 16 has 8 holes, 4 by agreement'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    pattern: { circle: 240 mm, count: 8, first: 22.5 deg }\n',
        to: '    pattern: { circle: 145 mm, count: 8, first: 22.5 deg }\n    flange: «EN 1092-1 DN 65 PN 16»\n',
      },
      {
        file: 'machines/pump.yaml',
        from: '    when:\n      - only: { size: large }\n        pattern: { circle: 320 mm, count: 12, first: 15 deg }\n',
        to: '',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '    pattern: { circle: 240 mm, count: 8, first: 22.5 deg }\n',
        to: '    pattern: { circle: 145 mm, count: 8, first: 22.5 deg }\n    flange: EN 1092-1 DN 65 PN 16\n    note: 8 holes, counted on the pipe\n',
      },
      {
        file: 'machines/pump.yaml',
        from: '    when:\n      - only: { size: large }\n        pattern: { circle: 320 mm, count: 12, first: 15 deg }\n',
        to: '',
      },
    ],
  },
  found: eachJoint((plan) => {
    const { id, flange, count, note } = plan;
    if (flange?.alternatives === undefined) return undefined;
    const counts = [flange.count, ...flange.alternatives.map((a) => a.count)];
    // Another count than these is the fault of the pattern.
    if (!counts.includes(count) || (note !== undefined && namesCount(note, count))) return undefined;
    const others = flange.alternatives.map((a) => `or ${a.count} (${a.when})`).join(', ');
    return {
      range: placeOf(plan, 'flange'),
      message: `\`${id}\` has ${count} bolts, and ${flange.designation} is drilled with ${flange.count} ${others}`,
      related: [{ range: placeOf(plan, 'pattern'), message: `${count} bolts` }],
      hint: `count the holes of the flange on the pipe, and say so: \`note: ${count} holes, counted on the pipe\``,
    };
  }),
};

/** `8 holes, counted on the pipe`, `the flange has eight bolts`. */
function namesCount(note: string, count: number): boolean {
  const words = [String(count), COUNTED[count] ?? ''].filter((w) => w !== '').join('|');
  return new RegExp(String.raw`\b(?:${words})[\s-](?:\w+\s)?(?:holes?|bolts?|studs?)\b`, 'i').test(note);
}
