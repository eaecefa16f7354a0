/** Variant axes: which cards a procedure makes, and what holds for which of them. */

import { didYouMean } from '../diagnostics/index.ts';
import { type At, type Entry, entries, items, type MachineContent, oneOrMore } from '../model/index.ts';
import type { Context } from './context.ts';
import type { Choice } from './types.ts';
import { capitalised } from './words.ts';

export type Only = Readonly<Record<string, string | readonly string[]>>;

/** Every combination of the axes given, in the order of the file: `{size: [small, large]}` gives two. */
export function combinations(
  axes: Readonly<Record<string, readonly string[]>> | undefined,
): readonly (readonly Choice[])[] {
  let out: readonly (readonly Choice[])[] = [[]];
  for (const [axis, values] of Object.entries(axes ?? {})) {
    out = out.flatMap((chosen) => values.map((value) => [...chosen, { axis, value }]));
  }
  return out;
}

/** Whether something marked `only` holds for these choices. An axis not chosen does not exclude it. */
export function holdsFor(only: Only | undefined, choices: readonly Choice[]): boolean {
  if (only === undefined) return true;
  return choices.every(({ axis, value }) => {
    const wanted = only[axis];
    return wanted === undefined || (typeof wanted === 'string' ? wanted === value : wanted.includes(value));
  });
}

/** `large`, `large-left`; empty for no choice. */
export function variantKey(choices: readonly Choice[]): string {
  return choices.map((c) => c.value).join('-');
}

/** `Large`, `Large, left`: the words on the variant tag. */
export function variantLabel(choices: readonly Choice[]): string {
  return capitalised(choices.map((c) => c.value.replace(/-/g, ' ')).join(', '));
}

/** `size: large`: how a part says for which variants it exists. */
export function onlyText(only: Only | undefined): string | undefined {
  if (only === undefined) return undefined;
  return Object.entries(only)
    .map(([axis, v]) => `${axis}: ${typeof v === 'string' ? v : v.join(' or ')}`)
    .join(', ');
}

/** `{ size: large }`, `{ size: [small, large] }`: as an author writes it. */
export function onlyYaml(only: Only): string {
  const pairs = Object.entries(only).map(([axis, v]) => `${axis}: ${typeof v === 'string' ? v : `[${v.join(', ')}]`}`);
  return `{ ${pairs.join(', ')} }`;
}

/** Reports axes and values that the machine does not have, and axes on which the procedure does not choose. */
export function checkOnly(
  context: Context,
  machine: Entry<MachineContent>,
  at: At<Only> | undefined,
  chosen: readonly string[] | undefined,
): void {
  if (at === undefined) return;
  const axes = machine.value.variants ?? {};
  for (const e of entries(at)) {
    const values = axes[e.key];
    if (values === undefined) {
      const known = Object.keys(axes);
      context.report('REF013', e.keyRange, `\`${machine.key}\` has no variants by \`${e.key}\``, {
        hint:
          didYouMean(e.key, known) ??
          (known.length === 0
            ? `give it \`variants:\` in \`${e.node.range.file === machine.node.range.file ? 'this file' : machine.node.range.file}\``
            : `its axes: ${known.map((k) => `\`${k}\``).join(', ')}`),
      });
      continue;
    }
    for (const v of oneOrMore(e as At<string | readonly string[]>)) {
      if (values.includes(v.value)) continue;
      context.report('REF013', v.node.range, `\`${v.value}\` is not a \`${e.key}\` of \`${machine.key}\``, {
        hint: didYouMean(v.value, values) ?? `its values: ${values.map((k) => `\`${k}\``).join(', ')}`,
      });
    }
    if (chosen !== undefined && !chosen.includes(e.key)) {
      context.report(
        'REF013',
        e.keyRange,
        `this holds for some values of \`${e.key}\` only, and the procedure makes no card for each of them`,
        {
          hint: `add \`applies: { ${e.key}: [${values.join(', ')}] }\` to the procedure`,
        },
      );
    }
  }
}

/** Serial ranges that belong to these choices, as printed. */
export function serialsOf(machine: MachineContent, choices: readonly Choice[]): readonly string[] {
  return (machine.serials ?? [])
    .filter((s) => choices.every((c) => s.is[c.axis] === undefined || s.is[c.axis] === c.value))
    .map((s) => `${s.from} to ${s.to}`);
}

/** Ranges that run backwards or overlap would give one serial number two answers. */
export function checkSerials(context: Context, machine: Entry<MachineContent>): void {
  const list = machine.value.serials;
  if (list === undefined) return;
  const found = items({ value: list, node: nodeOf(machine, 'serials') });
  found.forEach((at, i) => {
    checkOnly(context, machine, { value: at.value.is, node: nodeOf(at, 'is') }, undefined);
    if (at.value.from > at.value.to) {
      context.report('FLD004', at.node.range, `serial range ${at.value.from} to ${at.value.to} runs backwards`, {
        hint: 'write the smaller number first',
      });
    }
    for (const other of found.slice(0, i)) {
      if (at.value.from <= other.value.to && other.value.from <= at.value.to) {
        context.report(
          'FLD004',
          at.node.range,
          `serial range ${at.value.from} to ${at.value.to} overlaps ${other.value.from} to ${other.value.to}`,
          {
            related: [{ range: other.node.range, message: 'the other range' }],
            hint: 'a serial number may belong to one range only',
          },
        );
      }
    }
  });
}

function nodeOf(at: At<object>, key: string): At<unknown>['node'] {
  const { node } = at;
  return node.kind === 'map' ? (node.entries.find((e) => e.key === key)?.value ?? node) : node;
}
