import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { Sheet } from '../boat/sheet.ts';
import type { LightingEntry, LightingParts } from '../lighting-shape.ts';
import type { PortNetwork, PortNode } from '../readings/port-network.ts';

interface Screen {
  readonly kit: string;
  readonly place: string;
  readonly lighting: NonNullable<Sheet['lighting']>;
}

const screensAboard = ({ index, nodesOf }: PortNetwork): Screen[] =>
  [...nodesOf.keys()].flatMap((kit) => {
    const lighting = index.sheetOf.get(kit)?.lighting;
    const unit = index.kit.get(kit);
    return lighting === undefined || unit === undefined ? [] : [{ kit, place: unit.place, lighting }];
  });

/** The language a screen dims by; undefined where it has a knob, or nobody knows which generation it speaks. */
const spoken = ({ lighting: { dims, dialect } }: Screen): string | undefined =>
  dims === 'own-knob' || dialect?.endsWith('/unknown') === true ? undefined : dialect;

const carrying: ReadonlySet<string> = new Set(['nmea2000', 'ethernet']);

/** Everything a screen is one bus or network with: maker’s own messages go along a bus and through switches, not through converters. */
const within = (nodes: readonly PortNode[]): ReadonlySet<string> => {
  const found = new Map(nodes.filter(({ port }) => carrying.has(port.protocol)).map((node) => [node.id, node]));
  for (const { memberships, group } of found.values()) {
    const next = [...memberships.flatMap(({ net }) => net.members.map(({ node }) => node)), ...group];
    for (const node of next) if (carrying.has(node.port.protocol)) found.set(node.id, node);
  }
  return new Set([...found.values()].map(({ kit }) => kit));
};

const groupOf = (network: PortNetwork, screen: Screen, screens: readonly Screen[]): string | undefined => {
  const language = spoken(screen);
  if (language === undefined) return undefined;
  const near = within(network.nodesOf.get(screen.kit) ?? []);
  const [first] = screens
    .filter((other) => spoken(other) === language && (other === screen || near.has(other.kit)))
    .map(({ kit }) => kit)
    .sort(byCodeUnit);
  return first;
};

const placesOf = ({ boat }: BoatIndex): string[] => boat.places.map(({ id }) => id).sort(byCodeUnit);

/** Which screens at each place dim together and which have a knob of their own; screens whose sheet says nothing are left out. Pure. */
export const planLighting = (network: PortNetwork): LightingParts => {
  const screens = screensAboard(network);
  const lighting = placesOf(network.index).flatMap((place): LightingEntry[] => {
    const here = screens.filter((screen) => screen.place === place);
    if (here.length === 0) return [];
    return [
      {
        place,
        screens: here.map((screen) => {
          const { dims, quietens } = screen.lighting;
          const group = groupOf(network, screen, screens);
          return {
            kit: screen.kit,
            dims,
            ...(group === undefined ? {} : { group }),
            ...(quietens === undefined ? {} : { quietens }),
          };
        }),
      },
    ];
  });
  return { lighting };
};
