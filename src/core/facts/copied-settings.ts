import type { SourceKey } from './sources.ts';

/**
 * What is copied out of a unit before it is switched off for good or a menu is reset, by kind of sheet.
 * What only a licensed person may enter again is marked where it is entered, not here: copying it is everybody’s.
 */
export const copiedSettings: { readonly source: SourceKey; readonly byKind: Readonly<Record<string, string>> } = {
  source: 'practice-copied-settings',
  byKind: {
    display: 'waypoints, routes and tracks to a card; depth offset, units, alarms',
    plotter: 'waypoints, routes and tracks to a card; depth offset, units, alarms',
    computer: 'waypoints, routes and tracks; ports and their speeds',
    instrument: 'depth offset, speed and wind corrections, alarms',
    sounder: 'depth offset, transducer, alarms',
    'log-depth': 'depth offset, speed correction, log distance',
    'pilot-computer': 'drive type, rudder limits, gains, compass deviation',
    pilot: 'gains, rudder limits, compass deviation',
    'pilot-head': 'gains, rudder limits',
    'heading-sensor': 'alignment, whether it was swung and when',
    'vhf-radio': 'its own number (MMSI), groups and names kept in it',
    'mfhf-radio': 'its own number (MMSI), channels kept in it',
    ais: 'its own number (MMSI), name, call sign, measures and place of the antenna',
    radar: 'alignment to the bow, height, sectors that do not send',
    'battery-monitor': 'capacity, charge efficiency, what it has counted',
    'tank-adapter': 'tank sizes and their tables',
    converter: 'speeds, filters, which sentences pass',
    multiplexer: 'speeds, filters, which sentences pass',
  },
};
