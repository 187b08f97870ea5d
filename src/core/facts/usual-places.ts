import type { Place } from '../boat/boat-schema.ts';
import type { SourceKey } from './sources.ts';

/** Where a unit of some kind usually stands. */
export interface UsualPlace {
  /** words that the name of such a place has, the likeliest first */
  readonly words: readonly string[];
  /** what it may be exposed to, the likeliest first */
  readonly exposures: readonly Place['exposure'][];
  /** whether it stands as high or as low as it can; absent where the height is no matter */
  readonly height?: 'high' | 'low';
  /** whether people must see it or lay a hand on it */
  readonly isUsed?: true;
  /** words of places that it keeps away from */
  readonly not?: readonly string[];
  readonly source: SourceKey;
}

type Row = Omit<UsualPlace, 'source'>;

const atHelm: Row = {
  words: ['dash', 'helm', 'bulkhead', 'binnacle', 'wheel', 'pilothouse', 'wheelhouse', 'console', 'chart', 'nav'],
  exposures: ['dry', 'spray', 'weather', 'damp'],
  isUsed: true,
  not: ['compass', 'engine', 'battery', 'tank'],
};
const inLocker: Row = {
  words: ['electrical', 'nav', 'locker', 'panel', 'console', 'chart'],
  exposures: ['dry', 'damp'],
  not: ['engine', 'battery', 'bow', 'chain', 'anchor'],
};
const atChart: Row = {
  words: ['chart', 'nav', 'pilothouse', 'wheelhouse', 'helm', 'console', 'headliner', 'dash'],
  exposures: ['dry', 'spray', 'damp'],
  isUsed: true,
  not: ['compass', 'engine', 'battery', 'electrical'],
};
const aloft: Row = { words: ['masthead', 'mast', 'arch', 'tower'], exposures: ['weather'], height: 'high' };
const onRail: Row = {
  words: ['rail', 'coaming', 'arch', 'coachroof', 'roof', 'flybridge', 'hardtop'],
  exposures: ['weather', 'spray'],
  not: ['compass', 'engine', 'battery', 'tank'],
};
const throughHull: Row = {
  words: ['transducer', 'sensor', 'log', 'keel', 'bilge', 'well', 'hull'],
  exposures: ['bilge', 'damp'],
  height: 'low',
};
const byRudder: Row = {
  words: ['rudder', 'steering', 'quadrant', 'stern', 'lazarette', 'tiller', 'wheel', 'helm'],
  exposures: ['damp', 'dry'],
};
const byBatteries: Row = { words: ['battery', 'batteries', 'electrical', 'locker'], exposures: ['dry', 'damp'] };
const byEngine: Row = { words: ['engine', 'motor', 'gearbox', 'outboard'], exposures: ['engine', 'damp', 'dry'] };
const nearEngine: Row = { words: ['engine', 'bulkhead', 'electrical', 'locker'], exposures: ['damp', 'dry'] };
const lowAndStill: Row = {
  words: ['berth', 'cabin', 'mast', 'saloon', 'keel', 'locker', 'foot'],
  exposures: ['dry', 'damp'],
  // iron and currents turn its needle
  not: ['battery', 'batteries', 'engine', 'electrical', 'quarter'],
};

const rows: readonly (readonly [kinds: string, where: Row])[] = [
  ['display instrument keypad pilot-head switch-panel', atHelm],
  ['vhf-radio vhf-handset mfhf-radio weather-receiver ais hailer audio computer tablet', atChart],
  [
    'network-switch router converter multiplexer gateway sounder antenna-splitter recorder power-control power-monitor',
    inLocker,
  ],
  ['radio-antenna wind-sensor weather-sensor', aloft],
  ['radar', { ...aloft, words: ['arch', 'tower', 'spreaders', 'hardtop', 'roof', 'mast'] }],
  ['position-antenna satellite-terminal cellular-hub mob-unit camera', onRail],
  ['transducer depth-sensor speed-sensor', throughHull],
  ['rudder-sensor steering-drive', byRudder],
  [
    'pilot',
    {
      ...byRudder,
      words: ['tiller', 'wheel', 'cockpit', 'coaming', 'helm', 'stern'],
      exposures: ['spray', 'weather', 'damp'],
    },
  ],
  ['pilot-computer', { ...inLocker, words: ['electrical', 'locker', 'nav', 'lazarette', 'panel'] }],
  ['heading-sensor', lowAndStill],
  ['steering-compass', { ...atHelm, words: ['compass', ...atHelm.words], exposures: ['spray', 'weather', 'dry'] }],
  ['battery-monitor charger inverter', byBatteries],
  ['engine gearbox', byEngine],
  ['temperature-sensor', nearEngine],
  ['tank-sender', { words: ['fuel', 'tank', 'water'], exposures: ['damp', 'bilge', 'dry'], height: 'low' }],
  ['tank-adapter', { words: ['tank', 'locker', 'bulkhead', 'electrical'], exposures: ['dry', 'damp'] }],
  [
    'alarm loudspeaker',
    { words: ['helm', 'pilothouse', 'saloon', 'cockpit', 'dash'], exposures: ['dry', 'spray', 'damp'] },
  ],
  ['antenna-tuner', { words: ['stern', 'lazarette', 'locker'], exposures: ['damp', 'dry'] }],
  ['beacon', { words: ['cockpit', 'companion', 'pilothouse', 'helm', 'rail'], exposures: ['spray', 'weather', 'dry'] }],
];

const usualPlaceByKind: ReadonlyMap<string, UsualPlace> = new Map(
  rows.flatMap(([kinds, where]) =>
    kinds.split(' ').map((kind): [string, UsualPlace] => [kind, { ...where, source: 'practice-usual-places' }]),
  ),
);

/** Where a kind of unit usually stands; like a box in a dry locker where its kind is not known. */
export const usualPlaceOf = (kind: string): UsualPlace =>
  usualPlaceByKind.get(kind) ?? { ...inLocker, source: 'practice-usual-places' };
