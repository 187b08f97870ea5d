import type { BoatIndex } from '../../boat/boat-index.ts';
import { lengthMm } from '../../boat/measure.ts';
import type { LineEntry } from '../../plan-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { metres } from '../rule-words.ts';
import { lineName } from './line-name.ts';

/** What the pieces fixed for a line are together, a cable aboard among them at the shortest it could be, metres. */
const pinnedM = (index: BoatIndex, line: LineEntry): number | undefined => {
  const pins = index.boat.pins?.pieces;
  const pin = pins !== undefined && Object.hasOwn(pins, line.id) ? pins[line.id] : undefined;
  if (pin === undefined || pin.state === 'fitted') return undefined;
  const allMm = pin.pieces.reduce((sumMm, { mm, cable }) => {
    const aboard = cable === undefined ? undefined : index.cables.get(cable);
    return sumMm + (aboard === undefined ? mm : Math.min(mm, lengthMm(aboard.length).shortestMm));
  }, 0);
  return allMm / 1000;
};

const observed = (index: BoatIndex, line: LineEntry): Observation[] => {
  const piecesM = pinnedM(index, line);
  if (piecesM === undefined || piecesM >= line.longestM) return [];
  const isSure = piecesM < line.lengthM;
  return [
    {
      about: [line.id],
      level: isSure ? 'fault' : 'doubt',
      says: `${lineName(index, line)} is to be made of pieces of ${metres(piecesM)} in all. It is ${metres(line.lengthM)} by the lengths as entered, and up to ${metres(line.longestM)} with their doubt. ${isSure ? 'They do not reach.' : 'They may not reach.'}`,
      measured: { value: piecesM, unit: 'm' },
      cure: isSure
        ? `Order ${metres(line.longestM)} or more, or lead the line a shorter way.`
        : 'Tape the route before anything is ordered or cut; if it is no shorter, take the next longer piece.',
    },
  ];
};

/** A piece is chosen or bought that is shorter than its line could be: found with the cable in hand and the deck open. */
export const piecesTooShort: Rule = {
  id: 'shopping/pieces-too-short',
  level: 'doubt',
  title: 'The pieces chosen for a line are shorter than it could be.',
  sources: ['practice-length-doubt'],
  check: ({ index, plan }) => plan.lines.flatMap((line) => observed(index, line)),
};
