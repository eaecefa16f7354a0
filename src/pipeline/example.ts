/** Runs the example of a check through every stage, as an author's shop would be. */

import { type Check, type Edit, EXAMPLE_SHOP, edited, type Mark } from '../rules/index.ts';
import { readMemory } from '../source/index.ts';
import { type Compiled, compileFiles } from './compile.ts';

/** How the folder of the example shop is called in diagnostics. */
export const EXAMPLE_FOLDER = 'shop';

export interface ExampleRun extends Pick<Compiled, 'diagnostics' | 'textOf'> {
  /** Places marked in the edits. */
  readonly marks: readonly Mark[];
}

export function runExample(edits: readonly Edit[], disk: Check['example']['disk'] = {}): ExampleRun {
  const { files, marks } = edited(EXAMPLE_SHOP, edits);
  const { diagnostics, textOf } = compileFiles(
    (report) => readMemory(files, disk, EXAMPLE_FOLDER, report),
    EXAMPLE_FOLDER,
    { cards: 'suspect' },
  );
  return { diagnostics, textOf, marks };
}
