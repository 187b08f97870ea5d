import type { Plan } from '../../core/plan-shape.ts';
import { asSentences, radarBrief, reachSays, type SiteNames } from './aerial-words.ts';

/** One antenna or radar as a list shows it. */
export interface AntennaRow {
  readonly key: string;
  readonly what: string;
  /** how high it stands */
  readonly fact: string;
  /** how far it reaches, what arrives at it, what it asks for: a sentence each */
  readonly more: readonly string[];
  /** ids it lights on the drawing */
  readonly lights: readonly string[];
}

/** Every antenna and radar: how high, how far it reaches, what arrives; what stands near is on its card. */
export const antennaRows = (names: SiteNames, plan: Pick<Plan, 'sites' | 'coax' | 'spacings'>): AntennaRow[] =>
  plan.sites
    .filter(({ aerial, radar }) => aerial !== undefined || radar !== undefined)
    .map(({ unit }) => {
      const [fact = '', ...more] = asSentences([...reachSays(names, plan, unit), ...radarBrief(names, plan, unit)]);
      const runs = plan.coax.filter(({ antenna }) => antenna === unit);
      return {
        key: unit,
        what: names.kit.get(unit)?.name ?? unit,
        fact,
        more,
        lights: [unit, ...runs.flatMap(({ pieces }) => [...new Set(pieces.map(({ line }) => line))])],
      };
    });
