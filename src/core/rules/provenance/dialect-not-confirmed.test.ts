import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Join } from '../../boat/boat-schema.ts';
import type { Port, Sheet } from '../../boat/sheet.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { dialectNotConfirmed } from './dialect-not-confirmed.ts';

const sheet = (id: string, dialect: string, role: Port['role']): Sheet => ({
  id,
  name: id,
  kind: 'pilot-part',
  source: 'typical',
  plugs: [{ id: 'net', connector: 'own', gender: 'male' }],
  ports: [{ id: 'net', onPlug: 'net', protocol: 'single-wire', dialect, role }],
});

const found = (talker: string, listener: string, confirmed?: Join['confirmed']) => {
  const boat = aBoat().add({
    sheets: [sheet('computer', talker, 'talk'), sheet('head', listener, 'listen')],
    kit: [
      { id: 'the-computer', name: 'Computer', sheet: 'computer', fate: 'stays', place: 'locker' },
      { id: 'the-head', name: 'Head', sheet: 'head', fate: 'comes', place: 'helm' },
    ],
    joins: [
      {
        id: 'maker-wire',
        kind: 'single-wire',
        members: [
          { kit: 'the-computer', port: 'net', as: 'talk' },
          { kit: 'the-head', port: 'net', as: 'listen' },
        ],
        hold: 'fixed',
        ...(confirmed === undefined ? {} : { confirmed }),
      },
    ],
  }).boat;
  const joins = joinsOf(indexBoat(boat), 1).map((join) => ({ ...join, lines: [] }));
  return findingsOf(dialectNotConfirmed, { boat, plan: { joins } });
};

test('one generation on both sides passes', () => {
  expect(found('maker-a/1', 'maker-a/1')).toEqual([]);
});

test('two generations, or one unknown, are a doubt about the join and both units', () => {
  for (const listener of ['maker-a/2', 'maker-a/unknown']) {
    expect(found('maker-a/1', listener)).toMatchObject([
      { level: 'doubt', about: ['maker-wire', 'the-computer', 'the-head'] },
    ]);
  }
  expect(found('maker-a/unknown', 'maker-a/unknown')).toHaveLength(1);
});

test('a join that somebody confirmed passes; two makers are another matter', () => {
  expect(found('maker-a/1', 'maker-a/2', { by: 'the maker', source: 'a letter', version: '2' })).toEqual([]);
  expect(found('maker-a/1', 'maker-b/1')).toEqual([]);
});
