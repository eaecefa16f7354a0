/** A kind of mistake: where in a shop a hand can slip this way, and which checks are meant to catch it. */

import type { Code } from '../../../src/diagnostics/index.ts';
import type { Random } from '../random.ts';
import type { Slip } from './edit.ts';
import type { Scene } from './scene.ts';

/** One place at which the slip can happen; undefined when what the seed chose there would be no mistake. */
export type Site = (random: Random) => Slip | undefined;

export interface Kind {
  /** What the author did: `two digits of a torque exchanged`. */
  readonly name: string;
  /** Any of these is meant to catch it. */
  readonly checks: readonly Code[];
  readonly sites: (scene: Scene) => readonly Site[];
  /** The mistake shows only between procedures, so it is made in the whole shop. */
  readonly whole?: true;
  /** The mistake is made in what is issued, or shows only beside it. */
  readonly ledger?: true;
}
