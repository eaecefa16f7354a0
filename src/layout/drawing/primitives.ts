/** What drawings are made of: flat marks in millimetres, x to the right and y down, painted in the order listed. */

/** A place in the drawing, in mm. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A straight piece. */
export interface Segment {
  readonly from: Point;
  readonly to: Point;
}

/** The room that a round symbol takes. */
export interface Disc {
  readonly centre: Point;
  readonly radius: number;
}

/**
 * Line types after ISO 128: visible edges wide and whole; everything else narrow; centre lines long-dash-dot, hidden edges
 * dashed. `none` leaves a filled shape without an outline.
 */
export type Stroke = 'visible' | 'thin' | 'centre' | 'hidden' | 'move' | 'none';

/** Line widths in mm; ISO 128 asks for a ratio of two between wide and narrow. */
export const STROKE_WIDTH_MM: Readonly<Record<Stroke, number>> = {
  visible: 0.5,
  thin: 0.25,
  centre: 0.25,
  hidden: 0.25,
  move: 0.35,
  none: 0,
};

/** Dash patterns in mm (dash, gap, ...); an empty list is a whole line. */
export const DASHES_MM: Readonly<Record<Stroke, readonly number[]>> = {
  visible: [],
  thin: [],
  centre: [6, 0.9, 0.25, 0.9],
  hidden: [2, 1],
  move: [],
  none: [],
};

/**
 * Ink of a mark. `ink` is the text colour of the place where it is painted, `accent` the one accent colour, `paper` the ground,
 * `tint` a light grey. The signal colours are those of ISO 3864 and appear in warning signs only.
 */
export type Ink =
  | 'ink'
  | 'accent'
  | 'paper'
  | 'tint'
  | 'faint'
  | 'safety-yellow'
  | 'safety-orange'
  | 'safety-red'
  | 'safety-blue'
  | 'black'
  | 'white';

/** Which bolt a mark belongs to, so that a page can light it up. */
export interface BoltTag {
  /** Hole number, clockwise from the first. */
  readonly hole: number;
  /** Place in the tightening order, counted from 1. */
  readonly order: number;
}

interface Mark {
  readonly bolt?: BoltTag;
}

export interface LineMark extends Mark {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
  readonly stroke: Stroke;
  readonly ink: Ink;
}

/** Straight or curved outline. `curves` are cubic Bézier pieces: each takes three points of `points` after the first. */
export interface PathMark extends Mark {
  readonly kind: 'path';
  readonly points: readonly Point[];
  readonly curved: boolean;
  readonly closed: boolean;
  readonly stroke: Stroke;
  readonly ink: Ink;
  readonly fill?: Ink;
}

export interface CircleMark extends Mark {
  readonly kind: 'circle';
  readonly centre: Point;
  readonly radius: number;
  readonly stroke: Stroke;
  readonly ink: Ink;
  readonly fill?: Ink;
}

/** Part of a circle; angles in degrees clockwise from 12 o'clock, drawn clockwise from `from` to `to`. */
export interface ArcMark extends Mark {
  readonly kind: 'arc';
  readonly centre: Point;
  readonly radius: number;
  readonly from: number;
  readonly to: number;
  readonly stroke: Stroke;
  readonly ink: Ink;
}

export type TextRole = 'order' | 'hole' | 'dimension' | 'label' | 'note';

export interface TextMark extends Mark {
  readonly kind: 'text';
  /** Where the anchor of the baseline lies. */
  readonly at: Point;
  readonly text: string;
  /** Type size (not cap height) in mm. */
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly weight: 'regular' | 'semibold' | 'bold';
  readonly role: TextRole;
  readonly ink: Ink;
}

export type Primitive = LineMark | PathMark | CircleMark | ArcMark | TextMark;

export interface Drawing {
  /** Size in mm; every mark lies within it. */
  readonly width: number;
  readonly height: number;
  readonly title: string;
  /** Says in words what the drawing shows, for those who cannot see it. */
  readonly description: string;
  readonly marks: readonly Primitive[];
}

/** Place on a circle; `degrees` clockwise from 12 o'clock. */
export function onCircle(centre: Point, radius: number, degrees: number): Point {
  const a = (degrees * Math.PI) / 180;
  return { x: centre.x + radius * Math.sin(a), y: centre.y - radius * Math.cos(a) };
}

export function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
