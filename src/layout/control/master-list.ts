/** The master list: register of documents, list of effective pages, controlled copies, as of one day. */

import { copiesTable, effectivePagesTable, registerTable } from '../../control/audit-documents.ts';
import { namesOf } from '../../control/audit-table.ts';
import type { ControlView } from '../../control/types.ts';
import type { ResolvedShop } from '../../resolve/types.ts';
import type { Chunk } from '../card/chunks.ts';
import { textWidthOf } from '../card/format.ts';
import { mm, stack } from '../card/items.ts';
import { paragraph, type Setting, span } from '../card/setting.ts';
import type { Faces } from '../type/index.ts';
import { PAPER_COLUMNS } from './paper-columns.ts';
import { sectionChunks } from './paper-table.ts';
import { type Frame, layoutSheets, NO_RANGE, type SheetsLayout, sheetFormat, sheetSetting } from './sheets.ts';

export function layoutMasterList(view: ControlView, shop: ResolvedShop, faces: Faces): SheetsLayout {
  const setting = sheetSetting(faces, sheetFormat(shop.info, true));
  const names = namesOf(shop);
  const tables = [registerTable(view, shop, names), effectivePagesTable(view, names), copiesTable(view, shop, names)];
  const chunks: Chunk[] = [
    titleChunk(setting, view, shop),
    ...tables.flatMap((t, i) => sectionChunks(setting, t, PAPER_COLUMNS.get(t.name) ?? [], i + 1)),
  ];
  return layoutSheets(setting, controlFrame('Master list', view, shop), [chunks]);
}

/** What stands at the edges of every sheet that is drawn up from a view. */
export function controlFrame(title: string, view: ControlView, shop: ResolvedShop): Frame {
  return {
    title: `${title} as of ${view.asOf}`,
    right: shop.info.name,
    foot: [`As of ${view.asOf} · ledger of ${lineCount(view)}, head ${view.ledger.head}`],
  };
}

/** `42 lines` */
export function lineCount(view: ControlView): string {
  return view.ledger.entries === 1 ? '1 line' : `${view.ledger.entries} lines`;
}

function titleChunk(setting: Setting, view: ControlView, shop: ResolvedShop): Chunk {
  const { type } = setting.format;
  const width = textWidthOf(setting.format);
  const block = stack(
    [
      paragraph(setting, [span(shop.info.name, type.table, 'semibold')], width, { lead: mm(5) }),
      paragraph(setting, [span(`Master list as of ${view.asOf}`, type.doc, 'bold')], width, {
        tag: 'H1',
        lead: mm(10),
      }),
      paragraph(
        setting,
        [
          span('UNCONTROLLED when printed. ', type.table, 'bold'),
          span(
            'It holds for the day above. Before you rely on it, compare the ledger head at the foot with the one that the site shows.',
            type.table,
          ),
        ],
        width * 0.8,
      ),
    ],
    mm(0.4),
  );
  return { block, gap: 0, keepWithNext: true, what: 'the title', range: NO_RANGE };
}
