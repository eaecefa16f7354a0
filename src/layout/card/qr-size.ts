/** How many modules the symbol of an address needs, so that its place can be laid out before it is drawn. */

/**
 * Alphanumeric characters that each version holds at level Q, from version 1 (ISO/IEC 18004, table 7: memory;
 * held against the `qrcode` package in tests/render/qr.test.ts).
 */
const CAPACITY_Q: readonly number[] = [16, 29, 47, 67, 87, 108, 125, 157, 189, 221, 259, 296];

/** Bytes that each version holds at level Q, from version 1 (the same table, memory, held the same way). */
const CAPACITY_Q_BYTES: readonly number[] = [11, 20, 32, 46, 60, 74, 86, 108, 130, 151, 177, 203];

/** Whether the smaller of the two encodings serves: capitals, digits, space $ % * + - . / : and nothing else. */
export function isAlphanumeric(text: string): boolean {
  return /^[0-9A-Z $%*+\-./:]+$/u.test(text);
}

/** Light modules that must surround the symbol. */
export const QUIET_MODULES = 4;
/** Side of the symbol with its light margin: 20.5 mm holds version 4 with modules of half a millimetre. */
export const QR_SIDE_MM = 20.5;
/** A laminated card with grease on it wants modules of half a millimetre or more. */
export const LEAST_MODULE_MM = 0.5;

/** Modules on a side of the symbol without its margin; undefined when the text is far too long. */
export function qrModules(text: string): number | undefined {
  const index = isAlphanumeric(text)
    ? CAPACITY_Q.findIndex((most) => text.length <= most)
    : CAPACITY_Q_BYTES.findIndex((most) => new TextEncoder().encode(text).length <= most);
  return index < 0 ? undefined : 21 + 4 * index;
}

/** Size of a module in mm when the symbol of `text` fills its place on a card. */
export function moduleMm(text: string): number {
  const modules = qrModules(text);
  return modules === undefined ? 0 : QR_SIDE_MM / (modules + 2 * QUIET_MODULES);
}
