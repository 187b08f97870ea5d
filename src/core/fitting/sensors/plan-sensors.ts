import type { BoatIndex } from '../../boat/boat-index.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import type { Signal } from '../../boat/sensor.ts';
import type { StandingJoin } from '../../plan-shape.ts';
import type { SensorInput, SensorSite } from '../../sensor-shape.ts';
import type { SiteEntry } from '../../sites-shape.ts';
import { sensorChecks } from './sensor-checks.ts';
import { signalsFit } from './signals-fit.ts';

const signalOf = (index: BoatIndex, kit: string, port: string): Signal =>
  index.sheetOf.get(kit)?.sensor?.signals?.find((signal) => signal.port === port) ?? { port };

/** What takes a bare sensor, by the joins that stand. */
const inputsOf = (index: BoatIndex, joins: readonly StandingJoin[], unit: string): SensorInput[] =>
  joins
    .filter(({ kind }) => kind === 'analog')
    .flatMap(({ members }): SensorInput[] => {
      const talk = members.find(({ kit, as }) => kit === unit && as === 'talk');
      const listen = members.find(({ as }) => as === 'listen');
      if (talk === undefined || listen === undefined) return [];
      return [
        {
          port: `${talk.kit}.${talk.port}`,
          at: `${listen.kit}.${listen.port}`,
          ...signalsFit(signalOf(index, talk.kit, talk.port), signalOf(index, listen.kit, listen.port)),
        },
      ];
    })
    .sort((one, other) => byCodeUnit(one.port, other.port) || byCodeUnit(one.at, other.at));

/** How a sensor of depth, speed or wind sits and what takes it; nothing for what is none. */
export const planSensor = (
  index: BoatIndex,
  joins: readonly StandingJoin[],
  { unit, is }: Pick<SiteEntry, 'unit' | 'is'>,
): SensorSite | undefined => {
  const kit = index.kit.get(unit);
  if (kit === undefined || (is !== 'depth' && is !== 'speed' && is !== 'wind')) return undefined;
  return { checks: sensorChecks(index, kit, is), inputs: inputsOf(index, joins, unit) };
};
