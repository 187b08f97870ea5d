import type { BoatIndex } from '../../boat/boat-index.ts';
import type { LaidPlan } from '../../plan-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { fedName, someNames } from './supply-words.ts';

interface Feed {
  readonly target: string;
  readonly panel: string;
  readonly nominalV: number;
}

const voltsWords = (volts: readonly number[]): string =>
  someNames([...new Set(volts)].sort((one, other) => one - other).map((value) => `${value} V`));

const differ = (volts: readonly number[]): boolean => new Set(volts).size > 1;

const feedsOf = ({ panels }: LaidPlan): Feed[] => [
  ...panels.flatMap(({ panel, nominalV, circuits }) =>
    circuits.flatMap(({ feeds }) => feeds.map((target) => ({ target, panel, nominalV }))),
  ),
  // a panel hangs on what feeds it, whoever else does
  ...panels.flatMap(({ panel, from }) => {
    const above = panels.find((entry) => entry.panel === from);
    return above === undefined ? [] : [{ target: panel, panel: from, nominalV: above.nominalV }];
  }),
];

/** One thing fed at two voltages: the higher one goes through it into the lower. */
const joined = (index: BoatIndex, plan: LaidPlan): Observation[] => {
  const feeds = feedsOf(plan);
  const targets = [...new Set(feeds.map(({ target }) => target))];
  return targets.flatMap((target) => {
    const own = feeds.filter((feed) => feed.target === target);
    if (!differ(own.map(({ nominalV }) => nominalV))) return [];
    const [id = ''] = target.split('.');
    return [
      {
        about: [id, ...own.map(({ panel }) => panel)],
        level: 'danger' as const,
        says: `${fedName(index, target)} is fed at ${voltsWords(own.map(({ nominalV }) => nominalV))}, by ${someNames([...new Set(own.map(({ panel }) => panel))])}. The higher voltage goes through it into everything on the lower.`,
        cure: 'Keep one feed, of the voltage it is made for.',
      },
    ];
  });
};

const charged = ({ boat, banks }: BoatIndex): Observation[] =>
  (boat.supply.chargers ?? []).flatMap(({ id, charges }) => {
    const volts = charges.flatMap((bank) => banks.get(bank)?.nominalV ?? []);
    if (!differ(volts)) return [];
    return [
      {
        about: [id, ...charges],
        says: `${id} charges banks of ${voltsWords(volts)}. What fills the one destroys the other.`,
        cure: 'Charge the one of lower voltage by a converter that is made to charge, or by a charger of its own.',
      },
    ];
  });

/** What joins a starting bank to the house, and no house bank has its volts. */
const parted = ({ boat }: BoatIndex): Observation[] => {
  const house = boat.supply.banks.filter((bank) => bank.for !== 'start');
  return boat.supply.banks
    .filter(
      ({ for: purpose, partedBy }) => purpose === 'start' && ['switch', 'relay', 'nothing'].includes(partedBy ?? ''),
    )
    .filter(({ nominalV }) => house.length > 0 && house.every((bank) => bank.nominalV !== nominalV))
    .map(({ id, nominalV, partedBy }) => ({
      about: [id, ...house.map((bank) => bank.id)],
      says: `The starting bank ${id} of ${nominalV} V is joined to the house by ${partedBy === 'nothing' ? 'a wire' : `a ${partedBy}`}, and the house has ${voltsWords(house.map((bank) => bank.nominalV))}.`,
      cure: 'Put a converter that charges between the two, or keep them apart.',
    }));
};

/** 12 and 24 V meet only in a converter. */
export const mixedVolts: Rule = {
  id: 'supply/mixed-volts',
  level: 'fault',
  title: 'Two voltages meet where there is no converter between them.',
  sources: ['choice-named-volts', 'practice-separate-feeds'],
  check: ({ index, plan }) => [...joined(index, plan), ...charged(index), ...parted(index)],
};
