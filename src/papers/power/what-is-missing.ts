import type { Boat } from '../../core/boat/boat-schema.ts';

/**
 * What the power step lacks before it can size anything, in the order it is entered: a bank, a panel on it, a circuit on
 * that. Undefined where all three are there.
 */
export const whatIsMissing = ({ supply }: Pick<Boat, 'supply'>): string | undefined => {
  if (supply.banks.length === 0) {
    return 'No battery bank is entered yet. Say where it stands, of what kind it is and what it holds: supply.banks of the boat file. Its plate has the figures.';
  }
  if (supply.panels.length === 0) {
    return 'No panel is entered yet. Say where it stands, which bank it hangs on, and how long and thick its feeder is: supply.panels of the boat file.';
  }
  if (supply.panels.every(({ circuits }) => circuits.length === 0)) {
    return 'The panels have no circuit yet. Enter each breaker and fuse with its rating and what it feeds: circuits of each panel in the boat file.';
  }
  return undefined;
};
