/** A small shop made by hand, with the registers that control knows. */

import { READ_FROM } from '../../src/resolve/read-from.ts';
import type { Feedback, OutsideDocument, ResolvedShop } from '../../src/resolve/types.ts';

const INFO: ResolvedShop['info'] = {
  name: 'Orrin Sound Ferry Works',
  address: 'https://binder.osfw.example/',
  basePath: '/',
  language: 'en',
  leadingTorque: 'N·m',
  secondTorque: 'lbf·ft',
  cardFormat: 'A4',
  safety: "The maker's manual governs.",
  liftAlone: { dimension: 'mass', value: 25, unit: 'kg', decimals: 0, si: 25 },
  heatLimit: { dimension: 'temperature', value: 110, unit: '°C', decimals: 0, si: 383.15 },
  control: {
    scheme: 'letters',
    signed: ['major'],
    receiptDays: { suspension: 1, major: 3, minor: 7 },
    temporaryMost: 3,
    temporaryDays: 60,
    dueSoonDays: 60,
    freshDays: 30,
  },
  file: 'content/shop.yaml',
};

/** A small shop with the registers that control knows. */
export function fixtureShop(): ResolvedShop {
  const keyRange = { file: 'content/people.yaml', start: 0, end: 0 };
  const from = { [READ_FROM]: { kind: 'scalar', value: '', range: keyRange }, keyRange } as const;
  const someone = (id: string, name: string, role: string): ResolvedShop['people'][number] => ({
    id,
    name,
    role,
    approves: [],
    ...from,
  });
  const outside = (id: string, document: string, confirmed: OutsideDocument['confirmed']): OutsideDocument => ({
    id,
    document,
    kind: "maker's manual",
    edition: '5th edition',
    owner: 'maren',
    received: '2026-02-01',
    confirmed,
    ...from,
  });
  const feedback: readonly Feedback[] = [
    {
      number: 'FB-01',
      doc: 'OF-104',
      rev: 'A',
      step: 12,
      from: 'heat',
      on: '2026-02-20',
      text: 'The short socket fouls.',
      answer: { by: 'maren', on: '2026-03-01', text: 'Temporary change TC-07.' },
      ...from,
    },
    {
      number: 'FB-02',
      doc: 'OF-231',
      rev: 'A',
      from: 'petr',
      on: '2026-03-11',
      text: '-2 °C is too cold for the paste',
      ...from,
    },
  ];
  return {
    info: INFO,
    tools: [],
    consumables: [],
    machines: [],
    documents: [],
    tables: [],
    statedTables: [],
    whereUsed: { tools: {}, consumables: {}, parts: {}, joints: {} },
    stages: [],
    temporaryChanges: [],
    people: [
      someone('maren', 'Maren Osei', 'Quality lead'),
      someone('tomas', 'Tomas Hallworth', 'Shop lead'),
      someone('petr', 'Petr Adeyinka', 'Fitter'),
    ],
    benches: [
      {
        id: 'heat',
        name: 'Heat exchange',
        place: 'Machine shop, north wall under the crane rail',
        lead: 'petr',
        binder: ['OF-104', 'OF-231', 'OF-340'],
        copy: 1,
        ...from,
      },
      {
        id: 'pumps',
        name: 'Pumps and valves',
        place: 'Wet end beside the test tank',
        binder: ['OF-104', 'OF-450', 'OF-231'],
        copy: 2,
        ...from,
      },
    ],
    outside: [
      outside('cooler-manual', 'Brackwater Thermal, cooler handbook', []),
      outside('pump-manual', 'Pump book of the works', [
        { doc: 'OF-231', by: 'tomas', on: '2026-02-12', finding: 'Nothing differs' },
      ]),
      outside('wire-standard', 'Standard for wire', []),
    ],
    feedback,
  };
}
