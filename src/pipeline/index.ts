/** Pipeline: a shop folder in, a `CheckedShop` with its cards out, and only when no error stands. */
export { type Compiled, type CompileOptions, compileShop } from './compile.ts';
