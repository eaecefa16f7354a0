/** Published widths across flats of nuts, by nominal size. */

import { HEX_DIN, PART, table, type WrenchTable } from './wrench-sizes.ts';

export const HEX_NUT_ISO = table(
  'across flats',
  'ISO 4032',
  `ISO 4032 table; ${PART}`,
  `M1.6:3.2 | M2:4 | M2.5:5 | M3:5.5 | M3.5:6 | M4:7 | M5:8 | M6:10 | M7:11 | M8:13 | M10:16 | M12:18 | M14:21 | M16:24
   | M18:27 | M20:30 | M22:34 | M24:36 | M27:41 | M30:46 | M33:50 | M36:55 | M39:60 | M42:65 | M45:70 | M48:75 | M52:80
   | M56:85 | M60:90 | M64:95`,
);

/** The widths of DIN 931 hold for the nut too. */
export const HEX_NUT_DIN: WrenchTable = {
  ...HEX_DIN,
  standard: 'DIN 934 (withdrawn)',
  source: `DIN 934 table; ${PART}`,
  sizes: { ...HEX_DIN.sizes, M85: '120' },
};

export const HEX_NUT_INCH = table(
  'across flats',
  'ASME B18.2.2',
  `ASME B18.2.2 hex nut table; ${PART}`,
  `1/4:7/16 | 5/16:1/2 | 3/8:9/16 | 7/16:11/16 | 1/2:3/4 | 9/16:7/8 | 5/8:15/16 | 3/4:1 1/8 | 7/8:1 5/16 | 1:1 1/2
   | 1 1/8:1 11/16 | 1 1/4:1 7/8 | 1 3/8:2 1/16 | 1 1/2:2 1/4`,
);

/** Below 1/4 in, and for machine screws; memory. */
export const MACHINE_NUT_INCH = table(
  'across flats',
  'ASME B18.6.3 machine screw nut',
  'ASME B18.6.3 hexagon machine screw nut table (memory)',
  '#0:5/32 | #1:5/32 | #2:3/16 | #3:3/16 | #4:1/4 | #5:5/16 | #6:5/16 | #8:11/32 | #10:3/8 | #12:7/16',
);

export const HEAVY_NUT_INCH = table(
  'across flats',
  'ASME B18.2.2 heavy hex',
  `ASME B18.2.2 heavy hex nut table; ${PART}`,
  `1/4:1/2 | 5/16:9/16 | 3/8:11/16 | 7/16:3/4 | 1/2:7/8 | 9/16:15/16 | 5/8:1 1/16 | 3/4:1 1/4 | 7/8:1 7/16 | 1:1 5/8
   | 1 1/8:1 13/16 | 1 1/4:2 | 1 3/8:2 3/16 | 1 1/2:2 3/8 | 1 5/8:2 9/16 | 1 3/4:2 3/4 | 1 7/8:2 15/16 | 2:3 1/8
   | 2 1/4:3 1/2 | 2 1/2:3 7/8 | 2 3/4:4 1/4 | 3:4 5/8 | 3 1/4:5 | 3 1/2:5 3/8 | 3 3/4:5 3/4 | 4:6 1/8`,
);

/** Heavy nuts and bolts of ASTM flange studs; M20 differs from EN 14399-4. */
export const HEAVY_HEX_ASME_METRIC = table(
  'across flats',
  'ASME B18.2.4.6M',
  'ASME B18.2.4.6M table (memory)',
  `M12:21 | M14:24 | M16:27 | M20:34 | M22:36 | M24:41 | M27:46 | M30:50 | M36:60 | M42:70 | M48:80 | M56:90 | M64:100
   | M72:110 | M80:120 | M90:135 | M100:150`,
);
