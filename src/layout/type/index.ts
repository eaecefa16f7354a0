/** Type for cards: faces, measuring, line breaking. */
export {
  type Face,
  type FaceName,
  type Faces,
  limitWords,
  loadFaces,
  parseFaces,
  shapeWord,
  type WordCache,
  widthOf,
} from './faces.ts';
export { breakLines, measure, oneLine, type PlacedPiece, type TextLine } from './lines.ts';
export { cutByFace, type Piece, type Span, type TextInk, type TextProblems, type Weight } from './spans.ts';
