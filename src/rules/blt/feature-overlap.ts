/** A dowel or jacking screw overlaps a bolt hole, or has no place. */

import type { Check } from '../check.ts';

export const featureOverlap: Check = {
  code: 'BLT005',
  name: 'feature-overlap',
  severity: 'error',
  title: 'A dowel or jacking screw overlaps a bolt hole, or has no place.',
  why: 'A dowel drawn where a bolt stands was copied wrongly; the cover goes on a hole out of place, or not at all.',
  sources: ['geometry'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    dowels: [«{ circle: 240 mm, at: 22.5 deg, diameter: 10 mm }»]\n',
      },
    ],
    good: [
      {
        file: 'machines/pump.yaml',
        from: '    socket: socket-24\n',
        to: '    socket: socket-24\n    dowels: [{ circle: 240 mm, at: 0 deg, diameter: 10 mm }]\n',
      },
    ],
  },
  found: 'resolving',
};
