import { lineJoints } from '../../shopping/line-joints.ts';
import type { Rule } from '../rule.ts';
import { lineName } from './line-name.ts';

/** Two pieces joined in the bilge or in the weather are the place where the line will fail. */
export const jointInTheWet: Rule = {
  id: 'shopping/joint-in-the-wet',
  level: 'fault',
  title: 'Two pieces of a line would be joined in the bilge or in the weather.',
  sources: ['practice-dry-joints'],
  check: ({ index, plan }) =>
    plan.lines
      .filter(({ kept }) => kept === undefined)
      .flatMap((line) => {
        const wet = lineJoints(index, line).filter(({ isWet }) => isWet);
        if (wet.length === 0) return [];
        const ways = [...new Set(wet.map(({ way }) => way))];
        const ends = ways.flatMap((way) => index.ways.get(way)?.ends ?? []);
        const names = [...new Set(ends)].map((place) => index.places.get(place)?.name ?? place);
        return [
          {
            about: [...ways, ...[line.from, line.to].map((end) => end.split(/[./]/)[0] ?? end)],
            says: `${lineName(index, line)} is made of ${line.pieces?.length} pieces, and in whatever order they are laid ${wet.length === 1 ? 'a joint falls' : `${wet.length} joints fall`} in the wet, between ${names.join(' and ')}.`,
            cure: 'Buy it in one piece, or in pieces whose joint falls in a dry place; a joint there belongs in a box made for it.',
          },
        ];
      }),
};
