import type { Boat, Join, Place } from '../../../src/core/boat/boat-schema.ts';
import type { Sheet } from '../../../src/core/boat/sheet.ts';
import { straightLineM } from '../../../src/core/boat/straight-line.ts';
import { taped } from './base.ts';

interface Spot {
  readonly id: string;
  readonly name: string;
  readonly at: readonly [xM: number, yM: number, zM: number];
  /** the place a way comes to it from */
  readonly from: string;
  readonly lengthM?: number;
  readonly soleZM?: number;
}

/** The boat with a place more in the open, and a way to it. */
export const withSpot = (boat: Boat, { id, name, at: [xM, yM, zM], from, lengthM, soleZM }: Spot): Boat => {
  const sole = soleZM === undefined ? {} : { soleZM };
  const spot: Place = { id, name, xM, yM, zM, exposure: 'weather', reach: 'open', tees: false, ...sole };
  const start = boat.places.find((entry) => entry.id === from);
  const straightM = start === undefined ? 1 : straightLineM(start, spot);
  return {
    ...boat,
    places: [...boat.places, spot],
    ways: [
      ...boat.ways,
      {
        id: `to-${id}`,
        ends: [from, id],
        length: taped(lengthM ?? Math.ceil(straightM * 10 + 2) / 10),
        kind: 'open',
        known: 'seen',
      },
    ],
  };
};

interface AloftUnit {
  readonly id: string;
  readonly name: string;
  readonly place: string;
  readonly sheet: Partial<Sheet> & Pick<Sheet, 'kind'>;
}

/** The boat with a unit more that wants no feed, by a manual of its own. */
export const withAloft = (boat: Boat, { id, name, place, sheet }: AloftUnit): Boat => ({
  ...boat,
  sheets: [
    ...boat.sheets,
    {
      id: `${id}-sheet`,
      name: `${name}, by its manual`,
      source: 'manual',
      sourceNote: 'Invented for this boat.',
      plugs: [],
      ports: [],
      earthing: { body: 'plastic' },
      compassSafe: { valueM: 0.1, how: 'papers' },
      ...sheet,
    },
  ],
  kit: [...boat.kit, { id, name, sheet: `${id}-sheet`, fate: 'stays', place, tail: taped(0.3) }],
});

const scanner = { kind: 'dome', sends: 'solid-state', verticalBeamDeg: 25, acrossM: 0.6, peopleM: 0.1 } as const;

/** A dome that looks over everything, but for what is said of it. */
export const withDome = (
  boat: Boat,
  { own = {}, ...unit }: Omit<AloftUnit, 'sheet'> & { own?: Partial<NonNullable<Sheet['scanner']>> },
): Boat => withAloft(boat, { ...unit, sheet: { kind: 'radar', scanner: { ...scanner, ...own } } });

type SpotOf<U> = Omit<Spot, 'from'> & { readonly unit: U };

/** A dome on one new spot and a unit on another, both led from one place. */
export const withDomeBeside = (
  boat: Boat,
  {
    from,
    dome,
    other,
  }: {
    readonly from: string;
    readonly dome: SpotOf<Pick<AloftUnit, 'id' | 'name'>>;
    readonly other: SpotOf<Omit<AloftUnit, 'place'>>;
  },
): Boat => {
  const spots = withSpot(withSpot(boat, { ...dome, from }), { ...other, from });
  return withAloft(withDome(spots, { ...dome.unit, place: dome.id }), { ...other.unit, place: other.id });
};

const socket = { id: 'coax', connector: 'so239', gender: 'female' } as const;

/** A radio that hears voice, or ships, and the whip it is joined to. */
export const withRadio = (
  boat: Boat,
  radio: Pick<AloftUnit, 'id' | 'name' | 'place'> & {
    readonly whipAt: string;
    readonly hears: 'audio' | 'ais-targets';
    readonly sends?: NonNullable<Sheet['transmits']>;
  },
): Boat => {
  const { id, name, place, whipAt, hears, sends } = radio;
  const join: Join = {
    id: `coax-${id}`,
    kind: 'coax',
    members: [
      { kit: `${id}-whip`, port: 'rf', as: 'talk' },
      { kit: id, port: 'rf', as: 'listen' },
    ],
    hold: 'fixed',
  };
  const reading = [{ reading: hears }];
  const withSet = withAloft(boat, {
    id,
    name,
    place,
    sheet: {
      kind: hears === 'ais-targets' ? 'ais' : 'voice-radio',
      plugs: [socket],
      ports: [{ id: 'rf', onPlug: 'coax', protocol: 'coax', role: 'listen', hears: reading }],
      ...(sends === undefined ? {} : { transmits: sends }),
    },
  });
  const withWhip = withAloft(withSet, {
    id: `${id}-whip`,
    name: `whip of the ${name}`,
    place: whipAt,
    sheet: {
      kind: 'radio-antenna',
      antenna: { for: hears === 'ais-targets' ? ['ais'] : ['voice'], gainDbi: 3, lengthM: 1 },
      plugs: [socket],
      ports: [{ id: 'rf', onPlug: 'coax', protocol: 'coax', role: 'talk', sends: reading }],
    },
  });
  return { ...withWhip, joins: [...withWhip.joins, join] };
};
