/** What changes in steps and stages, tools, consumables, parts and times, in its exact words. */

import { describe, expect, test } from 'vitest';
import { compareIssues } from '../../src/control/compare/index.ts';
import { linesOf, miniLines, miniSide, swap } from './compare-sides.ts';

const BASE = miniSide();
const MW1 = 'procedures/mw-1.yaml';
const PUMP = 'machines/pump.yaml';
const procedure = (...edits: readonly (readonly [string, string])[]) => ({ [MW1]: swap(...edits) });
const machine = (...edits: readonly (readonly [string, string])[]) => ({ [PUMP]: swap(...edits) });
const SMALL_9 = 'Step 9 (Large: step 11)';
const SMALL_10 = 'Step 10 (Large: step 12)';

describe('steps and stages', () => {
  test('reworded, with the old words beside the new', () => {
    const comparison = compareIssues(
      BASE,
      miniSide(procedure(['Measure the gap.', 'Measure the gap between the faces.'])),
    );
    expect(linesOf(comparison)).toEqual([
      `step reworded: ${SMALL_10}: text reworded: Measure the gap between the faces.`,
    ]);
    expect(comparison.changes[0]).toMatchObject({
      before: 'Measure the gap.',
      after: 'Measure the gap between the faces.',
    });
    expect(comparison.marks).toEqual({ small: { 10: ['text'] }, large: { 12: ['text'] } });
  });

  test('a new step has all marks of what it holds, and those after it none', () => {
    const comparison = compareIssues(
      BASE,
      miniSide(
        procedure([
          '  - title: Close\n    steps:\n',
          '  - title: Close\n    steps:\n      - do: Scrape the old gasket off.\n        note: Leave no scratch.\n        record: Scraped by\n        time: 10 min\n',
        ]),
      ),
    );
    expect(linesOf(comparison)).toEqual(['step added: New step 7 (Large: step 8): Scrape the old gasket off.']);
    expect(comparison.marks).toEqual({
      small: { 7: ['text', 'note', 'wait', 'records'] },
      large: { 8: ['text', 'note', 'wait', 'records'] },
    });
  });

  test('a removed step, and a reference to a step that only got another number', () => {
    const removed = {
      'stages/isolate.yaml': swap(['  - do: Lock the switch', '  - do: Tell the watch.\n  - do: Lock the switch']),
    };
    const comparison = compareIssues(BASE, miniSide(removed));
    expect(linesOf(comparison)).toEqual(['step added: New step 1: Tell the watch.']);
    expect(comparison.marks).toEqual({ small: { 1: ['text'] }, large: { 1: ['text'] } });
    expect(linesOf(compareIssues(miniSide(removed), BASE))).toEqual([
      'step removed: Step 1 of revision A removed: Tell the watch.',
    ]);
  });

  test('a reference that means another step now', () => {
    const other = {
      'stages/isolate.yaml': swap(
        ['    id: locked\n', ''],
        ['  - do: Open the drain.\n', '  - do: Open the drain.\n    id: locked\n'],
      ),
    };
    expect(miniLines(other)).toEqual([
      `step reworded: ${SMALL_9}: text reworded: When step 2 is done, tighten the cover joint.`,
    ]);
  });

  test('moved is told once and marked nowhere', () => {
    const line = '      - do: Wipe both faces with a <consumable:wipe>.\n';
    const moved = procedure([line, ''], ['      - do: Measure the gap.', `${line}      - do: Measure the gap.`]);
    const comparison = compareIssues(BASE, miniSide(moved));
    expect(linesOf(comparison)).toEqual(['step moved: Step 7 is now step 9 (Large: step 8 is now step 11)']);
    expect(comparison.marks).toEqual({});
  });

  test('note, record, close-out, hold and witness', () => {
    const at = '      - do: Measure the gap.\n';
    const with_ = (fields: string) => procedure([at, `${at}${fields}`]);
    expect(miniLines(with_('        note: At four places.\n'))).toEqual([
      `step added: ${SMALL_10}: note added: At four places.`,
    ]);
    expect(miniLines(with_('        hold: quality lead\n'))).toEqual([
      `step added: ${SMALL_10}: hold point added: quality lead`,
    ]);
    expect(miniLines(with_('        witness: owner\n'))).toEqual([
      `step added: ${SMALL_10}: witness point added: owner`,
    ]);
    expect(miniLines({ 'stages/close-out.yaml': swap(['record: Tools counted', 'record: Tools counted by']) })).toEqual(
      ['step reworded: Step 12 (Large: step 14): record reworded: Tools counted by'],
    );
    expect(miniLines({ 'stages/close-out.yaml': swap(['    close_out: [guards refitted]\n', '']) })).toEqual([
      'step removed: Step 13 (Large: step 15): close-out point removed: guards refitted',
    ]);
  });

  test('lifting and heating', () => {
    expect(
      miniLines(procedure(['lift: { mass: 18 kg, by: chain hoist }', 'lift: { mass: 20 kg, by: chain hoist }'])),
    ).toEqual(['step value: Step 6: lift 18 kg by chain hoist → 20 kg by chain hoist']);
    const heat = (to: number, most: number) =>
      procedure([
        '      - do: Measure the gap.\n',
        `      - do: Measure the gap.\n        heat: { to: ${to} degC, most: ${most} degC }\n`,
      ]);
    expect(linesOf(compareIssues(miniSide(heat(80, 100)), miniSide(heat(90, 100))))).toEqual([
      `limit value: ${SMALL_10}: heat to 80 → 90 °C`,
    ]);
    expect(miniLines(heat(80, 100))).toEqual([`limit added: ${SMALL_10}: heating added: to 80 °C, never above 100 °C`]);
  });

  test('stages: title, introduction, new, moved as a whole', () => {
    expect(miniLines(procedure(['title: Close\n', 'title: Close the pump\n']))).toEqual([
      'step reworded: Title of stage 3 reworded: Close the pump',
    ]);
    expect(
      miniLines(procedure(['  - title: Close\n', '  - title: Close\n    intro: Keep the faces clean.\n'])),
    ).toEqual(['step added: Introduction to stage 3 (Close) added: Keep the faces clean.']);
    expect(
      miniLines(
        procedure([
          '  - title: Close\n',
          '  - title: Look\n    steps:\n      - do: Look for cracks.\n  - title: Close\n',
        ]),
      ),
    ).toEqual(['step added: New stage 3: Look', 'step added: New step 7 (Large: step 8): Look for cracks.']);
    const swappedStages = procedure(
      ['  - use: isolate\n', ''],
      ['  - use: close-out\n', '  - use: close-out\n  - use: isolate\n'],
    );
    expect(miniLines(swappedStages)).toEqual(['step moved: Stage 1 is now stage 4: Isolate']);
  });

  test('a step that belongs to another stage now', () => {
    const moved = procedure([
      '  - title: Close\n    steps:\n      - do: Wipe both faces with a <consumable:wipe>.\n',
      '      - do: Wipe both faces with a <consumable:wipe>.\n  - title: Close\n    steps:\n',
    ]);
    expect(miniLines(moved)).toEqual(['step moved: Step 7 (Large: step 8): now belongs to stage 2: Open']);
  });
});

