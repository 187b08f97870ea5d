import { expect, test } from 'vitest';
import { aBoat } from '../../../../core/boat/a-boat.test-helper.ts';
import { aPlan, aReading } from '../../../../papers/lists/a-plan.test-helper.ts';
import { needsGroups } from './needs-rows.ts';

test('a reading lights every unit on its way from the source to the screen', () => {
  const readings = [aReading({ at: 'screen', by: ['sounder.n2k', 'screen.n2k'], backups: [['log.out', 'screen.in']] })];
  expect(needsGroups({ boat: aBoat().boat, plan: aPlan({ readings }) })).toEqual([
    {
      unit: 'screen',
      name: 'screen',
      rows: [
        {
          key: 'depth/',
          what: 'depth',
          fact: 'by typical sheet, 1 backup',
          lights: ['sounder', 'screen'],
          card: { kind: 'reading', reading: 'depth' },
        },
      ],
    },
  ]);
});

test('what does not arrive comes first at its screen and says why not', () => {
  const missing = aReading({
    reading: 'engine',
    instance: 1,
    arrives: false,
    whyNot: { link: { broken: 'no-source' }, says: 'Nothing aboard sends it.', cures: [] },
  });
  const [group] = needsGroups({ boat: aBoat().boat, plan: aPlan({ readings: [aReading(), missing] }) });
  expect(group?.rows.map((row) => [row.what, row.fact])).toEqual([
    ['engine 1', 'Nothing aboard sends it.'],
    ['depth', 'by typical sheet'],
  ]);
});

test('readings are called as in every other paper', () => {
  const readings = [
    aReading({ reading: 'ais-targets' }),
    aReading({ reading: 'mob' }),
    aReading({ reading: 'alerts' }),
  ];
  const [group] = needsGroups({ boat: aBoat().boat, plan: aPlan({ readings }) });
  expect(group?.rows.map((row) => row.what)).toEqual(['AIS targets', 'man overboard', 'alerts']);
});

test('a reading is marked as new, as before, or lost', () => {
  const whyNot = { link: { broken: 'no-source' as const }, says: 'Nothing aboard sends it.', cures: [] };
  const readings = [
    aReading({ reading: 'depth', seenBefore: true }),
    aReading({ reading: 'heading', seenBefore: false }),
    aReading({ reading: 'rudder', seenBefore: true, arrives: false, whyNot }),
  ];
  const [group] = needsGroups({ boat: aBoat().boat, plan: aPlan({ readings }) });
  expect(group?.rows.map((row) => [row.what, row.fact])).toEqual([
    ['rudder angle', 'lost: Nothing aboard sends it.'],
    ['depth', 'by typical sheet, as before'],
    ['heading', 'by typical sheet, new'],
  ]);
});
