/** The forms of head that a fastener can have, as far as they decide wrench and bearing face. */

/** `stud` is a stud with nut: its wrench and bearing face are those of the nut. */
export type Head =
  | 'hexagon'
  | 'hexagon DIN'
  | 'heavy hexagon'
  | 'hexagon flange'
  | 'hexagon flange heavy'
  | 'socket'
  | 'button'
  | 'countersunk socket'
  | 'set screw'
  | 'stud';

/** Every head with the name under which people know it, in the order of a drop-down list. */
export const HEADS: readonly { readonly id: Head; readonly name: string }[] = [
  { id: 'hexagon', name: 'hexagon head' },
  { id: 'hexagon DIN', name: 'hexagon head to the withdrawn DIN 931 and 933' },
  { id: 'heavy hexagon', name: 'heavy hexagon head' },
  { id: 'hexagon flange', name: 'hexagon flange head, small series' },
  { id: 'hexagon flange heavy', name: 'hexagon flange head, heavy series' },
  { id: 'socket', name: 'socket head cap screw' },
  { id: 'button', name: 'button head with socket' },
  { id: 'countersunk socket', name: 'countersunk head with socket' },
  { id: 'set screw', name: 'socket set screw' },
  { id: 'stud', name: 'stud with nut' },
];
