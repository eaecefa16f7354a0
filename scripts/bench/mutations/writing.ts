/** Bad style that hides work or leaves it to guesswork. */

import { away, entryLines, itemAway, over, slip, written } from './edit.ts';
import type { Kind, Site } from './kind.ts';
import { type At, inMeasures, inSteps, inWarnings, lose, references, retype, typedOver } from './make.ts';
import type { Scene, StepPlace } from './scene.ts';
import { keyOf, mapAt, pairOf, scalarAt, stretchOf, wordsAt } from './sheet.ts';
import { pairs } from './steps.ts';

const orders = ({ steps }: Scene): At[] => inSteps(steps, 'do');
const notes = ({ steps }: Scene): At[] => inSteps(steps, 'note');

const small = (s: string): string => s.slice(0, 1).toLowerCase() + s.slice(1);
const large = (s: string): string => s.slice(0, 1).toUpperCase() + s.slice(1);
/** `Tighten the joint.` without its full stop. */
const open = (s: string): string => s.trim().replace(/\.$/, '');

/** A step that begins with its verb and is one plain sentence: `Loosen the <joint:gland> in the order drawn.` */
const PLAIN =
  /^([A-Z][a-z]+) ((?:the|a|an|each|every|both|all|your own) [^,;:.]+)\.$|^([A-Z][a-z]+) (<[^>]+>[^,;:.]*)\.$/;

/** Past participles of the verbs that the demo begins its steps with; the regular ones follow. */
const IRREGULAR: Readonly<Record<string, string>> = {
  Hang: 'hung',
  Draw: 'drawn',
  Lay: 'laid',
  Set: 'set',
  Put: 'put',
  Take: 'taken',
  Run: 'run',
  Slide: 'slid',
  Cut: 'cut',
  Hold: 'held',
  Read: 'read',
  Bring: 'brought',
  Let: 'let',
  See: 'seen',
  Shut: 'shut',
  Wind: 'wound',
};

function participle(verb: string): string {
  const known = IRREGULAR[verb];
  if (known !== undefined) return known;
  const v = verb.toLowerCase();
  if (v.endsWith('e')) return `${v}d`;
  if (/[^aeiou]y$/.test(v)) return `${v.slice(0, -1)}ied`;
  return /^(drop|slip|tip|wrap|strip|plug|fit|jog|pin|tap|rub|dip)$/.test(v) ? `${v}${v.at(-1) ?? ''}ed` : `${v}ed`;
}

/** `-ing` form of a verb. */
function gerund(verb: string): string {
  const v = verb.toLowerCase();
  if (/[^e]e$/.test(v)) return `${v.slice(0, -1)}ing`;
  return /^(drop|slip|tip|wrap|strip|plug|fit|jog|pin|set|put|cut|run|tap|rub|dip|shut|let)$/.test(v)
    ? `${v}${v.at(-1) ?? ''}ing`
    : `${v}ing`;
}

function plain(value: string): readonly [verb: string, rest: string] | undefined {
  const m = PLAIN.exec(value);
  const verb = m?.[1] ?? m?.[3];
  const rest = m?.[2] ?? m?.[4];
  return verb === undefined || rest === undefined ? undefined : [verb, rest];
}

/** Object of the order: up to the first preposition. */
function object(rest: string): readonly [thing: string, behind: string] {
  const at = rest.search(
    / (?:in|on|onto|into|to|from|with|by|at|of|off|out|up|down|over|under|until|against|through|for|dry|between|behind|across|round|without|before)\b(?![^<]*>)/,
  );
  return at < 0 ? [rest, ''] : [rest.slice(0, at), rest.slice(at)];
}

const VAGUE_ORDER = [
  'as required',
  'if necessary',
  'properly',
  'as needed',
  'adequately',
  'sufficiently',
  'where appropriate',
  'securely',
];
const VAGUE_AVOID = ['Use suitable protection.', 'Take appropriate measures.', 'Proceed carefully.'];

const LONG = [
  'and, while doing so, keep an eye on the far end of the machine where the second fitter stands with the lamp and the drain pan',
  'so that the whole of its length can be seen from the platform by the fitter who is going to carry on with the next stage',
];
const LONG_NOTE =
  'and this is why the works decided after the second docking of that year to keep the record of each ship beside the machine and no longer in the office';

