/** Orders to take parts off and put them on, read from the words of a step. The sentences are workshop English (common practice). */

import { describe, expect, test } from 'vitest';
import type { Prose } from '../../src/resolve/index.ts';
import { ordersOf } from '../../src/rules/prt/ordered-moves.ts';

/** `{part}` and `{tool:x}` in braces stand for references. */
function prose(text: string): Prose {
  const runs = text.split(/(\{[^}]+\})/).map((piece) => {
    if (!piece.startsWith('{')) return { text: piece };
    const [kind, id = ''] = piece.includes(':') ? piece.slice(1, -1).split(':') : ['part', piece.slice(1, -1)];
    return { text: id, ref: { kind: kind as 'part' | 'tool', id } };
  });
  return [{ kind: 'paragraph', runs }];
}

function read(text: string): string {
  return ordersOf(prose(text))
    .map((o) => `${o.kind} ${o.part}`)
    .join(', ');
}

describe('orders', () => {
  test.each([
    ['Remove the {cover}.', 'off cover'],
    ['Take off the {cover} and the old {gasket}.', 'off cover, off gasket'],
    ['Take the {cover} off its studs.', 'off cover'],
    ['Lift the {cover} clear with the {tool:hoist}.', 'off cover'],
    ['Unscrew the {bowl} with the {tool:strap}.', 'off bowl'],
    ['Withdraw each {pin} with the {tool:puller}.', 'off pin'],
    ['Press the {seal} and the {cup} out of the cover.', 'off seal, off cup'],
    ['When the oil has run off, take out the {plug}.', 'off plug'],
    ['Draw the old {gasket}.', 'off gasket'],
    ['Take off the nuts, the washers and the old {plate}.', 'off plate'],
    ['Fit the {cover}.', 'on cover'],
    ['Refit both {guard}s.', 'on guard'],
    ['Lay the new {gasket} dry into the recess.', 'on gasket'],
    ['Slide the {ring} and then the {seal} onto the shaft.', 'on ring, on seal'],
    ['Screw in the {plug}.', 'on plug'],
    ['Push the {impeller}, lines together, onto its key.', 'on impeller'],
    ['Put the {guard} back.', 'on guard'],
    ['Insert the {key} and slide the {hub} on.', 'on key, on hub'],
    ['By hand, screw the {plug} into the cover.', 'on plug'],
  ])('%s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });
});

describe('no orders', () => {
  test.each([
    'Measure the {cover}.',
    'Look for cracks round the {cover}.',
    'Turn the {shaft} by hand.',
    'Lay the {cover} on the bench, face up.',
    'Lay the {shaft} in the {tool:blocks}.',
    'Set the {cover} on two wooden blocks.',
    'Push the {tool:brush} through each tube of the {stack}.',
    'Lift the {cover} by a finger and listen.',
    'Remove all grease from the {shaft}.',
    'Remove the {plug} if it is there.',
    'Replace each {screw} that is necked.',
    'Press the {disc} to its seat.',
    'Do not remove the {cover}.',
    'Tighten the {screw} by hand.',
    'Draw the {cover} up evenly by hand.',
    'Fit a new seal to the {cover}.',
    'Wipe oil off the {cover}.',
    'Push the {rod} the full stroke and back by hand.',
    'Take a photograph of the {gasket}.',
    'Slide a feeler between the {cover} and the shell.',
    'Lower the {shaft} into the {tool:v-blocks}.',
    'Hold the {cover} while a second person takes the weight off.',
  ])('%s', (text) => {
    expect(read(text)).toBe('');
  });
});
