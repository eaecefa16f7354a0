/** What every resolving function needs at hand: the content, where to report, and the registers already resolved. */

import { type Code, didYouMean, type Range, type Report } from '../diagnostics/index.ts';
import type { Content, Register } from '../model/index.ts';
import type { Consumable, Person, ShopInfo, Tool } from './types.ts';

export interface Context {
  readonly content: Content;
  readonly report: Report;
  readonly info: ShopInfo;
  readonly tools: ReadonlyMap<string, Tool>;
  readonly consumables: ReadonlyMap<string, Consumable>;
  readonly people: ReadonlyMap<string, Person>;
}

type Kind = 'tool' | 'consumable' | 'part' | 'joint' | 'procedure' | 'machine' | 'bench' | 'person' | 'stage';

const CODE: Readonly<Record<Kind, Code>> = {
  tool: 'REF001',
  consumable: 'REF002',
  part: 'REF003',
  joint: 'REF004',
  procedure: 'REF005',
  machine: 'REF007',
  bench: 'REF008',
  person: 'REF009',
  stage: 'REF010',
};

/** Looks an id up in a register; an unknown one is reported with the nearest known one, and with its own register if it has one. */
export function lookUp<T>(
  context: Pick<Context, 'content' | 'report'>,
  kind: Kind,
  register: {
    readonly entries: ReadonlyMap<string, T>;
    readonly faulty: ReadonlySet<string> | undefined;
    readonly unread: boolean;
    readonly file: string;
  },
  id: string,
  range: Range,
  label?: string,
): T | undefined {
  const found = register.entries.get(id);
  if (found !== undefined) return found;
  // When the entry may stand in what could not be read, that is the one fault to mend; echoes would bury it.
  if (register.unread || register.faulty?.has(id)) return undefined;
  const elsewhere = registerOf(context.content, id, kind);
  if (elsewhere !== undefined) {
    context.report('REF012', range, `\`${id}\` is a ${elsewhere}, and a ${kind} is meant here`, {
      label,
      hint:
        didYouMean(id, register.entries.keys()) ??
        `use it as a ${elsewhere} (\`<${elsewhere}:${id}>\` or \`${elsewhere === 'tool' ? 'with' : 'use'}: [${id}]\`), or name a ${kind} of \`${register.file}\``,
    });
    return undefined;
  }
  const where = kind === 'tool' || kind === 'consumable' ? 'in the register' : `in \`${register.file}\``;
  context.report(CODE[kind], range, `${kind} \`${id}\` is not ${where}`, {
    label,
    hint: didYouMean(id, register.entries.keys()) ?? addHint(kind, register.file),
  });
  return undefined;
}

function addHint(kind: Kind, file: string): string {
  return `add it to \`${file}\`, or name a ${kind} that is there`;
}

function registerOf(content: Content, id: string, except: Kind): string | undefined {
  const all: readonly (readonly [Kind, Register<unknown>])[] = [
    ['tool', content.tools],
    ['consumable', content.consumables],
  ];
  return all.find(([kind, register]) => kind !== except && register.entries.has(id))?.[0];
}
