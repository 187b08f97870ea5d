import type { ReadingId } from './reading-ids.ts';

/**
 * Readings of which a screen takes all that come: a second sender gives more of them, not another answer. Source:
 * choice-source-order.
 */
export const gatheredReadings: ReadonlySet<ReadingId> = new Set([
  'pilot-state',
  'pilot-command',
  'route',
  'ais-targets',
  'ais-own',
  'dsc-calls',
  'radar-picture',
  'radar-targets',
  'sonar-picture',
  'chart-share',
  'switching',
  'audio',
  'camera',
  'mob',
  'alerts',
]);

/** Kinds of unit that are made to measure; all others have a sensor beside what they are for. Source: choice-source-order. */
export const sensorKinds: ReadonlySet<string> = new Set([
  'battery-monitor',
  'depth-sensor',
  'engine',
  'gearbox',
  'heading-sensor',
  'position-antenna',
  'power-monitor',
  'rudder-sensor',
  'sounder',
  'speed-sensor',
  'tank-sender',
  'temperature-sensor',
  'transducer',
  'weather-sensor',
  'wind-sensor',
]);

/** Messages that carry names and sizes of other ships: class A, class B part A and part B. */
export const aisStatic = { pgns: [129_794, 129_809, 129_810], source: 'practice-ais-static' } as const;

/** Sentences about satellites: long, sent in sets, and of no use to a screen that is given a position. Source: practice-satellite-sentences. */
export const satelliteSentences: ReadonlySet<string> = new Set(['GSV', 'GSA', 'GBS']);
