/** Worksheets: the inputs of a joint, its bands as a figure, its working, and all of it as sheets of paper. */
export { bandFigure } from './band-figure.ts';
export { bandText, threeFigures } from './band-text.ts';
export { INPUT_GROUPS, type InputGroup, type JointInput, jointInputs } from './inputs.ts';
export { layoutWorksheets, type WorksheetLayout, type WorksheetPage } from './layout-worksheets.ts';
export { sectionNote } from './section-note.ts';
