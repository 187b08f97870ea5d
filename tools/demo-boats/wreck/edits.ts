import type { Boat, Kit, WalkStep } from '../../../src/core/boat/boat-schema.ts';
import type { Sheet } from '../../../src/core/boat/sheet.ts';

/** The boat with one unit changed. */
export const withUnit = (boat: Boat, id: string, change: (unit: Kit) => Kit): Boat => ({
  ...boat,
  kit: boat.kit.map((unit) => (unit.id === id ? change(unit) : unit)),
});

/** The boat with the pinned trunk of one bus changed. */
export const withWalk = (boat: Boat, bus: string, change: (walk: WalkStep[]) => WalkStep[]): Boat => {
  const layouts = boat.pins?.layouts ?? {};
  const pinned = layouts[bus];
  if (pinned === undefined) throw new Error(`The Wreck has no pinned layout for ${bus}.`);
  return { ...boat, pins: { ...boat.pins, layouts: { ...layouts, [bus]: { ...pinned, walk: change(pinned.walk) } } } };
};

/** A unit with no message of its own on the bus, to fill one up: a keypad, or a lamp that draws all a drop may give. */
export const fillerSheet = (id: string, name: string, len: number): Sheet => ({
  id,
  name,
  kind: 'keypad',
  source: 'typical',
  sourceNote: 'Invented for this boat.',
  plugs: [{ id: 'bus', connector: 'n2k-micro', gender: 'male' }],
  ports: [{ id: 'n2k', onPlug: 'bus', protocol: 'nmea2000', role: 'both', len, sends: [{ pgn: 127502 }] }],
});

export interface OwnBus {
  readonly id: string;
  readonly name: string;
  readonly sheet: Sheet;
  readonly kit: readonly Omit<Kit, 'sheet' | 'fate'>[];
  /** its pinned trunk; absent leaves the layout to be found */
  readonly walk?: WalkStep[];
}

/** The boat with one more bus of its own units, its own breaker and, where given, a pinned trunk, apart from all she had. */
export const withOwnBus = (boat: Boat, { id, name, sheet, kit, walk }: OwnBus): Boat => ({
  ...boat,
  sheets: [...boat.sheets, sheet],
  kit: [...boat.kit, ...kit.map((unit): Kit => ({ ...unit, sheet: sheet.id, fate: 'stays' }))],
  buses: [...boat.buses, { id, name, protocol: 'nmea2000', grade: 'light' }],
  joins: [
    ...boat.joins,
    {
      id: `on-${id}`,
      kind: 'nmea2000',
      bus: id,
      members: kit.map((unit) => ({ kit: unit.id, port: 'n2k', as: 'both' })),
      hold: 'fixed',
    },
  ],
  supply: {
    ...boat.supply,
    panels: boat.supply.panels.map((panel) =>
      panel.id === 'switches'
        ? { ...panel, circuits: [...panel.circuits, { id: `c-${id}`, ratingA: 3, kind: 'breaker', feeds: [id] }] }
        : panel,
    ),
  },
  ...(walk === undefined
    ? {}
    : {
        pins: {
          ...boat.pins,
          layouts: { ...boat.pins?.layouts, [id]: { grade: 'light', walk, state: 'fixed' } },
        },
      }),
});
