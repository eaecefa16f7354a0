/** What the rounds leave in each bolt, for a joint of which only the kind of faces is known. */

import { boltLine, circularSequence } from '../../../geometry/index.ts';
import {
  defaultStack,
  interactionWords,
  predictInteraction,
  type RoundPrediction,
  type StackKind,
} from '../../../torque/index.ts';
import { formatDecimal } from '../../../units/index.ts';
import type { Worksheet } from './compute.ts';
import type { Inputs } from './fields.ts';

/** Beyond this many bolts the model takes longer than a page should wait for a key. */
const MOST_BOLTS = 60;

const KINDS: readonly StackKind[] = ['metal to metal', 'sheet gasket', 'rubber gasket'];

export interface Prediction {
  readonly rounds: readonly { readonly name: string; readonly prediction: RoundPrediction }[];
  readonly onePass: RoundPrediction;
  readonly words: string;
}

/** The prediction, or in words why there is none. */
export function predictLeft(inputs: Inputs, { fastener, layout, read }: Worksheet): Prediction | string {
  const { thread } = fastener;
  const { tightening } = read;
  if (thread === undefined || layout === undefined || tightening === undefined)
    return 'Not computed: a field is to be mended.';
  const line = boltLine(layout.pattern);
  if (line === undefined) return 'The model knows only bolts on one closed line: a circle, a slot, a rectangle.';
  if (layout.holes.length > MOST_BOLTS) return `The picture is drawn for up to ${MOST_BOLTS} bolts.`;
  const kind = KINDS.find((k) => k === inputs.face) ?? 'sheet gasket';
  const stack = defaultStack(thread, kind, line.lengthMm / layout.holes.length);
  const round = circularSequence(layout.pattern);
  const found = predictInteraction(
    line.positionsMm,
    line.lengthMm,
    stack,
    tightening.rounds.map(({ share, pass }) => ({
      share,
      order: (pass === 'circular' ? round : layout.sequence).moves,
    })),
  );
  return {
    onePass: found.onePass,
    words: interactionWords(found),
    rounds: found.rounds.flatMap((prediction, i) => {
      const made = tightening.rounds[i];
      if (made === undefined) return [];
      const how = made.pass === 'circular' ? 'all round' : `${formatDecimal(made.share * 100, 0)} %`;
      return [{ name: `Round ${made.number}, ${how}`, prediction }];
    }),
  };
}
