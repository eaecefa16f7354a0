/** DRAFT across a side, behind its text: stencil letters from corner to corner of the text area. */

import type { Drawing, PathMark, Point } from '../drawing/index.ts';
import { type Format, leftOf, textWidthOf } from './format.ts';
import { PT_PER_MM } from './items.ts';
import type { PlacedBlock } from './paginate.ts';

type Shape = readonly (readonly [number, number])[];

/** Letters on a field of 7 by 10, cut as a stencil: no part has a hole. Ours. */
const BAR: Shape = [
  [0, 0],
  [2, 0],
  [2, 10],
  [0, 10],
];
const LETTERS: readonly (readonly Shape[])[] = [
  [
    BAR,
    [
      [2.6, 0],
      [5, 0],
      [7, 2],
      [7, 8],
      [5, 10],
      [2.6, 10],
      [2.6, 8],
      [4.2, 8],
      [5, 7.2],
      [5, 2.8],
      [4.2, 2],
      [2.6, 2],
    ],
  ],
  [
    BAR,
    [
      [2.6, 0],
      [5.2, 0],
      [7, 1.8],
      [7, 4.4],
      [5.4, 6],
      [2.6, 6],
      [2.6, 4],
      [4.4, 4],
      [5, 3.4],
      [5, 2.6],
      [4.4, 2],
      [2.6, 2],
    ],
    [
      [2.9, 6.6],
      [5.1, 6.6],
      [7, 10],
      [4.8, 10],
    ],
  ],
  [
    [
      [0, 10],
      [0, 2],
      [2, 0],
      [3.2, 0],
      [3.2, 2],
      [2.8, 2],
      [2, 2.8],
      [2, 10],
    ],
    [
      [3.8, 0],
      [5, 0],
      [7, 2],
      [7, 10],
      [5, 10],
      [5, 2.8],
      [4.2, 2],
      [3.8, 2],
    ],
    [
      [2.6, 5],
      [4.4, 5],
      [4.4, 7],
      [2.6, 7],
    ],
  ],
  [
    [
      [0, 0],
      [7, 0],
      [7, 2],
      [2, 2],
      [2, 4.2],
      [5.8, 4.2],
      [5.8, 6.2],
      [2, 6.2],
      [2, 10],
      [0, 10],
    ],
  ],
  [
    [
      [0, 0],
      [7, 0],
      [7, 2],
      [4.5, 2],
      [4.5, 10],
      [2.5, 10],
      [2.5, 2],
      [0, 2],
    ],
  ],
];
const PITCH = 8.8;
const LENGTH = PITCH * (LETTERS.length - 1) + 7;
const HEIGHT = 10;

const drawings = new Map<Format['name'], Drawing>();

/** The mark for a side, to be painted before everything else of it. */
export function draftMark(format: Format, side: number): PlacedBlock {
  const drawing = drawings.get(format.name) ?? markFor(format);
  drawings.set(format.name, drawing);
  return {
    x: leftOf(format, side),
    y: format.top,
    block: {
      height: drawing.height * PT_PER_MM,
      decoration: [{ kind: 'drawing', x: 0, y: 0, drawing }],
      nodes: [],
    },
  };
}

/** As large as the text area takes it, rising from its lower left to its upper right corner. */
function markFor(format: Format): Drawing {
  const width = textWidthOf(format) / PT_PER_MM;
  const height = (format.height - format.top - format.bottom) / PT_PER_MM;
  const angle = Math.atan2(height, width);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const scale = Math.min(width / (LENGTH * cos + HEIGHT * sin), height / (LENGTH * sin + HEIGHT * cos));
  const at = ([x, y]: readonly [number, number]): Point => {
    const [along, across] = [(x - LENGTH / 2) * scale, (y - HEIGHT / 2) * scale];
    return { x: width / 2 + along * cos + across * sin, y: height / 2 - along * sin + across * cos };
  };
  const marks = LETTERS.flatMap((shapes, i) =>
    shapes.map(
      (shape): PathMark => ({
        kind: 'path',
        points: shape.map(([x, y]) => at([x + i * PITCH, y])),
        curved: false,
        closed: true,
        stroke: 'none',
        ink: 'tint',
        fill: 'tint',
      }),
    ),
  );
  return { width, height, title: 'DRAFT', description: 'The word DRAFT from corner to corner.', marks };
}
