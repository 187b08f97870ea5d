import { lengthMm } from '../../boat/measure.ts';
import type { Rule } from '../rule.ts';
import { sourceWords } from '../rule-words.ts';

/** A route cannot be shorter than the straight line between its ends: a place or the length is wrong. */
export const shorterThanStraight: Rule = {
  id: 'ways/shorter-than-straight',
  level: 'fault',
  title: 'A way is shorter than the straight line between its two places.',
  sources: ['geometry'],
  check: ({ index }) =>
    index.boat.ways.flatMap((way) => {
      const [a, b] = way.ends.map((id) => index.places.get(id));
      if (a === undefined || b === undefined) return [];
      const straightM = Math.hypot(a.xM - b.xM, a.yM - b.yM, a.zM - b.zM);
      const lengthM = lengthMm(way.length).nominalMm / 1000;
      // places are read to the centimetre, so a millimetre or two is no fault
      if (lengthM >= straightM - 0.01) return [];
      return [
        {
          about: [way.id],
          says: `The way from ${a.name} to ${b.name} is entered as ${lengthM.toFixed(2)} m, but the straight line between them is ${straightM.toFixed(2)} m. It is counted as the straight line until one of the three is mended.`,
          measured: { value: lengthM, unit: 'm' },
          limit: { value: straightM, unit: 'm', source: sourceWords('geometry') },
          cure: 'Tape the way again, or correct where one of the two places is.',
        },
      ];
    }),
};
