/** The checks of the family SRC, in order. */

import type { Check } from '../check.ts';
import { anchorOrAlias } from './anchor-or-alias.ts';
import { binaryFile } from './binary-file.ts';
import { duplicateKey } from './duplicate-key.ts';
import { emptyFile } from './empty-file.ts';
import { malformedYaml } from './malformed-yaml.ts';
import { misplacedFile } from './misplaced-file.ts';
import { missingFolder } from './missing-folder.ts';
import { oversizedFile } from './oversized-file.ts';
import { severalDocuments } from './several-documents.ts';
import { tabIndentation } from './tab-indentation.ts';
import { unreadableFile } from './unreadable-file.ts';
import { wrongEncoding } from './wrong-encoding.ts';

export const SRC: readonly Check[] = [
  missingFolder,
  unreadableFile,
  oversizedFile,
  binaryFile,
  wrongEncoding,
  malformedYaml,
  tabIndentation,
  anchorOrAlias,
  duplicateKey,
  emptyFile,
  severalDocuments,
  misplacedFile,
];
