/** Marks of revisions, rights to approve, outside documents, copy numbers. */

import { isScalar, type YAMLMap } from 'yaml';
import { last, revisions, sources } from './control.ts';
import { away, entryLines, over, slip } from './edit.ts';
import type { Kind, Site } from './kind.ts';
import { type Loss, lineAfter, lose, retype } from './make.ts';
import type { Entry, Scene } from './scene.ts';
import { entriesOf, listAt, mapAt, pairOf, scalarAt, scalarsIn, sheetOf, stretchOf, wordsAt } from './sheet.ts';
import { mistyped } from './typing.ts';

/** Entries of the register whose documents the procedure, its steps or its joints name. */
function named(scene: Scene): readonly Entry[] {
  const sheet = sheetOf('outside.yaml', scene.files['outside.yaml'] ?? '');
  const documents = new Set(sources(scene).map(({ map }) => wordsAt(map, 'document')));
  return entriesOf(sheet.root)
    .filter(([, map]) => documents.has(wordsAt(map, 'document')))
    .map(([id, map]) => ({ id, map, sheet }));
}

/** Confirmations of the register, with the procedure that each is for. */
function confirmations(scene: Scene): readonly (Entry & { readonly doc: string; readonly list: YAMLMap })[] {
  return named(scene).flatMap((e) => {
    const list = mapAt(e.map, 'confirmed');
    return list === undefined ? [] : entriesOf(list).map(([doc]) => ({ ...e, doc, list }));
  });
}

const approverOf = (scene: Scene): readonly string[] =>
  revisions(scene)
    .slice(-1)
    .map((r) => wordsAt(r, 'approver'));

const rights = ({ people }: Scene, id: string): readonly string[] => {
  const person = mapAt(people.root, id);
  return person === undefined ? [] : scalarsIn(listAt(person, 'approves')).map((s) => String(s.value));
};

export const OUTSIDE: readonly Kind[] = [
  {
    name: 'revision named by a number where the shop has letters',
    checks: ['REV010'],
    sites: last('rev', () => ['2', '04', 'B1', '1', '10']),
  },
  {
    name: 'right to approve major changes taken from the approver',
    checks: ['REV004'],
    sites: (scene) =>
      approverOf(scene).map((id) => () => {
        const list = mapAt(scene.people.root, id);
        const written = list === undefined ? undefined : listAt(list, 'approves');
        if (written === undefined || !rights(scene, id).includes('major')) return undefined;
        return slip(scene.people, [{ ...stretchOf(scene.people, written), put: '[minor]' }]);
      }),
  },
  {
    name: 'change called minor whose approver may approve major ones only',
    checks: ['REV004'],
    sites: (scene) =>
      revisions(scene)
        .slice(-1)
        .filter((r) => !r.has('class') && !rights(scene, wordsAt(r, 'approver')).includes('minor'))
        .map((r) => () => {
          const put = lineAfter(scene.procedure, r, 'approver', 'class: minor');
          return put === undefined ? undefined : slip(scene.procedure, [put]);
        }),
  },
  {
    name: 'new edition entered in the register, the procedure left as it was',
    checks: ['REV011'],
    sites: (scene) =>
      named(scene).map(
        (e): Site =>
          () => {
            const [edition, received] = [scalarAt(e.map, 'edition'), scalarAt(e.map, 'received')];
            if (edition === undefined || received === undefined) return undefined;
            const next = String(edition.value).replace(/\d+(?=\D*$)/, (d) => String(Number(d) + 1));
            return slip(e.sheet, [over(e.sheet, edition, next), over(e.sheet, received, '2026-11-02')]);
          },
      ),
  },
  {
    name: 'document lost from the register of outside documents',
    checks: ['REV012'],
    sites: (scene) =>
      named(scene).map(
        (e): Site =>
          () => {
            const lines = entryLines(e.sheet, e.sheet.root, e.id);
            return slip(e.sheet, away(lines), [wordsAt(e.map, 'document')]);
          },
      ),
  },
  {
    name: 'name of a cited document mistyped',
    checks: ['REV012'],
    sites: (scene) =>
      sources(scene).flatMap(({ sheet, map }) =>
        retype(
          () => {
            const scalar = scalarAt(map, 'document');
            return scalar === undefined ? [] : [{ sheet, scalar }];
          },
          (v, random) => {
            const made = mistyped(random, v);
            // Case makes no other name.
            return made.toLowerCase() === v.toLowerCase() ? undefined : made;
          },
        )(scene),
      ),
  },
  {
    name: 'confirmation entered for the wrong procedure',
    checks: ['REV013'],
    // In the whole shop, where the other procedure is.
    whole: true,
    sites: (scene) => {
      const doc = wordsAt(scene.procedure.root, 'doc');
      const others = Object.values(scene.files).flatMap((text) => /^doc: (\S+)/m.exec(text)?.[1] ?? []);
      return confirmations(scene)
        .filter((c) => c.doc === doc)
        .flatMap(({ sheet, list }) => {
          const key = pairOf(list, doc)?.key;
          return isScalar(key)
            ? others
                .filter((o) => o !== doc)
                .map(
                  (o): Site =>
                    () =>
                      slip(sheet, [over(sheet, key, o)]),
                )
            : [];
        });
    },
  },
  {
    name: 'confirmation lost',
    checks: ['REV011'],
    sites: lose((scene) =>
      confirmations(scene).map((c): Loss => ({ ...c, key: 'confirmed', names: [wordsAt(c.map, 'document')] })),
    ),
  },
  {
    name: 'date of a confirmation left at that of an older edition',
    checks: ['REV011'],
    sites: (scene) =>
      confirmations(scene).flatMap(({ sheet, list, doc }) => {
        const one = mapAt(list, doc);
        const on = one === undefined ? undefined : scalarAt(one, 'on');
        return on === undefined ? [] : [() => slip(sheet, [over(sheet, on, '2024-02-12')])];
      }),
  },
  {
    name: 'copy number of another bench',
    checks: ['REV019'],
    sites: ({ benches }) => {
      const all = entriesOf(benches.root);
      return all.flatMap(([, bench], i): Site[] => {
        const copy = scalarAt(bench, 'copy');
        const others = all.filter((_, k) => k !== i).map(([, b]) => wordsAt(b, 'copy'));
        if (copy === undefined || others.length === 0) return [];
        // A number as it stands, without quotes.
        return [(random) => slip(benches, [{ ...stretchOf(benches, copy), put: random.pick(others) }])];
      });
    },
  },
  {
    name: 'affected document mistyped',
    checks: ['REF005'],
    // In the whole shop: a cut-out names no other procedures.
    whole: true,
    sites: retype(
      (scene) =>
        revisions(scene).flatMap((r) =>
          scalarsIn(listAt(r, 'affects')).map((scalar) => ({ sheet: scene.procedure, scalar })),
        ),
      (v, random) => v.replace(/\d$/, (d) => String((Number(d) + 1 + random.whole(8)) % 10)),
    ),
  },
];
