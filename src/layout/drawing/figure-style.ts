/** Sizes shared by all pattern figures, in mm. */

export interface FigureStyle {
  /** Type size of the order numbers; 8.5 pt unless told otherwise. */
  readonly order: number;
  /** Type size of hole numbers, dimensions and captions: 8 pt, the least on a card. */
  readonly small: number;
  /** Radius of a bolt symbol. */
  readonly symbol: number;
  readonly dimensionHead: number;
  readonly moveHead: number;
}

/** 8 pt in mm: nothing on a card is smaller. */
export const LEAST_TYPE = 2.83;

/** Radius of a symbol that holds `digits` figures at `size` with half a millimetre of air. */
export function symbolRadius(digits: number, size: number): number {
  const half = (0.528 * size * Math.max(1, digits)) / 2;
  return Math.max(2.3, Math.hypot(half, 0.33 * size) + 0.5);
}

export function figureStyle(count: number, orderSize: number): FigureStyle {
  return {
    order: orderSize,
    small: Math.min(orderSize, LEAST_TYPE),
    symbol: symbolRadius(String(count).length, orderSize),
    dimensionHead: 2.6,
    moveHead: 2.4,
  };
}
