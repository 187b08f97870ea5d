import type { Observation, Rule } from '../rule.ts';
import { metres, sourceWords, unitName } from '../rule-words.ts';

/** A deviation card is true for what stood there when it was written. */
export const noSwingPlanned: Rule = {
  id: 'compass/no-swing-planned',
  level: 'doubt',
  title: 'New units come near a compass, and no swing is planned.',
  sources: ['practice-card-swing', 'maker-compass-distance'],
  check: ({ index, plan }) =>
    plan.compass.flatMap((entry): Observation[] => {
      if (index.kit.get(entry.compass)?.site?.swing !== undefined) return [];
      const fresh = entry.units.filter(({ unit }) => index.kit.get(unit)?.fate === 'comes');
      const under = fresh.filter(({ tooNear }) => tooNear);
      const [nearest] = [...(under.length > 0 ? under : fresh)].sort((a, b) => a.distanceM - b.distanceM);
      if (nearest === undefined) return [];
      const others = fresh.length === 1 ? '' : `, with ${fresh.length - 1} more within a metre or their own distance`;
      return [
        {
          about: [entry.compass, nearest.unit],
          apart: [entry.compass],
          level: under.length > 0 ? 'doubt' : 'advice',
          says: `${unitName(index, nearest.unit)} comes ${metres(nearest.distanceM)} from ${unitName(index, entry.compass)}${others}, and nobody has said that the compass will be swung. The card on the bulkhead was written without it, and will be trusted.`,
          measured: { value: nearest.distanceM, unit: 'm' },
          limit: { value: nearest.safeM, unit: 'm', source: sourceWords('maker-compass-distance') },
          cure: 'Plan a swing after the work, everything off and everything on, and enter it; until then the old card is worth nothing. The binder has both cards to fill in.',
        },
      ];
    }),
};
