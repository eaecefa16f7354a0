/** Published widths across flats and key sizes of heads and screws, by nominal size. */

export interface WrenchTable {
  readonly kind: 'across flats' | 'key';
  readonly standard: string;
  readonly source: string;
  /** Metric tables: mm by `M16`. Inch tables: fraction or decimal of an inch by `5/8`. */
  readonly sizes: Readonly<Record<string, string>>;
}

/** `rows` is written `M16:24 | M20:30`. */
export function table(kind: WrenchTable['kind'], standard: string, source: string, rows: string): WrenchTable {
  const pairs = rows
    .trim()
    .split(/\s*\|\s*/)
    .map((pair) => pair.split(':').map((s) => s.trim()));
  return { kind, standard, source, sizes: Object.fromEntries(pairs) };
}

/** Where most tables come from. */
export const PART = 'part read in reprints and open parts data sets, the rest memory';

export const HEX_ISO = table(
  'across flats',
  'ISO 4014 and ISO 4017',
  `ISO 4014:2011 and ISO 4017 tables; ${PART}`,
  `M1.6:3.2 | M2:4 | M2.5:5 | M3:5.5 | M3.5:6 | M4:7 | M5:8 | M6:10 | M7:11 | M8:13 | M10:16 | M12:18 | M14:21 | M16:24
   | M18:27 | M20:30 | M22:34 | M24:36 | M27:41 | M30:46 | M33:50 | M36:55 | M39:60 | M42:65 | M45:70 | M48:75 | M52:80
   | M56:85 | M60:90 | M64:95`,
);

export const HEX_DIN = table(
  'across flats',
  'DIN 931 and DIN 933 (withdrawn)',
  `DIN 931 and DIN 933 tables; ${PART}`,
  `M1.6:3.2 | M2:4 | M2.5:5 | M3:5.5 | M3.5:6 | M4:7 | M5:8 | M6:10 | M7:11 | M8:13 | M10:17 | M12:19 | M14:22 | M16:24
   | M18:27 | M20:30 | M22:32 | M24:36 | M27:41 | M30:46 | M33:50 | M36:55 | M39:60 | M42:65 | M45:70 | M48:75 | M52:80
   | M56:85 | M60:90 | M64:95 | M68:100 | M72:105 | M76:110 | M80:115 | M90:130 | M100:145`,
);

export const HEAVY_HEX_METRIC = table(
  'across flats',
  'EN 14399-4',
  'EN 14399-4 table; M16, M20, M24 and M36 memory',
  'M12:22 | M16:27 | M20:32 | M22:36 | M24:41 | M27:46 | M30:50 | M36:60',
);

export const FLANGE_SMALL = table(
  'across flats',
  'ISO 4162',
  'ISO 4162 table; M6, M10, M14 and M16 memory',
  'M5:7 | M6:8 | M8:10 | M10:13 | M12:15 | M14:18 | M16:21',
);

export const FLANGE_HEAVY = table(
  'across flats',
  'EN 1665',
  'EN 1665 table; M5, M8, M14 and M20 memory',
  'M5:8 | M6:10 | M8:13 | M10:16 | M12:18 | M14:21 | M16:24 | M20:30',
);

export const HEX_INCH = table(
  'across flats',
  'ASME B18.2.1',
  `ASME B18.2.1 hex cap screw and hex bolt tables; ${PART}`,
  `1/4:7/16 | 5/16:1/2 | 3/8:9/16 | 7/16:5/8 | 1/2:3/4 | 9/16:13/16 | 5/8:15/16 | 3/4:1 1/8 | 7/8:1 5/16 | 1:1 1/2
   | 1 1/8:1 11/16 | 1 1/4:1 7/8 | 1 3/8:2 1/16 | 1 1/2:2 1/4 | 1 5/8:2 7/16 | 1 3/4:2 5/8 | 1 7/8:2 13/16 | 2:3
   | 2 1/4:3 3/8 | 2 1/2:3 3/4 | 2 3/4:4 1/8 | 3:4 1/2 | 3 1/4:4 7/8 | 3 1/2:5 1/4 | 3 3/4:5 5/8 | 4:6`,
);

export const HEAVY_HEX_INCH = table(
  'across flats',
  'ASME B18.2.1 heavy hex',
  `ASME B18.2.1-2010 heavy hex table; ${PART}`,
  `1/2:7/8 | 5/8:1 1/16 | 3/4:1 1/4 | 7/8:1 7/16 | 1:1 5/8 | 1 1/8:1 13/16 | 1 1/4:2 | 1 3/8:2 3/16 | 1 1/2:2 3/8
   | 1 5/8:2 9/16 | 1 3/4:2 3/4 | 1 7/8:2 15/16 | 2:3 1/8 | 2 1/4:3 1/2 | 2 1/2:3 7/8 | 2 3/4:4 1/4 | 3:4 5/8`,
);

