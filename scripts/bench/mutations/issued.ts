/** Slips in what is issued already: lines of the ledger, snapshots, and change records that were mended afterwards. */

import { HEAD, LEDGER } from '../../../src/control/index.ts';
import { over, type Slip, slip } from './edit.ts';
import type { Kind, Site } from './kind.ts';
import type { Scene } from './scene.ts';
import { listAt, mapsIn, scalarAt, wordsAt } from './sheet.ts';
import { mistyped } from './typing.ts';

/** The ledger's lines, and where those about the procedure stand among them. */
function ledger({ files, procedure }: Scene): { readonly lines: readonly string[]; readonly own: readonly number[] } {
  const lines = (files[LEDGER] ?? '').split('\n').slice(0, -1);
  const doc = `"doc":"${wordsAt(procedure.root, 'doc')}"`;
  return { lines, own: lines.flatMap((line, i) => (line.includes(doc) ? [i] : [])) };
}

/** The ledger after the slip. at: index of the line at which it shows. */
function ledgerSlip(lines: readonly string[], at: number): Slip {
  return { file: LEDGER, text: lines.map((l) => `${l}\n`).join(''), lines: [[at + 1, at + 1]], names: [] };
}

/** One site for each line about the procedure. */
function perLine(
  make: (lines: readonly string[], at: number, random: Parameters<Site>[0]) => readonly string[] | undefined,
): Kind['sites'] {
  return (scene) => {
    const { lines, own } = ledger(scene);
    return own.map((at) => (random) => {
      const made = make(lines, at, random);
      return made === undefined ? undefined : ledgerSlip(made, at);
    });
  };
}

/** One line changed; undefined when it stays as it is. */
function changed(
  lines: readonly string[],
  at: number,
  change: (line: string) => string,
): readonly string[] | undefined {
  const line = lines[at] ?? '';
  const made = change(line);
  return made === line ? undefined : lines.with(at, made);
}

export const ISSUED_SLIPS: readonly Kind[] = [
  {
    name: 'line of the ledger deleted',
    ledger: true,
    checks: ['LDG003'],
    sites: perLine((lines, at) => lines.toSpliced(at, 1)),
  },
  {
    name: 'two lines of the ledger exchanged',
    ledger: true,
    checks: ['LDG003'],
    sites: perLine((lines, at) =>
      at === 0 ? undefined : lines.with(at, lines[at - 1] ?? '').with(at - 1, lines[at] ?? ''),
    ),
  },
  {
    name: 'line of the ledger pasted twice',
    ledger: true,
    checks: ['LDG003'],
    sites: perLine((lines, at) => lines.toSpliced(at, 0, lines[at] ?? '')),
  },
  {
    name: 'day set back in a line of the ledger',
    ledger: true,
    checks: ['LDG002'],
    sites: perLine((lines, at) =>
      changed(lines, at, (line) => line.replace(/"(effective|on|recorded)":"20\d\d/, (t) => `${t.slice(0, -2)}19`)),
    ),
  },
  {
    name: 'reason mended in a line of the ledger',
    ledger: true,
    checks: ['LDG002'],
    sites: perLine((lines, at, random) =>
      changed(lines, at, (line) =>
        line.replace(
          /"(why|reason|finding)":"([^"\\]+)"/,
          (_, key: string, words: string) => `"${key}":"${mistyped(random, words)}"`,
        ),
      ),
    ),
  },
  {
    name: 'closing brace of a line of the ledger lost',
    ledger: true,
    checks: ['LDG001'],
    sites: perLine((lines, at) => changed(lines, at, (line) => line.slice(0, -1))),
  },
  {
    name: 'marks of a merge left in the ledger',
    ledger: true,
    checks: ['LDG004'],
    sites: perLine((lines, at) =>
      lines.toSpliced(at, lines.length, '<<<<<<< HEAD', ...lines.slice(at), '=======', '>>>>>>> bench'),
    ),
  },
  {
    name: 'head of the ledger left as it was a line before',
    ledger: true,
    checks: ['LDG003'],
    sites: ({ files }) => {
      const lines = (files[LEDGER] ?? '').split('\n');
      const seal = /"seal":"([0-9a-f]+)"/.exec(lines.at(-3) ?? '')?.[1] ?? '';
      return [() => ({ file: HEAD, text: `${lines.length - 2} ${seal}\n`, lines: [[1, 1]], names: [HEAD] })];
    },
  },
  {
    name: 'number changed in a snapshot',
    ledger: true,
    checks: ['LDG005'],
    sites: ({ files, procedure }) => {
      const folder = `issued/${wordsAt(procedure.root, 'doc')}/`;
      return Object.keys(files)
        .filter((name) => name.startsWith(folder) && !name.endsWith('.changes.json'))
        .map((name) => (random) => {
          const text = files[name] ?? '';
          const found = [...text.matchAll(/"value":(\d+)/g)];
          if (found.length === 0) return undefined;
          const { index, 0: match } = random.pick(found);
          const put = `${match}${random.whole(10)}`;
          const made = text.slice(0, index) + put + text.slice(index + match.length);
          return { file: name, text: made, lines: [[1, 1]], names: [name] };
        });
    },
  },
  {
    name: 'snapshot copied under another letter',
    ledger: true,
    checks: ['LDG006'],
    sites: ({ files, procedure }) => {
      const folder = `issued/${wordsAt(procedure.root, 'doc')}/`;
      return Object.keys(files)
        .filter((name) => name.startsWith(folder) && !name.endsWith('.changes.json'))
        .map((name) => () => {
          const copy = `${folder}Y.json`;
          return { file: copy, text: files[name] ?? '', lines: [[1, 1]], names: [copy] };
        });
    },
  },
  ...(['what', 'why'] as const).map(
    (key): Kind => ({
      name: `\`${key}\` of an issued revision mended in the procedure`,
      ledger: true,
      checks: ['LDG012'],
      sites: (scene) => {
        const { lines, own } = ledger(scene);
        const issued = (rev: string): boolean =>
          own.some((i) => lines[i]?.includes('"kind":"issue"') === true && lines[i]?.includes(`"rev":"${rev}"`));
        return mapsIn(listAt(scene.procedure.root, 'revisions'))
          .filter((r) => issued(wordsAt(r, 'rev')))
          .map((r) => (random) => {
            const scalar = scalarAt(r, key);
            return scalar === undefined
              ? undefined
              : slip(scene.procedure, [over(scene.procedure, scalar, mistyped(random, String(scalar.value)))]);
          });
      },
    }),
  ),
];