describe('tools, consumables, parts, times', () => {
  test('tools', () => {
    const lever = (t: string): string => `${t}lever: { name: lever hoist, kind: lifting gear, capacity: 250 kg }\n`;
    const comparison = compareIssues(
      BASE,
      miniSide({ 'tools.yaml': lever, ...procedure(['<tool:hoist>', '<tool:lever>']) }),
    );
    expect(linesOf(comparison)).toEqual(['tool exchanged: Step 6: tool exchanged, chain hoist → lever hoist']);
    expect(comparison.marks['small']).toEqual({ 6: ['text', 'lists'] });
    expect(miniLines(procedure(['        lift: {', '        with: [feeler]\n        lift: {']))).toEqual([
      'tool added: Step 6: tool added: feeler gauge',
    ]);
    expect(
      linesOf(compareIssues(miniSide(procedure(['        lift: {', '        with: [feeler]\n        lift: {'])), BASE)),
    ).toEqual(['tool removed: Step 6: tool removed: feeler gauge']);
    expect(miniLines({ 'tools.yaml': swap(['capacity: 250 kg', 'capacity: 500 kg']) })).toEqual([
      'tool value: Size or range of chain hoist 250 kg → 500 kg',
    ]);
  });

  test('consumables and amounts', () => {
    const use = (amount: string) =>
      procedure(['      - do: Measure the gap.\n', `      - do: Measure the gap.\n        use: { oil: ${amount} }\n`]);
    expect(miniLines(use('20 ml'))).toEqual([`consumable added: ${SMALL_10}: consumable added: machine oil, 20 ml`]);
    expect(linesOf(compareIssues(miniSide(use('20 ml')), miniSide(use('30 ml'))))).toEqual([
      `consumable value: ${SMALL_10}: amount of machine oil 20 ml → 30 ml`,
    ]);
    expect(miniLines({ 'consumables.yaml': swap(['hazards: [irritates the skin]', 'hazards: [burns]']) })).toEqual([
      'consumable value: Hazards of machine oil irritates the skin → burns',
    ]);
  });

  test('another lubricant that the step used before as well', () => {
    const paste = (t: string): string =>
      `${t}paste: { name: copper paste, kind: lubricant, condition: anti-seize, hazards: [none], waste: bin }\n`;
    const uses = (lubricant: string) => ({
      'consumables.yaml': paste,
      ...procedure(['lubricate: { with: oil,', `use: [oil, paste]\n        lubricate: { with: ${lubricant},`]),
    });
    expect(linesOf(compareIssues(miniSide(uses('oil')), miniSide(uses('paste'))))).toEqual([
      'consumable exchanged: Step 9 (Large: step 11): consumable exchanged, machine oil → copper paste',
    ]);
  });

  test('a reference that leads elsewhere under the same words', () => {
    const to = (part: string) =>
      procedure(['if out: Loosen and repeat this stage.', `if out: Change [this](part:${part}).`]);
    const comparison = compareIssues(miniSide(to('gasket')), miniSide(to('cover')));
    expect(linesOf(comparison)).toEqual([
      `limit reworded: ${SMALL_10}: what to do when cover gap is out of its limit refers to something else: Change this.`,
    ]);
    expect(comparison.marks).toEqual({ small: { 10: ['measures'] }, large: { 12: ['measures'] } });
  });

  test('parts', () => {
    expect(miniLines(procedure(['gasket: discard', 'gasket: inspect']))).toEqual([
      'part value: Step 6: fate of cover gasket discard → inspect',
    ]);
    expect(miniLines(procedure(['fit: [gasket, cover]', 'fit: [gasket]']))).toEqual([
      'part removed: Step 8 (Large: step 10): part fitted removed: cover',
    ]);
    expect(
      miniLines(
        procedure([
          '        fit: [gasket, cover]',
          '        fit: [gasket, cover]\n        facing: { gasket: print outwards }',
        ]),
      ),
    ).toEqual(['part added: Step 8 (Large: step 10): facing of cover gasket added: print outwards']);
    expect(miniLines(machine(['number: MW-101', 'number: MW-111']))).toEqual([
      'part value: Number of cover gasket MW-101 → MW-111',
    ]);
  });

  test('waiting and working times', () => {
    const at = '      - do: Measure the gap.\n';
    const wait = (time: string) => procedure([at, `${at}        wait: { for: ${time}, why: The gasket settles. }\n`]);
    expect(miniLines(wait('10 min'))).toEqual([`time added: ${SMALL_10}: waiting time added: 10 min`]);
    const longer = compareIssues(miniSide(wait('10 min')), miniSide(wait('15 min')));
    expect(linesOf(longer)).toEqual([`time value: ${SMALL_10}: waiting time 10 → 15 min`]);
    expect(longer.marks['small']).toEqual({ 10: ['wait'] });
    expect(miniLines(procedure(['  - title: Close\n', '  - title: Close\n    time: 20 min\n']))).toEqual([
      'time added: Working time of stage 3 (Close) added: 20 min',
    ]);
  });
});
