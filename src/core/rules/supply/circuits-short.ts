import type { BoatIndex } from '../../boat/boat-index.ts';
import type { PanelEntry } from '../../panels-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { aFew, fedName, someNames, unitOf } from './supply-words.ts';

const count = (value: number, one: string): string => `${value} ${one}${value === 1 ? '' : 's'}`;

const blockWords = (takes: PanelEntry['takes']): string =>
  takes === undefined
    ? 'Fit a fuse block behind one circuit.'
    : `Fit a fuse block of ${count(takes.circuits, 'circuit')} behind one circuit${takes.feedA === undefined ? '' : ` of ${takes.feedA} A or more`}, with wire to match.`;

/** The phase in which most is wanted beyond what is free. */
const worstOf = (room: PanelEntry['room']) =>
  room.reduce<PanelEntry['room'][number] | undefined>(
    (most, one) =>
      one.wanted.length - one.free > (most === undefined ? 0 : most.wanted.length - most.free) ? one : most,
    undefined,
  );

const onPanel = (index: BoatIndex, { panel, room, takes }: PanelEntry): Observation[] => {
  const worst = worstOf(room);
  if (worst === undefined) return [];
  const names = someNames(worst.wanted.map((target) => fedName(index, target)));
  const wanted = `${names} ${worst.wanted.length === 1 ? 'wants' : 'want'} a circuit of the panel ${panel} in phase ${worst.phase}`;
  const isCounted = worst.short !== undefined;
  return [
    {
      about: [panel, ...aFew(worst.wanted.map(unitOf))],
      level: isCounted ? 'fault' : 'doubt',
      says: isCounted
        ? `${wanted}, and ${worst.free === 0 ? 'none is' : `${worst.free} ${worst.free === 1 ? 'is' : 'are'}`} free: ${worst.short} short.`
        : `${wanted}, and nobody has counted its free places.`,
      measured: { value: worst.wanted.length, unit: 'circuits' },
      ...(isCounted ? { limit: { value: worst.free, unit: 'circuits', source: 'the boat file' } } : {}),
      cure: isCounted ? blockWords(takes) : 'Count the places with no breaker or fuse in them and enter them.',
    },
  ];
};

/** Every unit wants a circuit, and a panel has only so many. */
export const circuitsShort: Rule = {
  id: 'supply/circuits-short',
  level: 'fault',
  title: 'More units want a circuit than a panel has left.',
  sources: ['practice-separate-feeds'],
  check: ({ index, plan }) => [
    ...plan.panels.flatMap((panel) => onPanel(index, panel)),
    ...plan.noPanel.slice(-1).map(({ wanted }) => ({
      about: aFew(wanted.map(unitOf)),
      says: `No panel aboard has the volts for ${someNames(wanted.map((target) => fedName(index, target)))}.`,
      cure: 'Add a panel of their voltage, behind a converter if need be.',
    })),
  ],
};
