/** Ed25519 as the ledger uses it, against the published vectors, and the forms in which keys and signatures come. */

import { createPrivateKey, createPublicKey, generateKeyPairSync, sign, verify } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { memoryFiles } from '../../src/control/files.ts';
import { holds, keyIdOf, newKeyPair, privateKey, readKeys, signLine } from '../../src/control/signature.ts';
import { BEN, CLEO, pemOf } from './history.ts';

const PKCS8 = Buffer.from('302e020100300506032b657004220420', 'hex');
const SPKI = Buffer.from('302a300506032b6570032100', 'hex');

test.each([
  {
    name: 'TEST 1',
    secret: '9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60',
    open: 'd75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a',
    message: '',
    signature:
      'e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b',
  },
  {
    name: 'TEST 2',
    secret: '4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb',
    open: '3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c',
    message: '72',
    signature:
      '92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00',
  },
  {
    name: 'TEST 3',
    secret: 'c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7',
    open: 'fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025',
    message: 'af82',
    signature:
      '6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a',
  },
])('RFC 8032, section 7.1, $name (memory)', ({ secret, open, message, signature }) => {
  const key = createPrivateKey({
    key: Buffer.concat([PKCS8, Buffer.from(secret, 'hex')]),
    format: 'der',
    type: 'pkcs8',
  });
  const bytes = Buffer.from(message, 'hex');
  const publicKey = createPublicKey(key);
  expect(publicKey.export({ type: 'spki', format: 'der' })).toEqual(Buffer.concat([SPKI, Buffer.from(open, 'hex')]));
  expect(sign(null, bytes, key).toString('hex')).toBe(signature);
  expect(verify(null, bytes, publicKey, Buffer.from(signature, 'hex'))).toBe(true);
  expect(verify(null, Buffer.concat([bytes, Buffer.from([0])]), publicKey, Buffer.from(signature, 'hex'))).toBe(false);
});

describe('a line', () => {
  const line = { seq: 4, prev: 'a', doc: 'MW-1', what: '85 → 95 N·m' };
  const signature = signLine(line, 'ben', BEN);
  const open = createPublicKey(BEN);

  test('holds with its seal and its signature in it, and in another order of keys', () => {
    expect(holds({ ...line, signature, seal: 'b' }, signature, open)).toBe(true);
    expect(holds({ what: line.what, doc: line.doc, prev: line.prev, seq: 4 }, signature, open)).toBe(true);
  });

  test('does not hold with another number, word, place in the ledger, or key', () => {
    for (const other of [{ seq: 5 }, { prev: 'b' }, { doc: 'MW-2' }, { what: '85 → 96 N·m' }, { more: 1 }]) {
      expect(holds({ ...line, ...other }, signature, open)).toBe(false);
    }
    expect(holds(line, signature, createPublicKey(CLEO))).toBe(false);
  });

  test.each(['', 'x', 'AAAA', `${'A'.repeat(86)}==`])('does not hold with `%s`', (value) => {
    expect(holds(line, { ...signature, value }, open)).toBe(false);
  });

  test('the same line is signed with the same bytes', () => {
    expect(signLine(line, 'ben', BEN)).toEqual(signature);
    expect(signature).toMatchObject({ by: 'ben', key: keyIdOf(open) });
    expect(signature.key).toMatch(/^[0-9a-f]{16}$/);
  });
});

describe('keys', () => {
  const ring = (files: Readonly<Record<string, string>>) => {
    const memory = memoryFiles(new Map(Object.entries(files)));
    return readKeys(memory, memory.list());
  };

  test('a new pair: the private half signs what the public half proves', () => {
    const pair = newKeyPair();
    const secret = privateKey(pair.privatePem);
    const keys = ring({ 'keys/dora.pem': pair.publicPem });
    if (secret === undefined) throw new Error('the private key is not read');
    const found = keys.find('dora', keyIdOf(createPublicKey(secret)));
    if (found === undefined) throw new Error('the public key is not found');
    expect(holds({ a: 1 }, signLine({ a: 1 }, 'dora', secret), found)).toBe(true);
    expect(keys.persons).toEqual(new Set(['dora']));
    expect(keys.unreadable).toEqual([]);
    expect(newKeyPair().publicPem).not.toBe(pair.publicPem);
  });

  test('are a person’s own', () => {
    const keys = ring({ 'keys/ben.pem': pemOf(BEN), 'keys/cleo.pem': pemOf(CLEO) });
    expect(keys.find('ben', keyIdOf(createPublicKey(BEN)))).toBeDefined();
    expect(keys.find('cleo', keyIdOf(createPublicKey(BEN)))).toBeUndefined();
  });

  test('of another kind, of none, or under another name are told', () => {
    const pem = generateKeyPairSync('ec', { namedCurve: 'P-256' }).publicKey.export({ type: 'spki', format: 'pem' });
    const x = generateKeyPairSync('x25519').publicKey.export({ type: 'spki', format: 'pem' });
    const keys = ring({
      'keys/a.pem': String(pem),
      'keys/b.pem': String(x),
      'keys/c.pem': '',
      'keys/README.md': 'words',
      'keys/sub/d.pem': pemOf(BEN),
      'keys/e.pem': `${pemOf(BEN)}${String(pem)}`,
    });
    expect([...keys.unreadable].sort()).toEqual(
      ['README.md', 'a.pem', 'b.pem', 'c.pem', 'e.pem', 'sub/d.pem'].map((n) => `keys/${n}`),
    );
    expect(keys.persons.size).toBe(0);
  });

  test('a private key is read from its own form only', () => {
    expect(privateKey('words')).toBeUndefined();
    expect(privateKey(pemOf(BEN))).toBeUndefined();
    const other = generateKeyPairSync('rsa', { modulusLength: 2048 }).privateKey.export({
      type: 'pkcs8',
      format: 'pem',
    });
    expect(privateKey(String(other))).toBeUndefined();
  });
});
