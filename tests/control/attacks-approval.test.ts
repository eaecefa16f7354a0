/** Attacks on approvals: forged, stripped and copied signatures, and keys that were exchanged. */

import { describe, expect, test } from 'vitest';
import type { Entry } from '../../src/control/types.ts';
import {
  append,
  check,
  type Files,
  forged,
  history,
  issueAct,
  keyOf,
  MALLORY,
  pemOf,
  RULES,
  withLedger,
} from './history.ts';

const { entries, files } = history();

describe('a forged approval', () => {
  const text = String(files.get('issued/MW-1/B.json')).replaceAll('MW-1/B', 'MW-1/C');
  const act = issueAct('MW-1', 'C', text, { approved: '2026-02-07', effective: '2026-02-20' });
  const withC = (list: readonly Entry[]): Files => withLedger(new Map(files).set('issued/MW-1/C.json', text), list);

  test('signed by the approver, it holds', () => {
    expect(check(withC(append(entries, '2026-02-07', act, 'ben'))).said).toEqual([]);
  });

  test('without a signature', () => {
    expect(check(withC(append(entries, '2026-02-07', act))).said).toEqual([
      'LDG008 issued/ledger.jsonl:10 line 10 of the ledger (issue of MW-1 Rev C) is not signed, and the shop has major changes signed',
    ]);
    expect(check(withC(append(entries, '2026-02-07', act)), { ...RULES, signedSince: '2026-03-01' }).said).toEqual([]);
  });

  test('with a key that the shop does not know', () => {
    const list = append(entries, '2026-02-07', { ...act, approver: 'mallory' }, 'mallory');
    expect(check(withC(list)).said[0]).toMatch(/^LDG009 .*:10 .*`keys\/mallory.pem` does not hold/);
  });

  test('signed by somebody who is not the approver', () => {
    expect(check(withC(append(entries, '2026-02-07', act, 'cleo'))).said).toEqual([
      'LDG007 issued/ledger.jsonl:10 line 10 of the ledger (issue of MW-1 Rev C) is signed by `cleo`, who is not its approver',
    ]);
  });

  test('signed by another one in the approver’s name', () => {
    const list = forged(append(entries, '2026-02-07', act, 'cleo'), 10, (e) => ({
      signature: { ...e.signature, by: 'ben' },
    }));
    expect(check(withC(list)).said[0]).toMatch(/^LDG009 .*:10 /);
  });

  test('the signature stripped', () => {
    const last = append(entries, '2026-02-07', act, 'ben').at(-1);
    const bare = forged([...entries, ...(last === undefined ? [] : [last])], 10, () => ({ signature: undefined }));
    expect(check(withC(bare)).said[0]).toMatch(/^LDG008 .*:10 /);
  });

  test.each([
    ['another line', 4],
    ['another document', 2],
  ])('a signature copied from %s', (_, from) => {
    const copied = entries[from - 1]?.signature;
    const unsigned = append(entries, '2026-02-07', { ...act, approver: copied?.by ?? '' });
    const list = forged(unsigned, 10, () => ({ signature: copied }));
    expect(check(withC(list)).said[0]).toMatch(/^LDG007 .*:10 .*did not sign these words$/);
  });

  test('a signed line copied whole from another ledger', () => {
    const elsewhere = append(entries.slice(0, 5), '2026-02-07', act, 'ben').at(-1);
    const list = forged([...entries, ...(elsewhere === undefined ? [] : [{ ...elsewhere, seq: 10 }])], 0, () => ({}));
    expect(check(withC(list)).said[0]).toMatch(/^LDG007 .*:10 .*did not sign these words$/);
  });

  test('base64 that spells the same bytes otherwise', () => {
    const value = entries[0]?.signature?.value ?? '';
    // The last sign before the padding holds two bits that no byte takes.
    const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
    const other = `${value.slice(0, 85)}${alphabet[alphabet.indexOf(value[85] ?? 'A') ^ 1] ?? ''}==`;
    for (const spelt of [other, value.replace('==', ''), `${value}\n`, value.replaceAll('+', '-')]) {
      if (spelt === value) continue;
      expect(Buffer.from(spelt, 'base64')).toEqual(Buffer.from(value, 'base64'));
      const list = forged(entries, 1, (e) => ({ signature: { ...e.signature, value: spelt } }));
      expect(check(withLedger(files, list)).said[0]).toMatch(/^LDG007 .*:1 /);
    }
  });

  test('the approver is the author', () => {
    const self = { ...act, author: 'ben' };
    expect(check(withC(append(entries, '2026-02-07', self, 'ben'))).said).toEqual([
      'LDG010 issued/ledger.jsonl:10 line 10 of the ledger breaks the rules of control: `ben` approves what `ben` has written',
    ]);
  });
});

describe('keys', () => {
  test('exchanged: what the old key signed no longer holds', () => {
    const { said } = check(new Map(files).set('keys/ben.pem', pemOf(MALLORY)));
    expect(said.map((s) => s.replace(/ \(.*/, ''))).toEqual(
      [1, 4, 8].map((n) => `LDG009 issued/ledger.jsonl:${n} line ${n} of the ledger`),
    );
  });

  test('a new one above the old one: both hold', () => {
    const both = `${pemOf(keyOf(9))}${pemOf(keyOf(1))}`;
    expect(check(new Map(files).set('keys/ben.pem', both)).said).toEqual([]);
  });

  test.each([
    ['taken away', undefined],
    ['empty', ''],
    ['with words beside it', `old key\n${pemOf(keyOf(1))}`],
    ['without its last line end', pemOf(keyOf(1)).trimEnd()],
    ['of another kind', '-----BEGIN PUBLIC KEY-----\nAAAA\n-----END PUBLIC KEY-----\n'],
  ])('%s', (_, text) => {
    const changed = new Map(files);
    if (text === undefined) changed.delete('keys/ben.pem');
    else changed.set('keys/ben.pem', text);
    const { said } = check(changed);
    expect(said.length).toBeGreaterThan(0);
    expect(said.every((s) => s.startsWith('LDG009') && s.includes('keys/ben.pem'))).toBe(true);
  });

  test('a private key that was put among the public ones is told', () => {
    const pem = MALLORY.export({ type: 'pkcs8', format: 'pem' }).toString();
    expect(check(new Map(files).set('keys/mallory.pem', pem)).said).toEqual([
      'LDG009 keys/mallory.pem:1 `keys/mallory.pem` holds something else than Ed25519 public keys',
    ]);
  });
});