export const FLANGE_INCH = table(
  'across flats',
  'ASME B18.2.1 hex flange',
  'ASME B18.2.1 hex flange screw table (memory)',
  '1/4:3/8 | 5/16:1/2 | 3/8:9/16 | 7/16:5/8 | 1/2:3/4 | 9/16:13/16 | 5/8:15/16 | 3/4:1 1/8',
);

export const SOCKET_METRIC = table(
  'key',
  'ISO 4762 (M18, M22, M27 and M33: DIN 912)',
  `ISO 4762 and DIN 912 tables; ${PART}`,
  `M1.6:1.5 | M2:1.5 | M2.5:2 | M3:2.5 | M4:3 | M5:4 | M6:5 | M8:6 | M10:8 | M12:10 | M14:12 | M16:14 | M18:14 | M20:17
   | M22:17 | M24:19 | M27:19 | M30:22 | M33:24 | M36:27 | M42:32 | M48:36 | M56:41 | M64:46`,
);

export const BUTTON_METRIC = table(
  'key',
  'ISO 7380-1',
  `ISO 7380-1 table; ${PART}`,
  'M3:2 | M4:2.5 | M5:3 | M6:4 | M8:5 | M10:6 | M12:8 | M16:10',
);

export const COUNTERSUNK_METRIC = table(
  'key',
  'ISO 10642',
  `ISO 10642 table; ${PART}`,
  'M2:1.3 | M2.5:1.5 | M3:2 | M4:2.5 | M5:3 | M6:4 | M8:5 | M10:6 | M12:8 | M14:10 | M16:10 | M20:12',
);

export const SET_METRIC = table(
  'key',
  'ISO 4026 to ISO 4029',
  `ISO 4026 to ISO 4029 tables; ${PART}`,
  'M1.6:0.7 | M2:0.9 | M2.5:1.3 | M3:1.5 | M4:2 | M5:2.5 | M6:3 | M8:4 | M10:5 | M12:6 | M14:6 | M16:8 | M18:10 | M20:10 | M22:12 | M24:12',
);

export const SOCKET_INCH = table(
  'key',
  'ASME B18.3',
  `ASME B18.3 socket head cap screw table; ${PART}`,
  `#0:0.050 | #1:1/16 | #2:5/64 | #3:5/64 | #4:3/32 | #5:3/32 | #6:7/64 | #8:9/64 | #10:5/32 | #12:5/32 | 1/4:3/16
   | 5/16:1/4 | 3/8:5/16 | 7/16:3/8 | 1/2:3/8 | 5/8:1/2 | 3/4:5/8 | 7/8:3/4 | 1:3/4 | 1 1/8:7/8 | 1 1/4:7/8 | 1 3/8:1
   | 1 1/2:1 | 1 3/4:1 1/4 | 2:1 1/2 | 2 1/4:1 3/4 | 2 1/2:1 3/4 | 2 3/4:2 | 3:2 1/4 | 3 1/4:2 1/4 | 3 1/2:2 3/4
   | 3 3/4:2 3/4 | 4:3`,
);

export const BUTTON_INCH = table(
  'key',
  'ASME B18.3',
  `ASME B18.3-2008 Table 3; ${PART}`,
  `#0:0.035 | #1:0.050 | #2:0.050 | #3:1/16 | #4:1/16 | #5:5/64 | #6:5/64 | #8:3/32 | #10:1/8 | 1/4:5/32 | 5/16:3/16
   | 3/8:7/32 | 1/2:5/16 | 5/8:3/8`,
);

export const COUNTERSUNK_INCH = table(
  'key',
  'ASME B18.3',
  `ASME B18.3 flat countersunk head table; ${PART}`,
  `#0:0.035 | #1:0.050 | #2:0.050 | #3:1/16 | #4:1/16 | #5:5/64 | #6:5/64 | #8:3/32 | #10:1/8 | 1/4:5/32 | 5/16:3/16
   | 3/8:7/32 | 7/16:1/4 | 1/2:5/16 | 5/8:3/8 | 3/4:1/2 | 7/8:9/16 | 1:5/8 | 1 1/8:3/4 | 1 1/4:7/8 | 1 3/8:7/8 | 1 1/2:1`,
);

export const SET_INCH = table(
  'key',
  'ASME B18.3',
  `ASME B18.3 set screw table; ${PART}`,
  `#0:0.028 | #1:0.035 | #2:0.035 | #3:0.050 | #4:0.050 | #5:1/16 | #6:1/16 | #8:5/64 | #10:3/32 | 1/4:1/8 | 5/16:5/32
   | 3/8:3/16 | 7/16:7/32 | 1/2:1/4 | 5/8:5/16 | 3/4:3/8 | 7/8:1/2 | 1:9/16 | 1 1/8:9/16 | 1 1/4:5/8 | 1 3/8:5/8
   | 1 1/2:3/4 | 1 3/4:1 | 2:1`,
);
