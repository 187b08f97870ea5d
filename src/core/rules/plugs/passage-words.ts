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

const choiceWords = (index: BoatIndex, { does, cost, wideMm, ways = [] }: Choice): string => {
  switch (does) {
    case 'fit-plug':
      return cost === 0
        ? 'draw the cable before it gets its plugs'
        : 'cut its plug off at one end and fit one behind the hole';
    case 'wider-hole':
      return `widen the hole to ${wideMm} mm`;
    case 'other-way': {
      const by = placesAlong(index, ways);
      return by === '' ? 'lead it another way' : `lead it by ${by}`;
    }
  }
};

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;

/** What can be done about a plug that does not pass and is not done yet, as cures; only leading it another way is an edit. */
export const passageCures = (index: BoatIndex, passages: readonly PassageEntry[]): Cure[] =>
  passages.flatMap(({ line, choices, takes }) =>
    choices
      .filter(({ does }) => takes !== 'other-way' || does !== takes)
      .map(
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

const priced = (index: BoatIndex, choice: Choice): string => {
  const currency = index.boat.prices?.currency ?? typicalPrices.currency;
  const price = choice.cost === 0 ? 'at no cost' : `about ${Math.round(choice.cost / 100)} ${currency}`;
  return `${choiceWords(index, choice)} (${price})`;
};

/** What can be done about one line before one hole, each with its price, as part of a sentence: what the plan counts on comes first. */
export const passageWords = (index: BoatIndex, { choices }: PassageEntry): string =>
  choices.map((choice) => priced(index, choice)).join('; or ');

/** Lines named one by one in a finding; more are counted. */
const linesNamed = 3;

/** The same for all lines before one hole, in sentences. */
export const passagesWords = (index: BoatIndex, passages: readonly PassageEntry[]): string => {
  const told = passages.filter(({ choices }) => choices.length > 0);
  const [first] = told;
  if (first === undefined) return '';
  const words = told.map((passage) => passageWords(index, passage));
  if (new Set(words).size === 1) return sentence(`${told.length === 1 ? '' : 'for each cable: '}${words[0]}`);
  const each = told.map(({ line }, at) => sentence(`${lineWords(index, line)}: ${words[at]}`));
  const more = each.slice(linesNamed).length;
  const rest = more === 1 ? '1 more is priced beside its line.' : `${more} more are priced beside their lines.`;
  return [...each.slice(0, linesNamed), ...(more === 0 ? [] : [rest])].join(' ');
};
