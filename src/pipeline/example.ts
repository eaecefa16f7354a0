/** Runs the example of a check through every stage, as an author's shop would be. */

import { ISSUED, KEYS, memoryFiles } from '../control/index.ts';
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
  const ofControl = (name: string): boolean => name.startsWith(`${ISSUED}/`) || name.startsWith(`${KEYS}/`);
  const content = files.filter((f) => !ofControl(f.relative));
  const issued = memoryFiles(new Map(files.filter((f) => ofControl(f.relative)).map((f) => [f.relative, f.content])));
  const { diagnostics, textOf } = compileFiles(
    (report) => readMemory(content, disk, EXAMPLE_FOLDER, report),
    EXAMPLE_FOLDER,
    { cards: 'suspect', issued },
  );
  return { diagnostics, textOf, marks };
}
