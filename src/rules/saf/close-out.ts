/** The points of the close-out, and the check that one of them is there. */

import { keyPlaceOf } from '../../resolve/index.ts';
import type { Fault, Run } from '../check.ts';
import { eachVariant, lookUp, type Scene } from '../rule.ts';
import { opens } from './energy.ts';
import { inEnglish } from './words.ts';

/** As the author writes it in `close_out`. */
export type Point = 'turned by hand' | 'tools counted' | 'guards refitted' | 'own locks removed';

/** Reports a card on which no step does the point, when it has to be done there. */
export function pointMissing(
  point: Point,
  needed: (scene: Scene) => boolean,
  words: { readonly message: string; readonly step: string },
): Run {
  return eachVariant(function* (scene): Iterable<Fault> {
    const { document, steps } = scene;
    if (document.incomplete || !needed(scene) || steps.some((s) => s.closeOut.includes(point))) return;
    yield {
      range: keyPlaceOf(document, 'stages'),
      message: words.message,
      hint: `give the step that ${words.step} \`close_out: [${point}]\`, or add such a step at the end, while the locks are still on`,
    };
  });
}

/** Loosens, takes off or fits anything at all. */
export function opensAnything({ steps }: Scene): boolean {
  return steps.some(opens);
}

/** Hangs a lock or a tag: gear for locking out is more than locks. */
export function usesLocks(scene: Scene): boolean {
  return scene.steps.some((s) => s.tools.some((id) => isLock(scene, id)));
}

export function isLock({ shop }: Scene, id: string): boolean {
  const tool = lookUp(shop).tool(id);
  return tool?.kind === 'lockout' && (!inEnglish(shop) || /lock|\btags?\b/iu.test(tool.name));
}
