import { type JobStep, jobSteps } from './job-steps.ts';

/** At which steps of the job a person can do something about what the rules of an area find. */
const stepsOfArea: Readonly<Record<string, readonly JobStep[]>> = {
  antennas: ['fit'],
  blackouts: ['lines'],
  bus: ['lines'],
  compass: ['fit'],
  converters: ['needs', 'lines'],
  energy: ['power'],
  fitting: ['fit'],
  identities: ['needs', 'lines'],
  isolation: ['power'],
  network: ['lines'],
  phases: ['buy'],
  plugs: ['lines', 'buy'],
  power: ['power'],
  provenance: ['kit', 'buy'],
  readings: ['needs', 'lines'],
  remote: ['kit'],
  screens: ['fit'],
  sensors: ['fit'],
  settings: ['fit'],
  shopping: ['buy'],
  steering: ['power'],
  supply: ['power'],
  traffic: ['lines'],
  ways: ['lines', 'boat'],
  wiring: ['lines'],
  work: ['work'],
};

/** Rules that are looked after elsewhere than the others of their area. */
const stepsOfOne: Readonly<Record<string, readonly JobStep[]>> = {
  'provenance/length-guessed-and-bought': ['boat', 'buy'],
  'provenance/picture-not-there': ['boat'],
};

/** The steps at which what a rule finds is looked after, the first of them first; of a rule of no known area, every step. */
export const stepsOfRule = (rule: string): readonly JobStep[] =>
  stepsOfOne[rule] ?? stepsOfArea[rule.slice(0, Math.max(0, rule.indexOf('/')))] ?? jobSteps;
