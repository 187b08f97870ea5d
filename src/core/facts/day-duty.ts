import { batteryFigures, peukertExponents } from './battery-figures.ts';
import { deviceLoads } from './device-loads.ts';
import { dutyHours, pilotMotorPct } from './duty-hours.ts';
import type { Figure } from './figure.ts';
import type { SourceKey } from './sources.ts';

/** What a boat does in a part of a day; each but `alongside` is a column of the printed hours. */
export const dayParts = ['anchor', 'sailing', 'motoring', 'alongside'] as const;
export type DayPart = (typeof dayParts)[number];

type Share = readonly [least: number, most: number];

/** Share of each part of a day that something runs; `usual` where the middle of the range is not what is reckoned with. */
export interface Duty extends Readonly<Record<DayPart, Share>> {
  readonly usual?: 'most';
  readonly source: SourceKey;
}

/** Hours that the columns of the printed table stand for. */
const columnHours = { anchor: 24, sailing: 24, motoring: 10 } as const;

const never: Share = [0, 0];
const always: Share = [1, 1];

const printed = (kind: string): Pick<Duty, 'anchor' | 'sailing' | 'motoring' | 'source'> => {
  const row = dutyHours.find((entry) => entry.kind === kind);
  const share = (part: keyof typeof columnHours): Share => {
    const [least, most] = row?.[part] ?? [0, 0];
    return [least / columnHours[part], most / columnHours[part]];
  };
  return {
    anchor: share('anchor'),
    sailing: share('sailing'),
    motoring: share('motoring'),
    source: row?.source ?? 'practice-duty',
  };
};

const navStation = printed('nav-station display');
const motorShare = ([least, most]: readonly [number, number]): Share => [least / 100, most / 100];

/**
 * How much of a day things run, by what they do. At anchor and under way as printed; alongside, and what nothing printed
 * gives, as this project reckons: with a berth only what is never switched off and what people use below.
 */
export const duties = {
  helm: { ...printed('helm display'), alongside: never },
  'nav-station': { ...navStation, alongside: navStation.anchor },
  radar: { ...printed('radar transmit'), alongside: never },
  ais: { ...printed('AIS'), alongside: never },
  'radio-receive': { ...printed('VHF receive'), alongside: never },
  'radio-transmit': { ...printed('VHF transmit'), alongside: never },
  instruments: { ...printed('instruments'), alongside: never },
  // As switched; left on where nobody says otherwise, because that is what is mostly done with it.
  internet: {
    anchor: [0, 1],
    sailing: [0, 1],
    motoring: always,
    alongside: [0, 1],
    usual: 'most',
    source: 'practice-duty',
  },
  pilot: { anchor: never, sailing: always, motoring: always, alongside: never, source: 'choice-day-duty' },
  'pilot-motor': {
    anchor: never,
    sailing: motorShare(pilotMotorPct.balanced),
    motoring: motorShare(pilotMotorPct.motoring),
    alongside: never,
    source: pilotMotorPct.source,
  },
  always: { anchor: always, sailing: always, motoring: always, alongside: always, source: 'choice-day-duty' },
} as const satisfies Record<string, Duty>;
export type DutyId = keyof typeof duties;

/** What a unit runs like, by the kind of its sheet; any other kind runs with the instruments, as what hangs on a bus does. */
export const dutyOfKind: Readonly<Record<string, DutyId>> = {
  display: 'helm',
  sounder: 'helm',
  computer: 'nav-station',
  'mfhf-radio': 'nav-station',
  radar: 'radar',
  ais: 'ais',
  'weather-receiver': 'ais',
  'vhf-radio': 'radio-receive',
  'satellite-terminal': 'internet',
  router: 'internet',
  'cellular-hub': 'always',
  pilot: 'pilot',
  'pilot-computer': 'pilot',
  'pilot-head': 'pilot',
  'steering-drive': 'pilot-motor',
  alarm: 'always',
  'battery-monitor': 'always',
  charger: 'always',
  inverter: 'always',
  'power-control': 'always',
  'power-monitor': 'always',
};

const solidState = (state: 'standby' | 'transmit'): number =>
  deviceLoads.find(({ kind }) => kind === `solid-state radar dome 24 in, ${state}`)?.mostA ?? 0;

/** What a radar draws while it waits, as a share of what it draws sending: 0.25 of 2.1 A. A radar that waits is not off. */
export const radarStandbyShare = {
  value: solidState('standby') / solidState('transmit'),
  unit: 'of its draw',
  source: 'maker-loads',
} as const satisfies Figure;

/** What a satellite internet terminal draws while it is on; its maker's sheet wins. */
export const satelliteTerminalW = { least: 40, most: 110, source: 'practice-loads' } as const;

/** Hours under way of a day run; the rest of that day lies at anchor. */
export const dayRunHours = { value: 10, unit: 'h', source: 'practice-duty' } as const satisfies Figure;

/** Hours a battery's capacity is printed for. */
export const ratedHours = { value: 20, unit: 'h', source: 'practice-battery' } as const satisfies Figure;

/** Ah that a bank gives back, and how it loses with current, by what it is made of; the exponent is the worse of its range. */
export const bankFigures = {
  flooded: { usable: 'bank-usable-lead', exponent: peukertExponents.flooded },
  agm: { usable: 'bank-usable-lead', exponent: peukertExponents.agm },
  gel: { usable: 'bank-usable-lead', exponent: peukertExponents.gel },
  lifepo4: { usable: 'bank-usable-lifepo4', exponent: peukertExponents.lifepo4 },
  other: { usable: 'bank-usable-lead', exponent: peukertExponents.unknown },
} as const;

/** Share of a bank that is used before it is charged again; the ids are keys of `limits` in a boat file. */
export const bankLimits = {
  'bank-usable-lead': {
    value: 100 * batteryFigures.lead.usable,
    unit: '% of its capacity',
    source: batteryFigures.lead.source,
  },
  'bank-usable-lifepo4': {
    value: 100 * batteryFigures.lifepo4.usable,
    unit: '% of its capacity',
    source: batteryFigures.lifepo4.source,
  },
} as const satisfies Record<string, Figure>;
