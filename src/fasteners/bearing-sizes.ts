/** Published bearing-face and clearance-hole diameters, mm, by nominal size. */

/** Smallest washer-face diameter dw, ISO 4014 (product grade A to M24, B above); M1.6 to M2.5, M7 and over M48 memory. */
export const HEX_FACE: Readonly<Record<string, number>> = {
  'M1.6': 2.27,
  M2: 3.07,
  'M2.5': 4.07,
  M3: 4.57,
  'M3.5': 5.07,
  M4: 5.88,
  M5: 6.88,
  M6: 8.88,
  M7: 9.63,
  M8: 11.63,
  M10: 14.63,
  M12: 16.63,
  M14: 19.64,
  M16: 22.49,
  M18: 25.34,
  M20: 28.19,
  M22: 31.71,
  M24: 33.61,
  M27: 38,
  M30: 42.75,
  M33: 46.55,
  M36: 51.11,
  M39: 55.86,
  M42: 59.95,
  M45: 64.7,
  M48: 69.45,
  M52: 74.2,
  M56: 78.66,
  M60: 83.41,
  M64: 88.16,
};

/** Smallest washer-face diameter dw of nuts, ISO 4032 (product grade A to M16, B above); M3.5 and M7 memory. */
export const NUT_FACE: Readonly<Record<string, number>> = {
  'M1.6': 2.4,
  M2: 3.1,
  'M2.5': 4.1,
  M3: 4.6,
  'M3.5': 5,
  M4: 5.9,
  M5: 6.9,
  M6: 8.9,
  M7: 9.6,
  M8: 11.6,
  M10: 14.6,
  M12: 16.6,
  M14: 19.6,
  M16: 22.5,
  M18: 24.9,
  M20: 27.7,
  M22: 31.4,
  M24: 33.3,
  M27: 38,
  M30: 42.8,
  M33: 46.6,
  M36: 51.1,
  M39: 55.9,
  M42: 60,
  M45: 64.7,
  M48: 69.5,
  M52: 74.2,
  M56: 78.7,
  M60: 83.4,
  M64: 88.2,
};

/** Faces of the four widths in which DIN differs (17, 19, 22, 32 mm), as ISO 4033 prints them by width; M22 memory. */
const DIN_WIDTHS: Readonly<Record<string, number>> = { M10: 15.6, M12: 17.4, M14: 20.4, M22: 29.5 };

/** DIN 931 and DIN 933: as ISO 4014 where the width across flats is the same. */
export const HEX_DIN_FACE: Readonly<Record<string, number>> = { ...HEX_FACE, ...DIN_WIDTHS };

/** DIN 934: as ISO 4032 where the width across flats is the same; above M64 from an open parts data set. */
export const NUT_DIN_FACE: Readonly<Record<string, number>> = {
  ...NUT_FACE,
  ...DIN_WIDTHS,
  M68: 92.9,
  M72: 97.7,
  M76: 102.4,
  M80: 107.2,
  M85: 111.9,
  M90: 121.1,
  M100: 135.4,
};

/** Smallest washer-face diameter dw, EN 14399-4; M16, M20, M24 and M36 memory. */
export const HEAVY_FACE: Readonly<Record<string, number>> = {
  M12: 20.1,
  M16: 24.9,
  M20: 29.5,
  M22: 33.3,
  M24: 38,
  M27: 42.8,
  M30: 46.6,
  M36: 55.9,
};

/** Smallest bearing diameter of the flange, ISO 4162; M6, M10, M14 and M16 memory. */
export const FLANGE_SMALL_FACE: Readonly<Record<string, number>> = {
  M5: 9.4,
  M6: 11.6,
  M8: 14.9,
  M10: 18.7,
  M12: 22.5,
  M14: 26.4,
  M16: 30.6,
};

/** Smallest bearing diameter of the flange, EN 1665; M5, M8, M14 and M20 memory. */
export const FLANGE_HEAVY_FACE: Readonly<Record<string, number>> = {
  M5: 9.8,
  M6: 12.2,
  M8: 15.8,
  M10: 19.6,
  M12: 23.8,
  M14: 27.6,
  M16: 31.9,
  M20: 39.9,
};

/** Smallest bearing diameter dw, ISO 4762; M4, M5, M10, M14, M20, M30 and M36 read, the rest memory. */
export const SOCKET_FACE: Readonly<Record<string, number>> = {
  'M1.6': 2.72,
  M2: 3.48,
  'M2.5': 4.18,
  M3: 5.07,
  M4: 6.53,
  M5: 8.03,
  M6: 9.38,
  M8: 12.33,
  M10: 15.33,
  M12: 17.23,
  M14: 20.17,
  M16: 23.17,
  M20: 28.87,
  M24: 34.81,
  M30: 43.61,
  M36: 52.54,
  M42: 61.34,
  M48: 70.34,
  M56: 82.26,
  M64: 94.26,
};

/** Clearance hole dh, medium series, ISO 273; M4 to M39 as in the check values, the rest memory. */
export const HOLE_METRIC: Readonly<Record<string, number>> = {
  'M1.6': 1.8,
  M2: 2.4,
  'M2.5': 2.9,
  M3: 3.4,
  'M3.5': 3.9,
  M4: 4.5,
  M5: 5.5,
  M6: 6.6,
  M7: 7.6,
  M8: 9,
  M10: 11,
  M12: 13.5,
  M14: 15.5,
  M16: 17.5,
  M18: 20,
  M20: 22,
  M22: 24,
  M24: 26,
  M27: 30,
  M30: 33,
  M33: 36,
  M36: 39,
  M39: 42,
  M42: 45,
  M45: 48,
  M48: 52,
  M52: 56,
  M56: 62,
  M60: 66,
  M64: 70,
  M68: 74,
  M72: 78,
  M76: 82,
  M80: 86,
  M90: 96,
  M100: 107,
};

/** Clearance hole, normal fit, in inches, ASME B18.2.8 (memory). */
export const HOLE_INCH: Readonly<Record<string, number>> = {
  '#0': 0.076,
  '#1': 0.089,
  '#2': 0.102,
  '#3': 0.116,
  '#4': 0.128,
  '#5': 0.156,
  '#6': 0.17,
  '#8': 0.196,
  '#10': 0.221,
  '1/4': 0.281,
  '5/16': 0.344,
  '3/8': 0.406,
  '7/16': 0.469,
  '1/2': 0.562,
  '5/8': 0.688,
  '3/4': 0.812,
  '7/8': 0.938,
  '1': 1.094,
  '1 1/8': 1.219,
  '1 1/4': 1.344,
  '1 3/8': 1.5,
  '1 1/2': 1.625,
};
