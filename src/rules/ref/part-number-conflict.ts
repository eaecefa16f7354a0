/** One part number stands for two different things. */

import { type Machine, type Part, placeOf } from '../../resolve/index.ts';
import type { Check } from '../check.ts';

interface Numbered {
  readonly machine: Machine;
  readonly part: Part;
  readonly kind: string | undefined;
  readonly thread: string | undefined;
  readonly grade: string | undefined;
}

export const partNumberConflict: Check = {
  code: 'REF025',
  name: 'part-number-conflict',
  severity: 'error',
  title: 'One part number has two kinds, threads or grades.',
  why: 'The stores hand out by the number: the fitter who orders a plug gets a screw, or a screw of the right size and the wrong class, which looks the same until it stretches.',
  sources: ['common practice: one number, one part, over all machines of a shop'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '  plug: { name: vent plug, kind: plug, quantity: 1, number: MW-103, only: { size: large } }\n',
        to: '  plug: { name: vent plug, kind: plug, quantity: 1, number: «MW-102», only: { size: large } }\n',
      },
    ],
  },
  found: ({ machines }, tell) => {
    const known = new Map<string, Numbered>();
    for (const machine of machines) {
      const fastened = fastenersOf(machine);
      for (const part of machine.parts) {
        if (part.number === undefined) continue;
        const entry: Numbered = {
          machine,
          part,
          kind: part.kind === 'other' ? undefined : part.kind,
          thread: part.thread ?? fastened.get(part.id)?.thread,
          grade: part.grade ?? fastened.get(part.id)?.grade,
        };
        const key = part.number.replace(/\s+/g, '').toUpperCase();
        const first = known.get(key);
        if (first === undefined) {
          known.set(key, entry);
          continue;
        }
        const what = (['kind', 'thread', 'grade'] as const).find((w) => differs(first[w], entry[w]));
        if (what === undefined) continue;
        tell(
          placeOf(part, 'number'),
          `part number \`${part.number}\` is ${said(entry, what)}, and ${said(first, what)}`,
          {
            related: [{ range: placeOf(first.part, 'number'), message: 'the same number' }],
            hint: 'one of the two was copied wrongly: compare both with the parts list of the maker',
          },
        );
      }
    }
  },
};

function differs(a: string | undefined, b: string | undefined): boolean {
  return a !== undefined && b !== undefined && a !== b;
}

/** `a plug as `plug` of `pump``, `of thread M16 as `screw` of `pump``. */
function said({ machine, part, ...values }: Numbered, what: 'kind' | 'thread' | 'grade'): string {
  const value = what === 'kind' ? `of the kind \`${values.kind}\`` : `of ${what} \`${values[what]}\``;
  return `${value} as \`${part.id}\` of \`${machine.id}\``;
}

/** Thread and grade that parts have by the joints which they fasten, where all those joints agree. */
function fastenersOf(machine: Machine): ReadonlyMap<string, { thread?: string; grade?: string }> {
  const kinds = new Map(machine.parts.map((p) => [p.id, p.kind]));
  const threads = new Map<string, Set<string>>();
  const grades = new Map<string, Set<string>>();
  const add = (to: Map<string, Set<string>>, id: string, value: string | undefined): void => {
    if (value !== undefined) to.set(id, (to.get(id) ?? new Set()).add(value));
  };
  for (const { plan } of machine.joints) {
    for (const id of [plan.fastener, ...plan.also]) {
      const kind = kinds.get(id);
      if (kind !== 'screw' && kind !== 'stud' && kind !== 'nut') continue;
      add(threads, id, plan.thread.designation);
      add(grades, id, kind === 'nut' ? plan.nut?.grade.id : plan.grade.id);
    }
  }
  return new Map([...threads].map(([id, found]) => [id, { ...one('thread', found), ...one('grade', grades.get(id)) }]));
}

function one<K extends string>(key: K, values: ReadonlySet<string> | undefined): { [P in K]?: string } {
  const [value] = values ?? [];
  return (values?.size === 1 ? { [key]: value } : {}) as { [P in K]?: string };
}
