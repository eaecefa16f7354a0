/** Which methods and numbers of tools suit which pattern. */

import type { PatternFault } from './check-pattern.ts';
import { isClosed, type Pattern, patternCount } from './pattern.ts';
import type { Method, SequenceOptions } from './sequence.ts';

/** A ring of fewer has no quadrants worth the name. Common practice, no source. */
const LEAST_FOR_QUADRANTS = 16;

/** Up to a half circle the ends of an arc lie on one side of it; beyond, holes come to lie opposite each other. */
const HALF_CIRCLE_DEG = 180;

/** Cross for circles and for arcs over more than a half circle, spiral for all other layouts. */
export function defaultMethod(p: Pattern): Method {
  if (p.kind === 'arc') return p.spanDeg > HALF_CIRCLE_DEG ? 'cross' : 'spiral';
  return p.kind === 'circle' || p.kind === 'circles' ? 'cross' : 'spiral';
}

/** Why this sequence cannot be had on this pattern; undefined when it can. The pattern itself is sound. */
export function sequenceFault(p: Pattern, options: SequenceOptions): PatternFault | undefined {
  const { method = defaultMethod(p), tools = 1 } = options;
  return methodFault(p, method) ?? (tools === 1 ? undefined : toolsFault(p, method, tools));
}

function methodFault(p: Pattern, method: Method): PatternFault | undefined {
  if (method === 'cross' && !hasOpposites(p)) {
    return { problem: `${named(p)} has no opposite holes to go crosswise`, hint: 'use `spiral` or `in turn`' };
  }
  if (method === 'spiral' && p.kind === 'circle') {
    return {
      problem: 'all holes of a circle lie equally far from its centre: there is no spiral',
      hint: 'use `cross`',
    };
  }
  if (method !== 'quadrants') return undefined;
  if (p.kind !== 'circle') {
    return { problem: `${named(p)} has no quadrants`, hint: 'quadrants are for one full circle' };
  }
  if (p.count < LEAST_FOR_QUADRANTS || p.count % 4 !== 0) {
    return {
      problem: `\`${p.count}\` holes do not make quadrants`,
      hint: `quadrants need at least ${LEAST_FOR_QUADRANTS} holes, and a count that four divides; use \`cross\``,
    };
  }
  return undefined;
}

function toolsFault(p: Pattern, method: Method, tools: 2 | 4): PatternFault | undefined {
  if (p.kind !== 'circle' && p.kind !== 'circles') {
    return {
      problem: `\`${tools}\` tools at once need opposite holes: ${named(p)} is worked with one`,
      hint: 'use one tool',
    };
  }
  if (method !== 'cross' && method !== 'quadrants') {
    return {
      problem: `\`${tools}\` tools at once do not go with the method \`${method}\``,
      hint: 'use `cross`, or `quadrants` on a large circle',
    };
  }
  const counts = p.kind === 'circle' ? [patternCount(p)] : p.circles.map((c) => c.count);
  const odd = counts.find((count) => count % tools !== 0);
  if (odd === undefined) return undefined;
  return tools === 2
    ? {
        problem: `\`${odd}\` holes have no opposite pairs for 2 tools`,
        hint: 'two tools need an even count; use one tool',
      }
    : {
        problem: `\`${odd}\` holes do not make fours a quarter turn apart for 4 tools`,
        hint: `four tools need a count that four divides; use ${odd % 2 === 0 ? 'one or two tools' : 'one tool'}`,
      };
}

function hasOpposites(p: Pattern): boolean {
  if (p.kind === 'arc') return p.spanDeg > HALF_CIRCLE_DEG;
  return p.kind === 'circle' || isClosed(p);
}

function named(p: Pattern): string {
  switch (p.kind) {
    case 'arc':
      return 'an arc';
    case 'points':
      return 'a list of points';
    case 'rectangle':
      return isClosed(p) ? 'a rectangle' : 'a single row';
    case 'slot':
      return 'a slot';
    case 'circle':
      return 'a circle';
    case 'circles':
      return 'a set of circles';
  }
}
