import { byCodeUnit } from '../../boat/ids.ts';
import { feelsSpeed } from '../feels-speed.ts';
import { logFactor } from '../sea/log-factor.ts';
import { logRuns } from '../sea/log-runs.ts';
import { windOffset } from '../sea/wind-offset.ts';
import { lengthIn, unitsAt } from './device-unit.ts';
import { type SheetInput, unitsOfKind, unitsWhere, type Wanted } from './sheet-input.ts';

/** The latest of the trials of one unit. */
const lastOf = <Trial extends { readonly unit: string; readonly on: string; readonly id: string }>(
  trials: readonly Trial[] | undefined,
  unit: string,
): Trial | undefined =>
  trials
    ?.filter((trial) => trial.unit === unit)
    .toSorted((a, b) => byCodeUnit(b.on, a.on) || byCodeUnit(a.id, b.id))[0];

const logOf = ({ index }: SheetInput, kit: string): Wanted => {
  const row = { id: `${kit}:log-factor`, kit, what: 'log-factor' } as const;
  const trial = lastOf(index.boat.sea?.logs, kit);
  const runs = trial === undefined ? undefined : logRuns(trial);
  if (trial === undefined || runs === undefined) {
    // whatever stood in the old head counted other pulses
    return { ...row, is: 1, shown: { figure: '1.00', in: 'factor' }, how: 'guessed' };
  }
  const factor = logFactor({ ...trial, ...runs });
  return { ...row, is: factor, shown: { figure: factor.toFixed(2), in: 'factor' }, how: 'at-sea' };
};

const windOf = ({ index }: SheetInput, kit: string): Wanted => {
  const row = { id: `${kit}:wind-offset`, kit, what: 'wind-offset' } as const;
  const trial = lastOf(index.boat.sea?.winds, kit);
  const found = windOffset(
    (trial?.tacks ?? []).map(({ onPortDeg, onStarboardDeg }) => ({ portDeg: onPortDeg, starboardDeg: onStarboardDeg })),
  );
  if (found === undefined) return { ...row, is: 0, shown: { figure: '0', in: '°' }, how: 'guessed' };
  const figure = Math.abs(found.offsetDeg).toFixed(1);
  const to = found.turnedTo === 'port' ? '° to starboard' : found.turnedTo === 'starboard' ? '° to port' : '°';
  return { ...row, is: found.offsetDeg, shown: { figure, in: to }, how: 'at-sea' };
};

const radarOf = ({ index }: SheetInput, kit: string, place: string): Wanted[] => {
  const zM = index.places.get(place)?.zM ?? 0;
  const unit = unitsAt(index.boat.measures?.screens, kit).height;
  return [
    {
      id: `${kit}:radar-height`,
      kit,
      what: 'radar-height',
      ...lengthIn({ valueM: zM, unit, rounding: 'nearest' }),
      how: 'drawn',
    },
    {
      id: `${kit}:radar-heading-line`,
      kit,
      what: 'radar-heading-line',
      is: 0,
      shown: { figure: '0', in: '°' },
      how: 'guessed',
    },
  ];
};

/** What radars, logs and wind vanes start from: by the boat's own measures, or as it was found at sea. */
export const sensorEntries = (input: SheetInput): Wanted[] => [
  ...unitsOfKind(input.index, ['radar']).flatMap(({ id, place }) => radarOf(input, id, place)),
  ...unitsWhere(input.index, feelsSpeed).map(({ id }) => logOf(input, id)),
  ...unitsOfKind(input.index, ['wind-sensor']).map(({ id }) => windOf(input, id)),
];
