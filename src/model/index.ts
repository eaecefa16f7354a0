/** Model: YAML trees in, content of known shape out, each value with its place. */
export { type At, type Entry, entries, field, items, oneOrMore, optional } from './at.ts';
export {
  type BenchContent,
  type ConsumableContent,
  type Content,
  type MachineContent,
  type PersonContent,
  type ProcedureContent,
  type Register,
  readContent,
  type SharedStageContent,
  type ShopContent,
  type StatedTableContent,
  type ToolContent,
} from './content.ts';
export { jsonSchemas } from './json-schema.ts';
