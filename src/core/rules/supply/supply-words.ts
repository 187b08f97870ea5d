import type { BoatIndex } from '../../boat/boat-index.ts';
import { isAboard, lastPhase } from '../../boat/phase.ts';

/** Names one after the other; of many only the first three and how many more. */
export const someNames = (names: readonly string[]): string => {
  const shown = names.length > 4 ? [...names.slice(0, 3), `${names.length - 3} more`] : names;
  return shown.length < 2 ? shown.join('') : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}`;
};

/** The first few of many ids: enough to find a thing by, and to keep the name of a finding short. */
export const aFew = (ids: readonly string[]): string[] => [...new Set(ids)].slice(0, 3);

/** What a circuit feeds as people call it: the unit of a port, the bus, or the id of a panel, bank or converter. */
export const fedName = (index: BoatIndex, target: string): string => {
  const [id = ''] = target.split('.');
  return index.kit.get(id)?.name ?? index.buses.get(id)?.name ?? id;
};

/** The unit of a port by its id. */
export const unitOf = (port: string): string => {
  const dot = port.indexOf('.');
  return dot < 0 ? port : port.slice(0, dot);
};

/** Whether the unit of a port is aboard when the refit is done. */
export const staysAboard = (index: BoatIndex, port: string): boolean => {
  const unit = index.kit.get(unitOf(port));
  return unit !== undefined && isAboard(unit, lastPhase(index.boat));
};

/** Millimetres as people read them: whole ones, up to a metre. */
export const millimetres = (mm: number): string => (mm < 1000 ? `${Math.round(mm)} mm` : `${(mm / 1000).toFixed(2)} m`);

/** Amperes as people read them: whole ones from 100 on, else to a tenth. */
export const amperes = (amps: number): string => `${amps >= 100 ? Math.round(amps) : Math.round(amps * 10) / 10} A`;
