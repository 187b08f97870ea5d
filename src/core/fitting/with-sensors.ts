import type { StandingJoin } from '../plan-shape.ts';
import type { SiteEntry } from '../sites-shape.ts';
import type { HeadingInput } from './heading/heading-field.ts';
import { planHeading } from './heading/plan-heading.ts';
import { planSensor } from './sensors/plan-sensors.ts';

/** What is felt where it stands: heading sensors with what is near them, sensors of depth, speed and wind with how they sit. */
export const withSensors = (
  input: HeadingInput & { readonly joins: readonly StandingJoin[] },
  sites: readonly SiteEntry[],
): SiteEntry[] => {
  const headings = planHeading(
    input,
    sites.filter(({ is }) => is === 'heading').map(({ unit }) => unit),
  );
  return sites.map((site) => {
    const heading = headings.get(site.unit);
    const sensor = planSensor(input.index, input.joins, site);
    return {
      ...site,
      ...(heading === undefined ? {} : { heading }),
      ...(sensor === undefined ? {} : { sensor }),
    };
  });
};
