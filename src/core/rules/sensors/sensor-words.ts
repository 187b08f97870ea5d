import type { SourceKey } from '../../facts/sources.ts';
import type { SensorCheck, SensorSite } from '../../sensor-shape.ts';
import type { SiteEntry } from '../../sites-shape.ts';
import type { LaidInput, Observation } from '../rule.ts';
import { sourceWords } from '../rule-words.ts';

/** One check of one sensor that came out badly. */
export interface BadCheck {
  readonly site: SiteEntry;
  readonly check: SensorCheck;
}

/** The sensors of a plan with how each sits. */
export const sensorSites = ({ plan }: Pick<LaidInput, 'plan'>): { site: SiteEntry; sensor: SensorSite }[] =>
  plan.sites.flatMap((site) => (site.sensor === undefined ? [] : [{ site, sensor: site.sensor }]));

/** Every sensor for which one of the named checks came out badly. */
export const badChecks = (input: Pick<LaidInput, 'plan'>, ...checks: readonly SensorCheck['check'][]): BadCheck[] =>
  sensorSites(input).flatMap(({ site, sensor }) =>
    sensor.checks
      .filter(({ check, verdict }) => verdict === 'bad' && checks.includes(check))
      .map((check) => ({ site, check })),
  );

/** What was measured beside what it should be, where both are figures. */
export const measuredPart = (
  { measured, limit, unit }: SensorCheck,
  source: SourceKey = 'practice-transducer-place',
): Pick<Observation, 'measured' | 'limit'> =>
  measured === undefined || limit === undefined || unit === undefined
    ? {}
    : { measured: { value: measured, unit }, limit: { value: limit, unit, source: sourceWords(source) } };
