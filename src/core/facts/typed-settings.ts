import type { SourceKey } from './sources.ts';

/** What is typed into units from the boat’s own measures. */
export const typedIds = [
  'depth-offset',
  'depth-alarm',
  'safety-depth',
  'air-draft',
  'ais-bow',
  'ais-stern',
  'ais-port',
  'ais-starboard',
  'ais-draught',
  'ais-name',
  'ais-call-sign',
  'ship-number',
  'radar-height',
  'radar-heading-line',
  'log-factor',
  'wind-offset',
  'screen-units',
] as const;
export type TypedId = (typeof typedIds)[number];

interface TypedSetting {
  /** in words, small letters */
  readonly name: string;
  /** what goes wrong where it is wrong */
  readonly ifWrong: string;
  readonly source: SourceKey;
}

const aisSize = (side: string): TypedSetting => ({
  name: `AIS size, ${side}`,
  ifWrong: 'Other ships see her shifted from where she is, by as much.',
  source: 'itu-m1371',
});

/** What each is called, what goes wrong where it is wrong, and where that is from. */
export const typedSettings: Readonly<Record<TypedId, TypedSetting>> = {
  'depth-offset': {
    name: 'depth offset',
    ifWrong: 'Every depth is wrong by it; with the wrong sign there seems to be more water than there is.',
    source: 'practice-depth-settings',
  },
  'depth-alarm': {
    name: 'depth alarm',
    ifWrong: 'It sounds too late or never, or so often that it is switched off.',
    source: 'practice-depth-settings',
  },
  'safety-depth': {
    name: 'safety depth',
    ifWrong: 'Water she cannot float in is shown as safe.',
    source: 'practice-depth-settings',
  },
  'air-draft': {
    name: 'air draft',
    ifWrong: 'A route is laid under a bridge she does not pass.',
    source: 'practice-air-draft',
  },
  'ais-bow': aisSize('A, antenna to bow'),
  'ais-stern': aisSize('B, antenna to stern'),
  'ais-port': aisSize('C, antenna to port side'),
  'ais-starboard': aisSize('D, antenna to starboard side'),
  'ais-draught': {
    name: 'AIS draught',
    ifWrong: 'Pilots and locks reckon with another ship than she is.',
    source: 'uscg-ais-fields',
  },
  'ais-name': {
    name: 'AIS name',
    ifWrong: 'She is called by a name nobody aboard listens for.',
    source: 'uscg-ais-encoding',
  },
  'ais-call-sign': {
    name: 'AIS call sign',
    ifWrong: 'She is looked up as another ship.',
    source: 'uscg-ais-fields',
  },
  'ship-number': {
    name: 'ship’s number (MMSI)',
    ifWrong: 'A distress call comes from a ship that is not in distress, or from nobody; most sets take it once.',
    source: 'uscg-mmsi',
  },
  'radar-height': {
    name: 'radar, height of the scanner',
    ifWrong: 'Near targets and the sea are cleared away wrongly.',
    source: 'practice-radar-start',
  },
  'radar-heading-line': {
    name: 'radar, heading line',
    ifWrong: 'A ship that comes straight at her seems to pass clear.',
    source: 'practice-radar-start',
  },
  'log-factor': {
    name: 'log factor',
    ifWrong: 'Speed, distance, true wind and stream are wrong by as much.',
    source: 'practice-log-wind',
  },
  'wind-offset': {
    name: 'wind angle offset',
    ifWrong: 'One tack seems better than the other, and true wind swings with each.',
    source: 'practice-log-wind',
  },
  'screen-units': {
    name: 'units of the screen',
    ifWrong: 'Somebody reads feet as metres.',
    source: 'practice-screen-units',
  },
};
