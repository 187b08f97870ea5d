import type { Plan } from '../../core/plan-shape.ts';
import type { SensorCheck, SensorInput, SensorSite } from '../../core/sensor-shape.ts';
import type { CardBoat } from '../cards/card-boat.ts';

/** What is looked at where a sensor sits, in words. */
export const checkWords: Readonly<Record<SensorCheck['check'], string>> = {
  'ahead-of-propeller': 'ahead of the propeller',
  'from-keel': 'from the keel',
  'ahead-of-keel': 'ahead of the keel',
  'off-centreline': 'off the centreline',
  headroom: 'room over it',
  tilt: 'leans',
  laminate: 'hull where it sits',
  housing: 'housing',
  material: 'material of the housing',
  'clear-air': 'clear air',
};

const limitWords: Readonly<Partial<Record<SensorCheck['check'], string>>> = {
  'off-centreline': 'at most',
  tilt: 'at most',
};

/** "6.70 m, at least 1.06 m", or in a word how it stands. */
export const checkFact = (names: CardBoat, { check, verdict, measured, limit, unit, by }: SensorCheck): string => {
  if (verdict === 'ask') return 'to be measured';
  const digits = unit === 'm' ? 2 : 0;
  if (measured === undefined || limit === undefined || unit === undefined)
    return verdict === 'ok' ? 'right' : 'not right';
  const figure = (value: number): string => `${value.toFixed(digits)}${unit === '°' ? '°' : ` ${unit}`}`;
  const beside = by === undefined ? '' : ` to ${names.kit.get(by)?.name ?? by}`;
  return `${figure(measured)}${beside}, ${limitWords[check] ?? 'at least'} ${figure(limit)}${verdict === 'bad' ? ': not right' : ''}`;
};

const kitName = (names: CardBoat, port: string): string => {
  const id = port.split('.')[0] ?? port;
  return names.kit.get(id)?.name ?? id;
};

/** Whether an input can read a sensor, in words. */
export const inputFact = (names: CardBoat, { at, misfits, unknown }: SensorInput): string => {
  const input = kitName(names, at);
  if (misfits.length > 0)
    return `${input} cannot read it: ${misfits.map(({ what, gives, takes }) => `${what} ${gives} against ${takes}`).join(', ')}`;
  return unknown.length > 0 ? `${input}, not known whether ${unknown.join(', ')} fit` : `${input} can read it`;
};

/** One sensor as a list shows it. */
export interface SensorRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  readonly lights: readonly string[];
}

const siteFact = (names: CardBoat, { checks, inputs }: SensorSite): string => {
  const bad = checks.filter(({ verdict }) => verdict === 'bad');
  const asked = checks.filter(({ verdict }) => verdict === 'ask');
  const good = checks.filter(({ verdict }) => verdict === 'ok');
  const said = [
    ...bad.map((check) => `${checkWords[check.check]} ${checkFact(names, check)}`),
    ...good.map((check) => `${checkWords[check.check]} ${checkFact(names, check)}`),
    ...(asked.length === 0 ? [] : [`to be measured: ${asked.map(({ check }) => checkWords[check]).join(', ')}`]),
    ...inputs.map((input) => inputFact(names, input)),
  ];
  return said.length === 0 ? 'nothing is looked at' : said.join('; ');
};

/** Every sensor of depth, speed and wind with how it sits and what takes it; what is not right comes first. */
export const sensorRows = (names: CardBoat, { sites }: Pick<Plan, 'sites'>): SensorRow[] =>
  sites.flatMap(({ unit, sensor }) =>
    sensor === undefined
      ? []
      : [
          {
            key: unit,
            what: names.kit.get(unit)?.name ?? unit,
            fact: siteFact(names, sensor),
            lights: [unit, ...sensor.inputs.map(({ at }) => at.split('.')[0] ?? at)],
          },
        ],
  );
