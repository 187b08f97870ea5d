import { labelsText } from '../../lists/labels-text.ts';
import { type KnownBoat, labelOf } from '../known-boat.ts';

const isDeckPlug = (known: KnownBoat, end: string): boolean => {
  const [unit = '', plug] = end.split(/[.#]/);
  const sheet = known.index.sheetOf.get(unit);
  return sheet?.plugs.some(({ id, connector }) => id === plug && connector.startsWith('deck-')) === true;
};

/** Lines with a plug in the deck at a place, by their ids. */
const atDeckPlugs = (known: KnownBoat, place: string): string[] =>
  known.plan.lines
    .filter(
      ({ from, to, places }) =>
        (places[0] === place && isDeckPlug(known, from)) || (places.at(-1) === place && isDeckPlug(known, to)),
    )
    .map(({ id }) => id);

/** What is said of a place where cables are made to come apart: at the foot of a mast, at a plug in the deck. */
export const partedHere = (known: KnownBoat, place: string): string[] => {
  const text = (lines: readonly string[]): string => labelsText(lines.map((line) => labelOf(known, line)));
  const plugs = atDeckPlugs(known, place);
  return [
    ...known.plan.masts
      .filter(({ breakAt }) => breakAt === place)
      .map(({ lines }) => `parted here: ${text(lines.map(({ line }) => line))}`),
    ...(plugs.length === 0 ? [] : [`plug in the deck: ${text(plugs)}`]),
  ];
};
