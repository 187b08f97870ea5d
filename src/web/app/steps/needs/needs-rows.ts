import type { Boat } from '../../../../core/boat/boat-schema.ts';
import { readingName } from '../../../../core/facts/reading-words.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { breakLights } from '../../../../papers/cards/break-lights.ts';
import { cardBoat } from '../../../../papers/cards/card-boat.ts';
import { needWords } from '../../../../papers/cards/need-words.ts';
import { wayLights } from '../../../../papers/cards/way-lights.ts';
import type { Row } from '../../margin/lit-rows.tsx';

/** The readings of one screen or radio, as the margin lists them. */
export interface NeedsGroup {
  readonly unit: string;
  readonly name: string;
  readonly rows: readonly Row[];
}

/** What is needed where, screen by screen in the order of the plan; what does not arrive comes first in each. */
export const needsGroups = ({ boat, plan }: { boat: Boat; plan: Plan }): readonly NeedsGroup[] => {
  const index = cardBoat(boat);
  const units = [...new Set(plan.readings.map((entry) => entry.at))];
  return units.map((unit) => ({
    unit,
    name: index.kit.get(unit)?.name ?? unit,
    rows: plan.readings
      .filter((entry) => entry.at === unit)
      .sort((a, b) => Number(a.arrives) - Number(b.arrives))
      .map(
        (entry): Row => ({
          key: `${entry.reading}/${entry.instance ?? ''}`,
          what: readingName(entry),
          fact: needWords(entry),
          // the way lights up from its source to the screen, or the link at which it breaks
          lights: [...new Set([...wayLights(index, plan, entry.by), ...breakLights(entry)])],
          card: {
            kind: 'reading',
            reading: entry.reading,
            ...(entry.instance === undefined ? {} : { instance: entry.instance }),
          },
        }),
      ),
  }));
};
