import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import type { Finding } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { lenNotKnown } from './len-not-known.ts';

const found = (withoutLen: string[]): Finding[] => {
  const boat = aBoat().change((draft) => {
    for (const sheet of draft.sheets.filter(({ id }) => withoutLen.includes(id))) {
      for (const port of sheet.ports) delete port.len;
    }
  }).boat;
  const joins = joinsOf(indexBoat(boat), 1).map((join) => ({ ...join, lines: [] }));
  return findingsOf(lenNotKnown, { boat, plan: { joins } });
};

test('a bus whose devices all have a LEN passes; 0183 ports have none and need none', () => {
  expect(found([])).toEqual([]);
});

test('devices without a LEN are one doubt about their bus, by name', () => {
  expect(found(['gnss-receiver', 'heading-sensor'])).toMatchObject([
    {
      level: 'doubt',
      about: ['nav'],
      measured: { value: 2, unit: 'devices' },
      says: expect.stringContaining('GNSS on the stern rail'),
    },
  ]);
});
