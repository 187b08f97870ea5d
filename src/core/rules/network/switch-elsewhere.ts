import type { Rule } from '../rule.ts';
import { metres, unitName } from '../rule-words.ts';

/** A switch is told of where another place takes so much less cable. */
const worthwhile = { metres: 3, share: 0.1 } as const;

/** The place of a switch that comes is free to choose, and every one of its cables is paid by the metre and the hour. */
export const switchElsewhere: Rule = {
  id: 'network/switch-elsewhere',
  level: 'advice',
  title: 'A switch would take less cable at another place.',
  sources: ['practice-ethernet'],
  check: ({ index, plan }) =>
    plan.networks.flatMap(({ hubs }) =>
      hubs.flatMap(({ kit, cableM, best }) => {
        const unit = index.kit.get(kit);
        if (unit?.fate !== 'comes' || cableM === undefined || best === undefined) return [];
        const savedM = cableM - best.cableM;
        if (savedM < worthwhile.metres || savedM < worthwhile.share * cableM) return [];
        const place = index.places.get(best.place)?.name ?? best.place;
        const says = `Move ${unit.name} to ${place}.`;
        return [
          {
            about: [kit, best.place],
            says: `${unitName(index, kit)} takes ${metres(cableM)} of network cable where it is, and ${metres(best.cableM)} at ${place}.`,
            cure: says,
            cures: [{ says, edits: [{ edit: 'move-unit', params: { unit: kit, place: best.place } }] }],
          },
        ];
      }),
    ),
};
