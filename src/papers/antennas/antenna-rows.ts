import type { Plan } from '../../core/plan-shape.ts';
import { asSentences, radarBrief, reachSays, type SiteNames } from './aerial-words.ts';

/** One antenna or radar as a list shows it. */
export interface AntennaRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  /** ids it lights on the drawing */
  readonly lights: readonly string[];
}

/** Every antenna and radar: how high, how far it reaches, what arrives; what stands near is on its card. */
export const antennaRows = (names: SiteNames, plan: Pick<Plan, 'sites' | 'coax' | 'spacings'>): AntennaRow[] =>
  plan.sites
    .filter(({ aerial, radar }) => aerial !== undefined || radar !== undefined)
    .map(({ unit }) => ({
      key: unit,
      what: names.kit.get(unit)?.name ?? unit,
      fact: asSentences([...reachSays(names, plan, unit), ...radarBrief(names, plan, unit)]).join(' '),
      lights: [
        unit,
        ...plan.coax
          .filter(({ antenna }) => antenna === unit)
          .flatMap(({ pieces }) => [...new Set(pieces.map(({ line }) => line))]),
      ],
    }));
