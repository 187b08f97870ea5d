import { expect, test } from 'vitest';
import { aCompassBoat } from '../../../core/compass-boat.test-helper.ts';
import { planSea } from '../../../core/fitting/sea/plan-sea.ts';
import { deviationChapter } from './deviation-cards.ts';

const headings = Array.from({ length: 12 }, (_, at) => at * 30);

const chapterOf = (compassOff: number) => {
  const { boat } = aCompassBoat().with({
    sea: {
      swings: [
        {
          id: 'swing',
          unit: 'card',
          on: '2027-06-01',
          electronics: 'on',
          points: headings.map((magneticDeg) => ({ magneticDeg, compassDeg: (magneticDeg + 360 - compassOff) % 360 })),
        },
      ],
    },
  });
  return deviationChapter(boat, { atSea: planSea(boat, 12) });
};

test('a compass that was swung has its card filled in and its curve drawn, one that was not has lines to write on', () => {
  const { blocks } = chapterOf(2);
  expect(blocks.map(({ kind }) => kind)).toEqual(['words', 'table', 'words', 'drawing']);
  const [, table, , drawing] = blocks;
  expect(table?.kind === 'table' && table.table.rows[0]).toEqual([0, '358', '2.0 E', 180, '178', '2.0 E']);
  expect(drawing).toMatchObject({ about: ['card'] });
  const { boat } = aCompassBoat();
  expect(deviationChapter(boat, { atSea: planSea(boat, 12) }).blocks.map(({ kind }) => kind)).toEqual([
    'words',
    'table',
    'blanks',
  ]);
});
