import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { LogEntry } from '../../../core/log/log-entry.ts';
import { carriedIn, carriedText } from './carried-entries.ts';

const boat = { id: 'tern', name: 'Tern' };

test('what waits is carried whole from one address of the laptop to another, whatever was written', () => {
  fc.assert(
    fc.property(fc.array(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 60 }), { maxLength: 12 }), (texts) => {
      const entries = texts.map(
        (text, at): LogEntry => ({
          kind: 'note',
          id: `entry${String(at).padStart(4, '0')}`,
          at: '2027-03-31T09:30:00.000Z',
          about: [],
          text,
        }),
      );
      const text = carriedText({ boat, entries });
      expect(text).toMatch(/^[A-Za-z0-9_-]*$/);
      expect(carriedIn(text)).toEqual({ boat, entries });
    }),
  );
});

test('what is no such text carries nothing', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 80 }), (text) => {
      expect(carriedIn(text)?.entries ?? []).toEqual([]);
    }),
  );
  expect(carriedIn(btoa('{"boat":{"id":"tern","name":"Tern"},"entries":[1,{"id":"x"},null]}'))?.entries).toEqual([]);
});
