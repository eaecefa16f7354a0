/** Comments that accept a warning, and no longer fit it. */

import { slip, textOf } from './edit.ts';
import type { Kind, Site } from './kind.ts';
import { typedOver } from './make.ts';
import type { Scene } from './scene.ts';
import { lineEnd, lineStart, type Sheet } from './sheet.ts';

function comments(scene: Scene): { sheet: Sheet; start: number; end: number; text: string }[] {
  return [scene.procedure, scene.machine, scene.tools, scene.consumables, ...scene.stages].flatMap((sheet) =>
    [...sheet.text.matchAll(/# accept [A-Z]{3}\d{3}: [^\n]*/g)].map((m) => ({
      sheet,
      start: m.index,
      end: m.index + m[0].length,
      text: m[0],
    })),
  );
}

const changed =
  (change: (text: string) => string) =>
  (scene: Scene): Site[] =>
    comments(scene).map((c) => () => typedOver(c.sheet, c, change(c.text)));

export const ACCEPTED: readonly Kind[] = [
  { name: 'reason of an acceptance lost', checks: ['ACC003'], sites: changed((t) => t.slice(0, t.indexOf(':') + 1)) },
  {
    name: 'code of an acceptance mistyped',
    checks: ['ACC004'],
    sites: changed((t) => t.replace(/(\d)(\d):/, '$2$1$1:')),
  },
  {
    name: 'acceptance left two entries further up',
    checks: ['ACC001'],
    sites: (scene) =>
      comments(scene).map((c) => () => {
        const { text } = c.sheet;
        const line = { start: lineStart(text, c.start), end: lineEnd(text, c.start) };
        if (text.slice(line.start, c.start).trim() !== '') return undefined;
        // The lines above are those of the entry before.
        let at = line.start;
        for (let i = 0; i < 3; i += 1) at = lineStart(text, Math.max(0, at - 1));
        return slip(c.sheet, [
          { start: at, end: at, put: textOf(c.sheet, line) },
          { ...line, put: '' },
        ]);
      }),
  },
];
