import type { Boat, Cable } from '../../boat/boat-schema.ts';
import { lengthMm } from '../../boat/measure.ts';
import { typicalPrices } from '../../facts/prices.ts';
import { metreItem, priceList } from '../../prices/price-list.ts';
import type { Rule } from '../rule.ts';
import { metres, unitName } from '../rule-words.ts';

const words: Readonly<Record<Exclude<Cable['condition'], 'good'>, string>> = {
  untested: 'has not been tested',
  doubtful: 'is in doubtful condition',
  bad: 'is in bad condition',
};

/** What a new cable in its place would be: as long as the old one could be, work not counted. */
const replacement = (boat: Boat, { kind, length }: Cable): string => {
  const { longestMm } = lengthMm(length);
  const prices = priceList(boat);
  const perM = prices.known(kind, metreItem({ kind }), prices.perM(kind));
  const { currency } = boat.prices ?? typicalPrices;
  const price =
    perM === undefined
      ? ''
      : `, about ${(Math.ceil((longestMm * perM) / 1000) / 100).toFixed(2)} ${currency} without plugs and work`;
  return `A new one would be ${metres(longestMm / 1000)}${price}.`;
};

/** The plan leans on a cable that lies in the boat already; it must pass a test before anything is ordered round it. */
export const keptCableUntested: Rule = {
  id: 'provenance/kept-cable-untested',
  level: 'doubt',
  title: 'The plan relies on a cable aboard that nobody has tested.',
  sources: ['practice-survey', 'choice-part-prices', 'choice-prices'],
  check: ({ index, plan }) =>
    plan.lines.flatMap((line) =>
      (line.kept ?? []).flatMap((id) => {
        const cable = index.cables.get(id);
        if (cable === undefined || cable.condition === 'good') return [];
        return [
          {
            about: [cable.id],
            level: cable.condition === 'bad' ? ('fault' as const) : ('doubt' as const),
            says: `The ${line.kind.replace('-', ' ')} line from ${unitName(index, line.from)} to ${unitName(index, line.to)} is to run on the cable ${cable.name ?? cable.id}, which ${words[cable.condition]}.`,
            cure: `Test it end to end before you order: resistance of each conductor, and insulation between them. If it fails, take it out and enter it as going. ${replacement(index.boat, cable)}`,
          },
        ];
      }),
    ),
};
