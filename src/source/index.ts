/** Source: a shop folder in, YAML trees with places out. The only reader of content files. */
export { type Comment, commentsOf } from './comments.ts';
export { readFiles, readMemory, type SourceFile } from './files.ts';
export { type Markdown, type MarkdownParagraph, type MarkdownRun, parseMarkdown } from './markdown.ts';
export {
  entryOf,
  type MapEntry,
  type MapNode,
  type Node,
  nodeAt,
  plain,
  type Scalar,
  type ScalarNode,
  type SequenceNode,
  without,
} from './tree.ts';
export { parseYaml } from './yaml.ts';
