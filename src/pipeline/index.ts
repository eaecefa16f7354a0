/** Pipeline: a shop folder in, a `CheckedShop` with its cards out, and only when no error stands. */
export { type CheckWords, checkWords, type ShownDiagnostic } from './check-words.ts';
export { type Compiled, type CompileOptions, compileFiles, compileShop } from './compile.ts';
export { type ControlOptions, type Issued, issueDocument, issueTemporary, recordActs } from './control.ts';
export { EXAMPLE_FOLDER, type ExampleRun, runExample } from './example.ts';
export { type Published, type PublishedCard, type PublishFor, publishCompiled } from './publish.ts';
export { type BuildReport, buildReport } from './report.ts';
