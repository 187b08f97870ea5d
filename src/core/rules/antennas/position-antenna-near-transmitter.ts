import type { Spacing } from '../../aerial-shape.ts';
import { limitOf } from '../../boat/limit-of.ts';
import type { Observation, Rule } from '../rule.ts';
import { limitPart, metres, unitName } from '../rule-words.ts';

/** Position antennas that are only advice are told together, by what sends near them. */
const grouped = (spacings: readonly Spacing[]): Spacing[][] => {
  const found = spacings.filter(({ what, verdict }) => what === 'position' && verdict !== 'ok');
  const keyOf = ({ one, other, verdict }: Spacing): string => (verdict === 'advice' ? other : `${one} ${other}`);
  return [...new Set(found.map(keyOf))].map((key) => found.filter((spacing) => keyOf(spacing) === key));
};

/** What listens to satellites hears nothing else while a radio sends beside it. */
export const positionAntennaNearTransmitter: Rule = {
  id: 'antennas/position-antenna-near-transmitter',
  level: 'doubt',
  title: 'A position antenna stands near an antenna that sends.',
  sources: ['practice-antenna-distance'],
  check: ({ index, plan }) =>
    grouped(plan.spacings).flatMap((group): Observation[] => {
      const [nearest] = [...group].sort((one, other) => one.distanceM - other.distanceM);
      if (nearest === undefined) return [];
      const { other, distanceM, limitM = 0, verdict } = nearest;
      const names = group.map(({ one }) => unitName(index, one)).join(' and ');
      const limitId = verdict === 'advice' ? 'position-antenna-advice' : 'position-antenna-warn';
      return [
        {
          about: [...group.map(({ one }) => one), other],
          ...(verdict === 'advice' ? { level: 'advice' } : {}),
          says: `${names} ${group.length > 1 ? 'stand' : 'stands'} ${metres(distanceM)} from ${unitName(index, other)}, which sends; installation books ask for ${limitM} m.`,
          measured: { value: distanceM, unit: 'm' },
          limit: limitPart(limitOf(index.boat, limitId)),
          cure:
            verdict === 'advice'
              ? 'Send at full power at the dock and watch whether the position holds; move it only if it does not.'
              : 'Move one of the two: position may be lost whenever the radio sends.',
        },
      ];
    }),
};
