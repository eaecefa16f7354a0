/** The JSON Schema files for editors: made from the shapes, and accepting what the compiler accepts. */

import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';
import { jsonSchemas } from '../../src/model/index.ts';

const CONTENT = path.resolve(import.meta.dirname, '..', '..', 'content');
const schema = (name: string) => z.fromJSONSchema(JSON.parse(jsonSchemas().get(`${name}.schema.json`) ?? ''));
const yaml = (file: string): unknown => parse(readFileSync(path.join(CONTENT, file), 'utf8'), { schema: 'core' });
const folder = (name: string) => readdirSync(path.join(CONTENT, name)).map((f) => `${name}/${f}`);

describe('a schema file accepts the demo', () => {
  const files = [
    ...['shop', 'people', 'benches', 'tools', 'consumables'].map((n) => [n, `${n}.yaml`]),
    ...folder('machines').map((f) => ['machine', f]),
    ...folder('procedures').map((f) => ['procedure', f]),
    ...folder('stages').map((f) => ['stage', f]),
  ] as const;
  for (const [name = '', file = ''] of files) {
    test(file, () => {
      const result = schema(name).safeParse(yaml(file));
      expect(result.error?.issues.slice(0, 2)).toBeUndefined();
    });
  }
});

test('a schema file refuses what the compiler refuses', () => {
  expect(schema('people').safeParse({ ada: { name: 'Ada' } }).success).toBe(false);
  expect(schema('people').safeParse({ ada: { name: 'Ada', role: 'Fitter', rule: 'x' } }).success).toBe(false);
  expect(schema('tools').safeParse({ 'Socket 24': { name: 'socket', kind: 'socket' } }).success).toBe(false);
});

test('keys carry the words that an editor shows', () => {
  const text = jsonSchemas().get('procedure.schema.json') ?? '';
  for (const words of ['One action, imperative', 'Parts that come off, and their fate', 'with its unit'])
    expect(text).toContain(words);
});
