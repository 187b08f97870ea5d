import type { Rule } from '../rule.ts';
import { metres } from '../rule-words.ts';

/** Something comes that stands higher than the air draft says: a new antenna makes her taller. */
export const higherThanAirDraft: Rule = {
  id: 'settings/higher-than-air-draft',
  level: 'fault',
  title: 'New gear stands higher than the air draft.',
  sources: ['practice-air-draft'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) => {
    const { mostM } = plan.airDraft;
    const top = (unit: string, placeId: string): number =>
      (index.places.get(placeId)?.zM ?? 0) + (index.sheetOf.get(unit)?.body?.heightMm ?? 0) / 1000;
    return index.boat.kit
      .filter((unit) => unit.fate === 'comes' && top(unit.id, unit.place) > mostM)
      .map(({ id, name, place }) => ({
        about: [id],
        says: `${name} reaches ${metres(top(id, place))} over the water, the air draft is ${metres(mostM)} at its most: she becomes taller by it, and no chart and no bridge knows.`,
        measured: { value: top(id, place), unit: 'm' },
        limit: { value: mostM, unit: 'm', source: 'the boat’s own air draft' },
        cure: 'Measure it when it stands, and enter it among the parts of the air draft.',
      }));
  },
};
