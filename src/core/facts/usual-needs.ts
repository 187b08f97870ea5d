import type { ReadingId } from './reading-ids.ts';
import type { SourceKey } from './sources.ts';

/** What a unit of some kind is usually wanted to show, or needs to work. */
export interface UsualNeeds {
  /** it is of little use without these, whatever else is aboard */
  readonly must: readonly ReadingId[];
  /** whoever has something aboard that says these wants them here */
  readonly mustIfSaid: readonly ReadingId[];
  /** welcome where something aboard says them */
  readonly wishIfSaid: readonly ReadingId[];
  readonly source: SourceKey;
}

const needs = (row: {
  readonly must?: readonly ReadingId[];
  readonly mustIfSaid?: readonly ReadingId[];
  readonly wishIfSaid?: readonly ReadingId[];
}): UsualNeeds => ({ must: [], mustIfSaid: [], wishIfSaid: [], ...row, source: 'practice-usual-needs' });

const besideAChart = needs({
  must: ['position', 'course-speed-ground'],
  mustIfSaid: ['ais-targets', 'depth', 'heading'],
  wishIfSaid: ['speed-water', 'wind-apparent'],
});

/** Usual needs by kind of sheet; a kind that only says something, or passes it on, has none. */
const usualNeedsByKind: ReadonlyMap<string, UsualNeeds> = new Map([
  [
    'display',
    needs({
      must: ['position', 'course-speed-ground', 'depth'],
      mustIfSaid: [
        'heading',
        'wind-apparent',
        'speed-water',
        'ais-targets',
        'radar-picture',
        'sonar-picture',
        'engine',
        'fuel-level',
        'alerts',
        'mob',
      ],
      wishIfSaid: [
        'time-date',
        'water-temperature',
        'wind-true',
        'rudder',
        'pilot-state',
        'dsc-calls',
        'chart-share',
        'transmission',
        'water-level',
        'battery',
        'charging',
        'ac-power',
        'switching',
        'air-temperature',
        'pressure',
        'camera',
      ],
    }),
  ],
  [
    'instrument',
    needs({
      must: ['depth'],
      mustIfSaid: ['speed-water', 'wind-apparent'],
      wishIfSaid: ['course-speed-ground', 'heading', 'log-distance', 'rudder', 'water-temperature'],
    }),
  ],
  ['tablet', besideAChart],
  ['computer', besideAChart],
  ['sounder', needs({ must: ['sonar-picture'], wishIfSaid: ['water-temperature'] })],
  ['pilot-head', needs({ must: ['pilot-state'], wishIfSaid: ['heading', 'rudder'] })],
  [
    'pilot-computer',
    needs({
      must: ['heading'],
      mustIfSaid: ['pilot-command', 'rudder', 'route', 'cross-track'],
      wishIfSaid: ['wind-apparent', 'speed-water', 'rate-of-turn', 'variation'],
    }),
  ],
  ['pilot', needs({ mustIfSaid: ['cross-track'], wishIfSaid: ['route', 'wind-apparent', 'variation'] })],
  ['steering-drive', needs({ must: ['pilot-command'] })],
  ['vhf-radio', needs({ must: ['position', 'dsc-calls'], wishIfSaid: ['time-date', 'ais-targets'] })],
  ['vhf-handset', needs({ must: ['audio'] })],
  ['mfhf-radio', needs({ must: ['position', 'dsc-calls'], wishIfSaid: ['time-date'] })],
  ['weather-receiver', needs({ must: ['position'] })],
  ['ais', needs({ must: ['position', 'ais-targets'], wishIfSaid: ['heading', 'rate-of-turn'] })],
  ['alarm', needs({ mustIfSaid: ['alerts', 'mob'] })],
  ['switch-panel', needs({ mustIfSaid: ['switching'] })],
  ['loudspeaker', needs({ mustIfSaid: ['audio'] })],
]);

/** What a kind of unit usually needs; undefined for one that needs nothing told. */
export const usualNeedsOf = (kind: string): UsualNeeds | undefined => usualNeedsByKind.get(kind);
