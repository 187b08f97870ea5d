import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Port, Sheet } from '../../boat/sheet.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { languagesDiffer } from './languages-differ.ts';

const box = (id: string, role: Port['role'], dialect?: string): Sheet => ({
  id,
  name: id,
  kind: 'instrument',
  source: 'typical',
  plugs: [],
  ports: [{ id: 'wire', protocol: 'single-wire', role, ...(dialect === undefined ? {} : { dialect }) }],
});

/** A talker of the first language with a listener of each of the others on one wire. */
const found = (talks: string | undefined, ...hear: (string | undefined)[]) => {
  const ears = hear.map((dialect, n) => ({ id: `ear-${n}`, dialect }));
  const boat = aBoat().add({
    sheets: [box('mouth', 'talk', talks), ...ears.map(({ id, dialect }) => box(id, 'listen', dialect))],
    kit: ['mouth', ...ears.map(({ id }) => id)].map((id) => ({
      id,
      name: id,
      sheet: id,
      fate: 'comes',
      place: 'helm',
    })),
    joins: [
      {
        id: 'old-wire',
        kind: 'single-wire',
        members: [
          { kit: 'mouth', port: 'wire', as: 'talk' },
          ...ears.map(({ id }) => ({ kit: id, port: 'wire', as: 'listen' as const })),
        ],
        hold: 'fixed',
      },
    ],
  }).boat;
  const joins = joinsOf(indexBoat(boat), 1).map((join) => ({ ...join, lines: [] }));
  return findingsOf(languagesDiffer, { boat, plan: { joins } });
};

test('one maker’s language passes, of whatever generation, and so does a port that says none', () => {
  expect(found('maker-a/1', 'maker-a/1', 'maker-a/2')).toEqual([]);
  expect(found('maker-a/1', undefined)).toEqual([]);
  expect(found(undefined, 'maker-a/1')).toEqual([]);
});

test('a wire of maker A into the socket of maker B is a fault about the join and both', () => {
  expect(found('maker-a/1', 'maker-a/1', 'maker-b/1')).toMatchObject([
    {
      level: 'fault',
      about: ['ear-1', 'mouth', 'old-wire'],
      says: expect.stringMatching(/language of maker A.* one of maker B/),
    },
  ]);
});

test('two listeners that differ are found though the talker says no language', () => {
  expect(found(undefined, 'maker-a/1', 'maker-b/1')).toMatchObject([{ about: ['ear-0', 'ear-1', 'old-wire'] }]);
});
