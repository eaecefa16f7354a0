/** A safety stop while the registers cannot be read whole: it is entered all the same, and no bench is forgotten. */

import { type Act, type ActFacts, suspendAct } from '../../src/control/index.ts';
import type { Compiled, ControlOptions } from '../../src/pipeline/index.ts';
import { READ_FROM } from '../../src/resolve/index.ts';

export interface Stop {
  readonly doc: string;
  readonly by: string;
  readonly reason: string;
}

/**
 * The act, judged by what could be read. A person is not asked for in a faulty people.yaml, and with a faulty benches.yaml the benches
 * of the last line about the document are listed as well. warn: told what could not be looked up.
 */
export function stopAct(
  facts: ActFacts,
  { diagnostics }: Compiled,
  { shown }: Pick<ControlOptions, 'shown'>,
  stop: Stop,
  warn: (text: string) => void,
): Act {
  const isFaulty = (name: string): boolean =>
    diagnostics.some((d) => d.severity === 'error' && d.range.file === `${shown}/${name}`);
  const { shop } = facts;
  const unknown = isFaulty('people.yaml') && !shop.people.some((p) => p.id === stop.by);
  if (unknown) warn(`people.yaml cannot be read whole: \`${stop.by}\` is entered as given`);
  const range = { file: `${shown}/people.yaml`, start: 0, end: 0 };
  const somebody = {
    id: stop.by,
    name: stop.by,
    role: '',
    approves: [],
    keyRange: range,
    [READ_FROM]: { kind: 'scalar' as const, value: null, range },
  };
  const act = suspendAct(unknown ? { ...facts, shop: { ...shop, people: [...shop.people, somebody] } } : facts, stop);
  if (!isFaulty('benches.yaml') || act.kind !== 'suspend') return act;
  const last = facts.ledger.entries.filter((e) => 'distribution' in e && 'doc' in e && e.doc === stop.doc).at(-1);
  const before = last !== undefined && 'distribution' in last ? last.distribution : [];
  const added = before.filter((b) => !act.distribution.some((d) => d.bench === b.bench));
  warn('benches.yaml cannot be read whole: the benches of the last notice about the document are listed as well');
  return { ...act, distribution: [...act.distribution, ...added] };
}
