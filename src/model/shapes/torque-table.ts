/** Shape of a torque table typed from a manual. */

import { z } from 'zod';
import { id, quantity, source, words } from './common.ts';

const cell = z.union([
  quantity('Torque'),
  z
    .strictObject({ torque: quantity('Torque'), second: quantity('The same in the other unit') })
    .meta({ description: 'Both columns of a manual that prints two units' }),
]);

export const statedTableShape = z
  .strictObject({
    id,
    title: words,
    source: source.meta({ description: 'Document, edition and place from which it was typed' }),
    condition: id.meta({ description: 'Joint condition for which the manual gives it' }),
    preload: quantity('Share of the proof load that the manual aims at'),
    reason: words.optional().meta({ description: 'Why the table as a whole lies outside the computed bands' }),
    rows: z
      .record(words, z.record(words, cell))
      .meta({ description: 'Thread, then property class or grade, then torque: M10: { "8.8": 45 N·m }' }),
    note: words.optional(),
  })
  .meta({ title: 'Torque table from a manual' });
