import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { ReadingEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { aisNamesMissing } from './ais-names-missing.ts';

const entry: ReadingEntry = {
  reading: 'ais-targets',
  at: 'display',
  must: true,
  arrives: true,
  rests: 'typical',
  by: ['gnss.n2k', 'display.n2k'],
  backups: [],
};
const found = (sent: number[], heard: number[]) => {
  const boat = aBoat()
    .sheet('gnss-receiver', (sheet) => {
      for (const port of sheet.ports) port.sends = sent.map((pgn) => ({ pgn }));
    })
    .sheet('small-display', (sheet) => {
      for (const port of sheet.ports) if (port.id === 'n2k') port.hears = heard.map((pgn) => ({ pgn }));
    }).boat;
  return findingsOf(aisNamesMissing, { boat, plan: { readings: [entry] } });
};
const all = [129038, 129039, 129794, 129809, 129810];

test('positions with all static messages on both lists pass', () => {
  expect(found(all, all)).toEqual([]);
});

test('a sender or a screen without them is a doubt that names the messages', () => {
  expect(found(all.slice(0, 2), all)).toMatchObject([
    { level: 'doubt', says: expect.stringMatching(/129794, 129809, 129810/) },
  ]);
  expect(found(all, all.slice(0, 4))).toMatchObject([{ says: expect.stringMatching(/message 129810 is/) }]);
});
