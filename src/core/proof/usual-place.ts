import type { Boat } from '../boat/boat-schema.ts';

/** Where a unit of a kind usually stands, by places as the hull patterns name them: the first a boat has. Common practice. */
const usually: Readonly<Record<string, readonly string[]>> = {
  'position-antenna': ['stern-rail', 'arch-port', 'arch-top', 'roof'],
  'heading-sensor': ['fore-cabin', 'fore-locker'],
  'turn-sensor': ['fore-cabin', 'fore-locker'],
  'depth-sensor': ['sensor-well'],
  'speed-sensor': ['sensor-well'],
  'wind-sensor': ['masthead', 'arch-top'],
  'weather-sensor': ['masthead', 'arch-top'],
  display: ['helm'],
  instrument: ['helm'],
  'pilot-head': ['helm'],
  'pilot-computer': ['elec-panel'],
  'rudder-sensor': ['steering-gear'],
  radar: ['arch-top', 'mast-bracket', 'spreaders'],
  ais: ['chart-table', 'headliner', 'headliner-fore', 'elec-panel'],
  'vhf-radio': ['chart-table', 'headliner', 'headliner-fore', 'helm-back'],
  'battery-monitor': ['battery-box'],
  'tank-adapter': ['fuel-tank'],
  engine: ['engine', 'engine-port'],
};

/** A place with a tee near the panel, else any: where something may wait until somebody has found it aboard. */
const waitingPlace = ({ places, supply }: Boat): string | undefined => {
  const withTees = places.filter(({ tees }) => tees);
  const panels = new Set(supply.panels.map(({ place }) => place));
  return (withTees.find(({ id }) => panels.has(id)) ?? withTees[0] ?? places[0])?.id;
};

/** Where a unit heard on the bus is put until somebody says better; undefined on a boat without a place. */
export const usualPlace = (boat: Boat, kind: string): string | undefined =>
  usually[kind]?.find((id) => boat.places.some((place) => place.id === id)) ?? waitingPlace(boat);
