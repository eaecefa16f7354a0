/** Diagnostics: what the stages report, and the forms in which it is printed. Imports nothing of the project. */
export { type Catalogue, CODES, type Code } from './codes.ts';
export {
  byPlace,
  collector,
  type Diagnostic,
  type DiagnosticDetails,
  hasErrors,
  type Range,
  type Report,
  type Severity,
} from './diagnostic.ts';
export { lineStarts, type Place, placeOf } from './place.ts';
export { type DiagnosticJson, placer, printable, renderFull, renderJson, renderShort, type TextOf } from './render.ts';
export { renderSarif, type SarifInput, type SarifRule } from './sarif.ts';
export { didYouMean, nearest } from './suggest.ts';
