/** A process of its own that issues one revision into a shop's folder: what the tests kill. Arguments: folder, document. */

import { issueOne } from './issue-one.ts';

const [folder = '', doc = ''] = process.argv.slice(2);
issueOne(folder, doc);
