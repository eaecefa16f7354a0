/** ASME B16.5 pipe flanges, drilling by class and NPS. */

import { type Flange, straddling } from './flange-type.ts';
import { parseThread } from './parse-thread.ts';
import { MM_PER_INCH } from './thread.ts';

export interface AsmeSize {
  /** As printed: `4`, `1 1/2`. */
  readonly nps: string;
  readonly pressureClass: number;
  readonly flange: Flange;
}

/**
 * `NPS:circle in/circle mm or -/count/bolt in`. ASME B16.5-2009 drilling tables in inches and millimetres; class 900
 * begins at NPS 3, since smaller flanges are those of class 1500. Classes 600, 900 and 1500 and every second row of 150
 * and 300 were read in public data files (the bolt of NPS 24 class 1500 from its hole); the others are memory, most of
 * their circles and counts seen rounded to the millimetre. The millimetres of classes 300 and 600 are memory.
 */
const TABLES: Readonly<Record<number, string>> = {
  150: `1/2:2.38/60.3/4/1/2 | 3/4:2.75/69.9/4/1/2 | 1:3.12/79.4/4/1/2 | 1 1/4:3.50/88.9/4/1/2 | 1 1/2:3.88/98.4/4/1/2
    | 2:4.75/120.7/4/5/8 | 2 1/2:5.50/139.7/4/5/8 | 3:6.00/152.4/4/5/8 | 3 1/2:7.00/177.8/8/5/8 | 4:7.50/190.5/8/5/8
    | 5:8.50/215.9/8/3/4 | 6:9.50/241.3/8/3/4 | 8:11.75/298.5/8/3/4 | 10:14.25/362.0/12/7/8 | 12:17.00/431.8/12/7/8
    | 14:18.75/476.3/12/1 | 16:21.25/539.8/16/1 | 18:22.75/577.9/16/1 1/8 | 20:25.00/635.0/20/1 1/8
    | 24:29.50/749.3/20/1 1/4`,
  300: `1/2:2.62/66.7/4/1/2 | 3/4:3.25/82.6/4/5/8 | 1:3.50/88.9/4/5/8 | 1 1/4:3.88/98.4/4/5/8 | 1 1/2:4.50/114.3/4/3/4
    | 2:5.00/127.0/8/5/8 | 2 1/2:5.88/149.2/8/3/4 | 3:6.62/168.3/8/3/4 | 3 1/2:7.25/184.2/8/3/4 | 4:7.88/200.0/8/3/4
    | 5:9.25/235.0/8/3/4 | 6:10.62/269.9/12/3/4 | 8:13.00/330.2/12/7/8 | 10:15.25/387.4/16/1 | 12:17.75/450.8/16/1 1/8
    | 14:20.25/514.4/20/1 1/8 | 16:22.50/571.5/20/1 1/4 | 18:24.75/628.6/24/1 1/4 | 20:27.00/685.8/24/1 1/4
    | 24:32.00/812.8/24/1 1/2`,
  600: `1/2:2.62/66.7/4/1/2 | 3/4:3.25/82.6/4/5/8 | 1:3.50/88.9/4/5/8 | 1 1/4:3.88/98.4/4/5/8 | 1 1/2:4.50/114.3/4/3/4
    | 2:5.00/127.0/8/5/8 | 2 1/2:5.88/149.2/8/3/4 | 3:6.62/168.3/8/3/4 | 3 1/2:7.25/184.2/8/7/8 | 4:8.50/215.9/8/7/8
    | 5:10.50/266.7/8/1 | 6:11.50/292.1/12/1 | 8:13.75/349.2/12/1 1/8 | 10:17.00/431.8/16/1 1/4 | 12:19.25/489.0/20/1 1/4
    | 14:20.75/527.0/20/1 3/8 | 16:23.75/603.2/20/1 1/2 | 18:25.75/654.0/20/1 5/8 | 20:28.50/723.9/24/1 5/8
    | 24:33.00/838.2/24/1 7/8`,
  900: `3:7.50/-/8/7/8 | 4:9.25/-/8/1 1/8 | 5:11.00/-/8/1 1/4 | 6:12.50/-/12/1 1/8 | 8:15.50/-/12/1 3/8
    | 10:18.50/-/16/1 3/8 | 12:21.00/-/20/1 3/8 | 14:22.00/-/20/1 1/2 | 16:24.25/-/20/1 5/8 | 18:27.00/-/20/1 7/8
    | 20:29.50/-/20/2 | 24:35.50/-/20/2 1/2`,
  1500: `1/2:3.25/-/4/3/4 | 3/4:3.50/-/4/3/4 | 1:4.00/-/4/7/8 | 1 1/4:4.38/-/4/7/8 | 1 1/2:4.88/-/4/1 | 2:6.50/-/8/7/8
    | 2 1/2:7.50/-/8/1 | 3:8.00/-/8/1 1/8 | 4:9.50/-/8/1 1/4 | 5:11.50/-/8/1 1/2 | 6:12.50/-/12/1 3/8 | 8:15.50/-/12/1 5/8
    | 10:19.00/-/12/1 7/8 | 12:22.50/-/16/2 | 14:25.00/-/16/2 1/4 | 16:27.75/-/16/2 1/2 | 18:30.50/-/16/2 3/4
    | 20:32.75/-/16/3 | 24:39.00/-/16/3 1/2`,
};

/** Classes that were read as a whole. */
const READ = [600, 900, 1500];

const ROW = /^\s*([\d /]+):([\d.]+)\/([\d.]+|-)\/(\d+)\/([\d /]+?)\s*$/;

function flange(pressureClass: number, row: string): AsmeSize {
  const [, nps = '', circleIn = '', circleMm = '', count = '', bolt = ''] = ROW.exec(row) ?? [];
  const thread = boltThread(bolt);
  return {
    nps,
    pressureClass,
    flange: {
      designation: `ASME B16.5 NPS ${nps} class ${pressureClass}`,
      standard: 'ASME B16.5',
      boltCircleMm: exact(Number(circleIn) * MM_PER_INCH),
      boltCircleIn: Number(circleIn),
      ...(circleMm === '-' ? {} : { boltCircleMmPrinted: Number(circleMm) }),
      count: Number(count),
      thread: thread.designation,
      // ASME B16.5: the hole is 1/8 in larger than the bolt.
      boltHoleMm: exact(thread.diameterMm + MM_PER_INCH / 8),
      firstDeg: straddling(Number(count)),
      source: `ASME B16.5-2009, drilling of class ${pressureClass}; ${READ.includes(pressureClass) ? 'read' : 'part read, the rest memory'}`,
    },
  };
}

/** Takes the noise of the binary product away: all these lengths have at most four decimals. */
function exact(mm: number): number {
  return Math.round(mm * 1e4) / 1e4;
}

/** Flange bolts are UNC to 1 in and 8UN above (ASME B16.5, Bolting). */
function boltThread(size: string) {
  const thread = [parseThread(`${size}-8 8UN`), parseThread(`${size} UNC`)].find((t) => t.ok);
  if (thread?.ok !== true) throw new RangeError(`no flange bolt of ${size} in`);
  return thread.value;
}

/** By class, then NPS. */
export const ASME_SIZES: readonly AsmeSize[] = Object.entries(TABLES).flatMap(([pressureClass, rows]) =>
  rows.split('|').map((row) => flange(Number(pressureClass), row)),
);

export const FLANGES_ASME: readonly Flange[] = ASME_SIZES.map((s) => s.flange);
