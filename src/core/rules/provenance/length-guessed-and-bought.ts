import { lengthMm } from '../../boat/measure.ts';
import type { Rule } from '../rule.ts';
import { busName, metres } from '../rule-words.ts';

/** A trunk that is bought but not yet laid, by a way whose length is a guess: the piece may be too short, or cut too early. */
export const lengthGuessedAndBought: Rule = {
  id: 'provenance/length-guessed-and-bought',
  level: 'doubt',
  title: 'Trunk is bought for a way whose length is only guessed.',
  sources: ['practice-length-doubt'],
  check: ({ index }) =>
    Object.entries(index.boat.pins?.layouts ?? {})
      .filter(([, { state }]) => state === 'bought')
      .flatMap(([bus, { walk }]) =>
        [...new Set(walk.flatMap(({ via }) => via ?? []))].flatMap((id) => {
          const way = index.ways.get(id);
          if (way === undefined || way.length.how !== 'guessed') return [];
          const [a, b] = way.ends.map((place) => index.places.get(place)?.name ?? place);
          const { nominalMm, longestMm } = lengthMm(way.length);
          const shortM = (longestMm - nominalMm) / 1000;
          return [
            {
              about: [bus, id],
              says: `The trunk of ${busName(index, bus)} is bought, and its way from ${a} to ${b} is guessed: ${metres(nominalMm / 1000)}, and up to ${metres(longestMm / 1000)}. The piece may be ${metres(shortM)} short.`,
              measured: { value: shortM, unit: 'm' },
              cure: 'Tape the way before any piece is cut, and enter the length as taped.',
            },
          ];
        }),
      ),
};
