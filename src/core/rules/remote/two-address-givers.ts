import type { BoatIndex } from '../../boat/boat-index.ts';
import { type Network, networksOf } from '../../joins/networks.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** Whether a unit gives addresses on this network: one that parts two networks gives them on the side of its own sockets. */
const givesOn = (index: BoatIndex, kit: string, { ports }: Network): boolean => {
  const sheet = index.sheetOf.get(kit);
  if ((index.kit.get(kit)?.remote?.givesAddresses ?? sheet?.remote?.givesAddresses) !== true) return false;
  const own = ports.filter((port) => port.kit === kit).map(({ port }) => port.id);
  const together = sheet?.together ?? [];
  return together.length === 0 || together.some((group) => own.some((port) => group.includes(port)));
};

/** Two units hand out addresses on one network: each unit gets one from whichever answered first, and some see nobody. */
export const twoAddressGivers: Rule = {
  id: 'remote/two-address-givers',
  level: 'fault',
  title: 'Two units give addresses on one network.',
  sources: ['practice-ethernet', 'practice-remote'],
  check: ({ index, plan }) =>
    networksOf(index, plan.phase, plan.joins).flatMap((network) => {
      const givers = network.units.filter((kit) => givesOn(index, kit, network));
      if (givers.length < 2) return [];
      const names = givers.map((kit) => unitName(index, kit));
      return [
        {
          about: givers,
          says: `${names.join(' and ')} ${givers.length === 2 ? 'both' : 'all'} give addresses on one network. A unit takes the first that is offered: some get two, some the same one, and a screen that worked yesterday sees no radar today.`,
          measured: { value: givers.length, unit: 'givers' },
          limit: { value: 1, unit: 'giver', source: 'common practice: one giver of addresses on a network' },
          cure: `Let one of them give addresses and switch that off in the other${givers.length === 2 ? '' : 's'}; where a maker’s own radar network wants to give its own, keep it on a switch apart.`,
        },
      ];
    }),
};
