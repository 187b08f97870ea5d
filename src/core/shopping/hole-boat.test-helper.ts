import { aBoat } from '../boat/a-boat.test-helper.ts';
import type { Boat, Way } from '../boat/boat-schema.ts';
import type { Measure } from '../boat/measure.ts';
import type { Plug } from '../boat/sheet.ts';
import { typicalPrices } from '../facts/prices.ts';
import { anEye, aSwitch, netBoat } from '../joins/network-boat.test-helper.ts';

/** The line from the camera to its switch, through the hole. */
export const holeLine = 'ethernet:eye-0.plug-eth~hub.plug-p1';

/** A hole in front of cameras, and what is about it. */
export interface HoleAsk {
  readonly hole?: Partial<Way>;
  /** length and kind of a way round, where there is one */
  readonly roundM?: number;
  readonly roundHours?: number;
  readonly round?: Partial<Way>;
  readonly hour?: number;
  readonly cables?: number;
  readonly state?: 'fixed' | 'bought' | 'fitted';
  /** ready-made Ethernet cables by length in mm, with their prices */
  readonly shelf?: Readonly<Record<number, number>>;
  readonly connector?: string;
  /** the camera has a fixed lead of 1 m */
  readonly lead?: { readonly mayCut?: boolean };
}

const taped = (valueM: number): Measure => ({ valueM, how: 'taped', lessM: 0, moreM: 0 });

const shelfOf2m5mAnd100m = { 2000: 500, 5000: 900, 100000: 20_000 };

const waysOf = ({ hole, roundM, roundHours, round }: HoleAsk): Way[] => [
  {
    id: 'hole',
    ends: ['locker', 'step'],
    length: taped(0.5),
    kind: 'gland',
    known: 'seen',
    bore: { mm: 15, how: 'taped' },
    ...hole,
  },
  ...(roundM === undefined
    ? []
    : [
        {
          id: 'round',
          ends: ['locker', 'step'],
          length: taped(roundM),
          kind: 'open',
          known: 'seen',
          ...(roundHours === undefined ? {} : { hours: roundHours }),
          ...round,
        } satisfies Way,
      ]),
];

const plugOf = (plug: Plug, { connector, lead }: HoleAsk): Plug => ({
  ...plug,
  ...(connector === undefined ? {} : { connector }),
  ...(lead === undefined ? {} : { gender: 'male', fixedLead: taped(1), ...lead }),
});

/** Cameras behind a hole of 15 mm and a switch before it, with or without a way round. */
export const holeBoat = (ask: HoleAsk = {}): Boat => {
  const { hour = 7500, cables = 1, state, shelf = shelfOf2m5mAnd100m } = ask;
  const eyes = Array.from({ length: cables }, (_, n) => `eye-${n}`);
  const { boat } = netBoat(
    { hub: aSwitch('locker'), ...Object.fromEntries(eyes.map((id) => [id, anEye('step')])) },
    eyes.map((id, n) => `hub.p${n + 1} ${id}.eth`),
  );
  const { source: _, ...usual } = typicalPrices;
  return {
    ...boat,
    prices: {
      ...usual,
      hour,
      items: Object.fromEntries(Object.entries(shelf).map(([mm, price]) => [`ethernet-${mm}mm`, price])),
    },
    places: [
      ...boat.places,
      { id: 'step', name: 'step', xM: 4, yM: -0.8, zM: 1, exposure: 'damp', reach: 'open', tees: false },
    ],
    ways: [...boat.ways, ...waysOf(ask)],
    sheets: boat.sheets.map((sheet) =>
      sheet.id === 'sheet-eye-0' ? { ...sheet, plugs: sheet.plugs.map((plug) => plugOf(plug, ask)) } : sheet,
    ),
    ...(state === undefined ? {} : { pins: { routes: { [holeLine]: { ways: ['hole'], state } } } }),
  };
};

/** The small boat with her widest pipe as narrow as one pair of wires. */
export const aCoaxBoat = (): Boat =>
  aBoat().change((boat) => {
    for (const way of boat.ways) if (way.id === 'locker-helm') way.bore = { mm: 10, how: 'taped' };
    boat.joins = boat.joins.filter(({ kind }) => kind !== 'nmea2000');
    boat.buses = [];
    for (const panel of boat.supply.panels)
      for (const circuit of panel.circuits) circuit.feeds = circuit.feeds.filter((fed) => fed.includes('.'));
  }).boat;
