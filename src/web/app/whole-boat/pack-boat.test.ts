import fc from 'fast-check';
import { zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { bytesHash } from '../../workers/text-hash.ts';
import { packBoat } from './pack-boat.ts';
import { unpackBoat } from './unpack-boat.ts';
import type { WholeBoat } from './whole-boat.ts';

const jpeg = (tail: readonly number[]) => ({
  type: 'jpeg' as const,
  bytes: Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, ...tail]),
});
const boat = (more: Partial<WholeBoat> = {}): WholeBoat => ({
  id: 'tern',
  text: '{"name":"Tern"}\n',
  log: '{"id":"aaaaaaaa"}\n',
  pictures: new Map([jpeg([1]), jpeg([2, 3])].map((one) => [bytesHash(one.bytes), one])),
  ...more,
});
const utf8 = (text: string) => new TextEncoder().encode(text);

test('a boat comes out of her zip as she went in, to the byte', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'binary' }),
      fc.string({ unit: 'grapheme' }),
      fc.array(fc.array(fc.integer({ min: 0, max: 255 })), { maxLength: 4 }),
      (text, log, tails) => {
        const pictures = new Map(tails.map(jpeg).map((one) => [bytesHash(one.bytes), one]));
        const whole = boat({ text: `\uFEFF${text.toWellFormed()}`, log, pictures });
        const found = unpackBoat(packBoat(whole));
        expect(found).toEqual({ ...whole, pictures: new Map([...pictures].sort(([a], [b]) => (a < b ? -1 : 1))) });
      },
    ),
    { numRuns: 12 },
  );
});

test('equal boats give equal bytes in whatever order their pictures stand', () => {
  const whole = boat();
  const turned = boat({ pictures: new Map([...whole.pictures].reverse()) });
  expect(packBoat(turned)).toEqual(packBoat(whole));
});

test('a folder of a boat packed by hand is read too, and what is not hers is left out', () => {
  const [hash = '', picture] = [...boat().pictures][0] ?? [];
  const bytes = picture?.bytes ?? new Uint8Array();
  const zip = zipSync({
    'tern/tern.boat.json': utf8('{}'),
    'tern/tern.log.jsonl': utf8('line\n'),
    [`tern/tern.files/${hash}.jpeg`]: bytes,
    [`tern/tern.files/${'0'.repeat(64)}.jpeg`]: bytes,
    'tern/tern.backups/2026-01-01-00-00-00-000.json': utf8('{"old":true}'),
    '../../escape.txt': utf8('out'),
    'other.log.jsonl': utf8('not hers\n'),
  });
  expect(unpackBoat(zip)).toEqual({ id: 'tern', text: '{}', log: 'line\n', pictures: new Map([[hash, picture]]) });
});

test.each([
  ['nothing', new Uint8Array()],
  ['no zip', utf8('PK\x03\x04 and then words')],
  ['a zip cut short', packBoat(boat()).slice(0, 120)],
  ['a zip of something else', zipSync({ 'a.txt': utf8('a') })],
  ['two boats', zipSync({ 'a.boat.json': utf8('{}'), 'b.boat.json': utf8('{}') })],
  [
    'a picture too large',
    zipSync({ 'a.boat.json': utf8('{}'), [`a.files/${'0'.repeat(64)}.png`]: new Uint8Array(8_000_001) }),
  ],
  ['a boat that is no text', zipSync({ 'a.boat.json': Uint8Array.of(0xff, 0xfe, 0xff) })],
])('%s is refused in a sentence', (_, zip) => {
  expect(() => unpackBoat(zip)).toThrow(
    expect.objectContaining({ says: expect.stringMatching(/^This zip .*\.$/), whatToDo: expect.stringMatching(/\.$/) }),
  );
});
