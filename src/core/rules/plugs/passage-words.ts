import type { BoatIndex } from '../../boat/boat-index.ts';
import { typicalPrices } from '../../facts/prices.ts';
import type { Cure, PassageEntry } from '../../plan-shape.ts';
import { unitName } from '../rule-words.ts';

type Choice = PassageEntry['choices'][number];

const placesAlong = (index: BoatIndex, ways: readonly string[]): string => {
  const ends = ways.flatMap((id) => index.ways.get(id)?.ends ?? []);
  const inner = [...new Set(ends.filter((end, at) => ends.indexOf(end) !== at))];
  return inner.map((id) => index.places.get(id)?.name ?? id).join(', ');
};

const lineWords = (index: BoatIndex, line: string): string => {
  const ends = line.slice(line.indexOf(':') + 1).split('~');
  return ends
    .filter((end) => end.includes('.'))
    .map((end) => unitName(index, end))
    .join(' and ');
};

const choiceWords = (index: BoatIndex, { does, wideMm, ways = [] }: Choice): string => {
  switch (does) {
    case 'fit-plug':
      return 'draw the cable bare and fit its plug behind the hole';
    case 'wider-hole':
      return `widen the hole to ${wideMm} mm`;
    case 'other-way': {
      const by = placesAlong(index, ways);
      return by === '' ? 'lead it another way' : `lead it by ${by}`;
    }
  }
};

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;

/** What can be done about a plug that does not pass, cheapest first, as cures; only leading it another way is an edit. */
export const passageCures = (index: BoatIndex, passages: readonly PassageEntry[]): Cure[] =>
  passages.flatMap(({ line, choices }) =>
    choices.map(
      (choice): Cure => ({
        says: sentence(`${lineWords(index, line)}: ${choiceWords(index, choice)}`),
        edits:
          choice.does === 'other-way'
            ? [{ edit: 'pin-route', params: { line, ways: choice.ways ?? [], state: 'fixed' } }]
            : [],
        cost: choice.cost,
      }),
    ),
  );

/** The same in one sentence, each with its price. */
export const passageWords = (index: BoatIndex, { choices }: PassageEntry): string => {
  const currency = index.boat.prices?.currency ?? typicalPrices.currency;
  const priced = choices.map(
    (choice) => `${choiceWords(index, choice)} (about ${Math.round(choice.cost / 100)} ${currency})`,
  );
  return priced.length === 0 ? '' : sentence(priced.join('; or '));
};
