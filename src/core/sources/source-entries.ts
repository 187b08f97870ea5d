import { byCodeUnit } from '../boat/ids.ts';
import type { PortNetwork } from '../readings/port-network.ts';
import type { WayIn } from '../readings/ways-in.ts';
import type { SourceEntry, SourceWay } from '../sources-shape.ts';
import type { ChosenSources } from './choose-sources.ts';
import { convertersOn, restsOn } from './rank-ways.ts';

/** A way as the plan tells it, with its reading as it comes in at the screen. */
const sourceWay = (network: PortNetwork, way: WayIn): SourceWay => {
  const { message, instance, everyMs, reference, withOffset } = way.signal;
  return {
    from: way.ports[0] ?? '',
    by: [...way.ports],
    converters: convertersOn(network, way),
    rests: restsOn(network.index, way),
    ...(typeof message === 'number' ? { pgn: message } : {}),
    ...(typeof message === 'string' ? { sentence: message } : {}),
    ...(instance === undefined ? {} : { instance }),
    ...(everyMs === undefined ? {} : { everyMs }),
    ...(reference === undefined || reference === 'lost' ? {} : { reference }),
    ...(withOffset === undefined ? {} : { withOffset }),
  };
};

/** Units on both ways, the screen aside. */
const sharedUnits = (way: WayIn, primary: WayIn, at: string): string[] =>
  [...new Set(way.kit)].filter((kit) => kit !== at && primary.kit.includes(kit)).sort(byCodeUnit);

/** The source plan as the plan tells it, sorted by reading, instance, unit. */
export const sourceEntries = (network: PortNetwork, chosen: readonly ChosenSources[]): SourceEntry[] =>
  chosen
    .map(
      ({ need, chosen: how, because, primary, backups }): SourceEntry => ({
        reading: need.reading,
        ...(need.instance === undefined ? {} : { instance: need.instance }),
        at: need.at,
        chosen: how,
        ...(because === undefined ? {} : { because }),
        primary: sourceWay(network, primary),
        backups: backups.map(({ way, because: why }) => {
          const shares = sharedUnits(way, primary, need.at);
          return {
            ...sourceWay(network, way),
            ...(why === undefined ? {} : { because: why }),
            ...(shares.length === 0 ? {} : { shares }),
          };
        }),
      }),
    )
    .sort(
      (a, b) => byCodeUnit(a.reading, b.reading) || (a.instance ?? -1) - (b.instance ?? -1) || byCodeUnit(a.at, b.at),
    );
