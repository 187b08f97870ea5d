import { outsideKinds } from '../../facts/remote-figures.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** Guests are let on to a wifi from which the boat’s own units are in reach. */
export const guestWifiNotApart: Rule = {
  id: 'remote/guest-wifi-not-apart',
  level: 'advice',
  title: 'The wifi that guests are let on to is not apart from the boat.',
  sources: ['practice-remote'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) =>
    plan.remote.flatMap(({ kit, port, guests, network, gates, writes }) => {
      // What joins her to the shore is what guests are let on for, and so is another guest’s phone.
      const units = network.filter((unit) => {
        const kind = index.sheetOf.get(unit)?.kind ?? '';
        return !outsideKinds.has(kind) && kind !== 'tablet' && kind !== 'phone';
      });
      if (!guests || (units.length === 0 && gates.length === 0)) return [];
      const reached = units.length === 0 ? gates.map((gate) => gate.port) : units;
      const names = [...new Set(reached.map((id) => unitName(index, id)))];
      const shown =
        names.length > 3 ? `${names.slice(0, 3).join(', ')} and ${names.length - 3} more` : names.join(', ');
      return [
        {
          about: [kit],
          apart: port === undefined ? [] : [port],
          ...(writes === 'may-write' || writes === 'unknown' ? { level: 'fault' as const } : {}),
          says: `Guests are let on to the wifi of ${unitName(index, kit)}, and from there ${shown} ${names.length === 1 ? 'is' : 'are'} in reach.`,
          cure: 'Give guests a wifi of their own that leads to the internet and nowhere else; many routers have one to switch on.',
        },
      ];
    }),
};
