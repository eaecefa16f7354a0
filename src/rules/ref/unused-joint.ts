/** A joint of a machine is used nowhere. */

import type { Check } from '../check.ts';
import { usedIn } from './used.ts';

const FOOT = `  foot:
    name: foot joint
    fastener: foot-screw
    thread: M16
    grade: "8.8"
    head: hexagon
    condition: oiled
    lubricant: oil
    pattern: { rectangle: [400 mm, 250 mm], along: 2, across: 2 }
    view: above
    preload: 70 %
    rounds: [30 %, 70 %, 100 %]
    wrench: wrench-40-200
    socket: socket-24
`;
const SCREW = '  screw: { name: cover screw, kind: screw, number: MW-102 }\n';
const WITH_FOOT_SCREW = `${SCREW}  foot-screw: { name: foot screw, kind: screw, number: MW-104 }\n`;

export const unusedJoint: Check = {
  code: 'REF020',
  name: 'unused-joint',
  severity: 'warning',
  title: 'A joint of a machine is loosened, tightened and named by no step.',
  why: 'A joint that somebody took the trouble to compute is mostly one that has to be tightened; its step is missing, and the screws go home finger-tight.',
  sources: ['common practice'],
  example: {
    bad: [
      { file: 'machines/pump.yaml', from: SCREW, to: WITH_FOOT_SCREW },
      { file: 'machines/pump.yaml', from: 'joints:\n', to: `joints:\n${FOOT.replace('foot:', '«foot»:')}` },
    ],
    good: [
      { file: 'machines/pump.yaml', from: SCREW, to: WITH_FOOT_SCREW },
      { file: 'machines/pump.yaml', from: 'joints:\n', to: `joints:\n${FOOT}` },
      {
        file: 'procedures/mw-1.yaml',
        from: '      - do: Loosen the <joint:cover>.\n',
        to: '      - do: Loosen the <joint:cover>.\n        note: The <joint:foot> stays tight.\n',
      },
    ],
  },
  found: (shop, tell) => {
    if (shop.incomplete) return;
    const used = usedIn(shop);
    for (const machine of shop.machines) {
      if (!used.machines.has(machine.id)) continue;
      const told = new Set<string>();
      for (const { plan } of machine.joints) {
        if (used.joints.has(`${machine.id}/${plan.id}`) || told.has(plan.id)) continue;
        told.add(plan.id);
        tell(plan.range, `joint \`${plan.id}\` of \`${machine.id}\` is loosened, tightened and named by no step`, {
          hint: `write \`tighten: ${plan.id}\` at the step that closes it, or take the joint out`,
        });
      }
    }
  },
};
