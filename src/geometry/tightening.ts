/** The order in which the fasteners of a pattern are tightened. */

import { balancedOrder } from './balanced-order.ts';
import { circleOrder, crossOrder, upTo } from './circle-order.ts';
import { circlesOrder } from './circles-order.ts';
import { lineOrder } from './line-order.ts';
import { countingSign, type Pattern, patternCount, patternHoles } from './pattern.ts';
import { quadrantOrder } from './quadrant-order.ts';
import {
  complete,
  type Method,
  type Sequence,
  type SequenceOptions,
  type SequenceParts,
  type Tools,
} from './sequence.ts';
import { defaultMethod, sequenceFault } from './sequence-fault.ts';
import { spiralOrder } from './spiral-order.ts';

/**
 * Order for any pattern, each hole once. Circle: the ASME PCC-1 legacy cross pattern for its published counts, else
 * opposite pairs, a star for odd counts, groups for large rings. Concentric circles: crosswise as one ring. Arc: from its
 * middle outwards, over more than a half circle by balance from the middle. Rectangle, row, slot, listed points: from the centre outwards.
 * Throws RangeError on options that `sequenceFault` refuses.
 */
export function tighteningSequence(p: Pattern, options: SequenceOptions = {}): Sequence {
  const fault = sequenceFault(p, options);
  if (fault !== undefined) throw new RangeError(fault.problem);
  const { method = defaultMethod(p), tools = 1 } = options;
  return complete(tools === 1 ? singly(p, method) : together(p, method, tools), method, tools);
}

/** Going round hole by hole in the order of the numbers: for circular passes, and to compare a sequence with. */
export function circularSequence(p: Pattern): Sequence {
  return tighteningSequence(p, { method: 'in turn' });
}

function singly(p: Pattern, method: Method): SequenceParts {
  const count = patternCount(p);
  switch (method) {
    case 'in turn':
      return { order: upTo(count), rule: inTurnRule(p) };
    case 'quadrants':
      return quadrantOrder(count);
    case 'cross':
      return crosswise(p);
    case 'spiral':
      return p.kind === 'arc' ? lineOrder(count) : spiralOrder(patternHoles(p));
  }
}

function crosswise(p: Pattern): SequenceParts {
  if (p.kind === 'circles') return circlesOrder(p);
  if (p.kind === 'arc') return balancedOrder(patternHoles(p), Math.ceil(p.count / 2));
  if (p.kind !== 'circle') return crossOrder(patternCount(p));
  const parts = circleOrder(p.count);
  if (countingSign(p) === 1) return parts;
  // The table counts clockwise: counted the other way the order is its mirror image, and no longer the table's.
  const { published: _, ...unpublished } = parts;
  return unpublished;
}

/** With two or four tools; always single bolts, so that those of a move lie opposite. Source: memory of ASME PCC-1-2013 App. F. */
function together(p: Pattern, method: Method, tools: Tools): SequenceParts {
  const count = patternCount(p);
  const order =
    method === 'quadrants'
      ? quadrantOrder(count).order
      : p.kind === 'circles'
        ? circlesOrder(p).order
        : crossOrder(count).order;
  const how = method === 'quadrants' ? 'quadrant by quadrant' : 'crosswise';
  const which = tools === 2 ? 'each bolt together with the one opposite' : 'four bolts a quarter turn apart together';
  return { order, rule: `With ${tools} tools, ${how}: ${which}.` };
}

function inTurnRule(p: Pattern): string {
  return p.kind === 'circles'
    ? 'In turn from neighbour to neighbour, one circle after the other.'
    : 'In turn, in the order of the hole numbers.';
}