export const WRITING: readonly Kind[] = [
  {
    name: 'two steps merged into one',
    // Two long steps make a sentence of more than 20 words before they make two actions.
    checks: ['WRT001', 'WRT002'],
    sites: (scene) =>
      pairs(scene, (a, b) => b.index === a.index + 1).map(
        ([a, b]) =>
          () =>
            merged(a, b),
      ),
  },
  {
    name: 'step written out at length',
    checks: ['WRT002'],
    sites: retype(orders, (v, random) => `${open(v)} ${random.pick(LONG)}.`),
  },
  {
    name: 'vague word put into a step',
    checks: ['WRT003'],
    sites: retype(orders, (v, random) => `${open(v)} ${random.pick(VAGUE_ORDER)}.`),
  },
  {
    name: 'vague words put into an avoidance or an action out of limit',
    checks: ['WRT003', 'SAF007'],
    sites: (scene) => [
      ...retype(
        () => inWarnings(scene, 'avoid'),
        (v, random) => `${v} ${random.pick(VAGUE_AVOID)}`,
      )(scene),
      ...retype(
        () => inMeasures(scene, 'if out'),
        (_, random) =>
          random.pick([
            'Adjust as required.',
            'Take appropriate action.',
            'Rework if necessary.',
            'Correct as needed.',
          ]),
      )(scene),
    ],
  },
  {
    name: 'number typed into a step without its unit',
    checks: ['WRT004'],
    sites: retype(orders, (v, random) => {
      const parts = plain(v);
      if (parts === undefined) return undefined;
      return `${open(v)} with a gap of ${random.pick(['0.3', '1.5', '0.05', '2.5'])}.`;
    }),
  },
  {
    name: 'unit struck from a measure in a text',
    checks: ['WRT004'],
    sites: retype(
      (scene) => [...orders(scene), ...notes(scene), ...inWarnings(scene, 'avoid')],
      (v) =>
        /\d (?:mm|bar|degC|N·m|kg|ml|g)\b/.test(v) ? v.replace(/(\d) (?:mm|bar|degC|N·m|kg|ml|g)\b/, '$1') : undefined,
    ),
  },
  {
    name: 'nominal value ordered without a tolerance',
    checks: ['WRT005'],
    sites: (scene) =>
      scene.steps.flatMap((s) => {
        const scalar = scalarAt(s.map, 'do');
        // A step with a measure has its limit there.
        if (scalar === undefined || s.map.has('measure') || s.map.has('heat')) return [];
        return [
          (random) =>
            slip(s.sheet, [
              over(
                s.sheet,
                scalar,
                random.pick([
                  'Set the gap to 0.3 mm.',
                  'Adjust the clearance to 1.5 mm.',
                  'Set the pressure to 4 bar.',
                  'Heat the ring to 80 degC.',
                  'Set the overhang to 12 mm.',
                ]),
              ),
            ]),
        ] satisfies Site[];
      }),
  },
  {
    name: 'measure lost, its limit typed as a nominal value',
    checks: ['WRT005'],
    sites: (scene) =>
      scene.steps.flatMap((s) => {
        const scalar = scalarAt(s.map, 'do');
        const measure = mapAt(s.map, 'measure');
        const limit = measure === undefined ? '' : wordsAt(measure, 'limit');
        const to = /to ([\d.]+ (?:mm|bar|degC))$/.exec(limit)?.[1];
        const lines = entryLines(s.sheet, s.map, 'measure');
        if (scalar === undefined || measure === undefined || to === undefined || lines === undefined) return [];
        return [
          () =>
            slip(s.sheet, [
              over(s.sheet, scalar, `Set the ${wordsAt(measure, 'what')} to ${to}.`),
              { ...lines, put: '' },
            ]),
        ];
      }),
  },
  {
    name: 'step moved into the note of the step before',
    // What the step did to parts is then missing as well.
    checks: ['WRT006', 'PRT003', 'PRT005', 'PRT015'],
    sites: (scene) =>
      pairs(scene, (a, b) => b.index === a.index + 1 && !a.map.has('note')).map(([a, b]) => () => {
        const gone = itemAway(b.sheet, b.list, b.index);
        const key = pairOf(a.map, 'do');
        if (gone === undefined || key === undefined) return undefined;
        const at = stretchOf(a.sheet, key.value).end;
        const column =
          stretchOf(a.sheet, key.key).start - a.sheet.text.lastIndexOf('\n', stretchOf(a.sheet, key.key).start) - 1;
        const line = `\n${' '.repeat(column)}note: ${written(wordsAt(b.map, 'do').trim())}`;
        return slip(a.sheet, [{ start: at, end: at, put: line }, ...away(gone)]);
      }),
  },
  {
    name: 'order added to a note',
    checks: ['WRT006'],
    sites: retype(
      notes,
      (v, random) =>
        `${v.trim()} ${random.pick(['Check the gasket for cuts.', 'Clean both faces.', 'Replace worn screws.', 'Tell the shop lead.', 'Wipe the bore dry.'])}`,
    ),
  },
  {
    name: 'condition moved behind its order',
    checks: ['WRT007'],
    sites: retype(orders, (v) => {
      const m = /^(When|If|After|Once) ([^,]+), (.+)\.$/.exec(v.trim());
      return m === null ? undefined : `${large(m[3] ?? '')} ${small(m[1] ?? '')} ${m[2] ?? ''}.`;
    }),
  },
  {
    name: 'condition added behind an order',
    checks: ['WRT007'],
    sites: retype(orders, (v, random) =>
      plain(v) === undefined
        ? undefined
        : `${open(v)} ${random.pick(['when the pump has stopped', 'if the ring is worn', 'after the oil has drained', 'once the cover is free'])}.`,
    ),
  },
  {
    name: 'step put into the passive',
    checks: ['WRT008'],
    sites: retype(orders, (v, random) => {
      const parts = plain(v);
      if (parts === undefined) return undefined;
      const [thing, behind] = object(parts[1]);
      const verb = random.pick(['is to be', 'must be', 'should be', 'has to be']);
      return `${large(thing)} ${verb} ${participle(parts[0])}${behind}.`;
    }),
  },
  {
    name: 'step begun with a noun or an -ing form',
    checks: ['WRT009', 'WRT008'],
    sites: retype(orders, (v, random) => {
      const parts = plain(v);
      if (parts === undefined) return undefined;
      const [thing, behind] = object(parts[1]);
      return random.pick([
        `${large(gerund(parts[0]))} ${parts[1]}.`,
        `The fitter ${small(parts[0])}s ${parts[1]}.`,
        `${large(thing)} ${participle(parts[0])}${behind}.`,
      ]);
    }),
  },
  {
    name: 'sentence of a note run on',
    checks: ['WRT010'],
    sites: retype(notes, (v) => `${open(v)}, ${LONG_NOTE}.`),
  },
  {
    name: 'two sentences of a warning run together',
    checks: ['WRT010', 'SAF019'],
    // Only where the two are more than 25 words: ASD-STE100 allows as many in a description.
    sites: retype(
      (scene) => [...inWarnings(scene, 'hazard', 'avoid'), ...notes(scene)],
      (v) => {
        const made = v.trim().replace(/\. ([A-Z])/, (_, l: string) => ` and ${l.toLowerCase()}`);
        const longest = Math.max(...made.split(/\. /).map((s) => s.split(/\s+/).length));
        return made !== v && longest > 28 ? made : undefined;
      },
    ),
  },
  {
    name: 'number of a step typed instead of its reference',
    checks: ['WRT011'],
    sites: (scene) => [
      ...references(scene, 'step')
        .filter(({ sheet, stretch }) => sheet.text[stretch.end] === '>')
        .map(
          ({ sheet, stretch }) =>
            (random: Parameters<Site>[0]) =>
              typedOver(sheet, { start: stretch.start - 6, end: stretch.end + 1 }, `step ${2 + random.whole(30)}`),
        ),
      ...retype(
        (s) => inMeasures(s, 'if out'),
        (v, random) => `${open(v)}, then go back to step ${2 + random.whole(30)}.`,
      )(scene),
    ],
  },
  {
    name: 'date typed in figures',
    checks: ['WRT012'],
    sites: retype(
      notes,
      (v, random) =>
        `${v.trim()} Last done on ${1 + random.whole(12)}/${1 + random.whole(12)}/${20 + random.whole(6)}.`,
    ),
  },
  {
    name: 'two units of one value that differ',
    checks: ['TRQ030'],
    sites: retype(
      notes,
      (v, random) =>
        `${v.trim()} The old card said ${random.pick(['120 N·m (108 lbf·ft)', '90 N·m (86 lbf·ft)', '6 bar (78 psi)', '25.4 mm (1.1 in)', '50 N·m (73 lbf·ft)'])}.`,
    ),
  },
  {
    name: 'part taken off in words only',
    checks: ['PRT003', 'PRT005', 'PRT006', 'PRT007', 'PRT015'],
    sites: (scene) =>
      lose(() =>
        scene.steps
          .filter((s) => s.map.has('remove'))
          .map((s) => ({ sheet: s.sheet, map: s.map, key: 'remove', names: namesIn(s) })),
      )(scene),
  },
];

function namesIn(step: StepPlace): string[] {
  const map = step.map.get('remove', true) as { items?: { key?: unknown }[] } | undefined;
  return (map?.items ?? []).map((i) => keyOf(i as Parameters<typeof keyOf>[0]));
}

/** The second step's words joined to the first's with `and`; what the second did is lost from its own lines. */
function merged(a: StepPlace, b: StepPlace) {
  const [first, second] = [scalarAt(a.map, 'do'), wordsAt(b.map, 'do')];
  if (first === undefined || second === '' || a.sheet !== b.sheet) return undefined;
  const words = `${open(wordsAt(a.map, 'do'))} and ${small(open(second))}.`;
  return slip(a.sheet, [over(a.sheet, first, words), ...away(itemAway(b.sheet, b.list, b.index))]);
}
