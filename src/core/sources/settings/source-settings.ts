import { soleReadings } from '../../facts/numbered-readings.ts';
import type { ReadingId } from '../../facts/reading-ids.ts';
import { doubledSources } from '../../readings/doubled.ts';
import type { Reaches } from '../../readings/reaches.ts';
import type { ChosenSources } from '../choose-sources.ts';
import type { Setting } from './port-settings.ts';

/** What to choose at each unit where a reading comes from several sources; two clocks that both keep UTC are no choice. */
const choices = (chosen: readonly ChosenSources[]): Setting[] =>
  chosen
    .filter(({ chosen: how }) => how !== 'only' && how !== 'all')
    .filter(({ need, backups }) => backups.length > 0 && need.reading !== 'time-date')
    .map(({ need, primary, backups }) => ({
      kit: need.at,
      does: 'choose' as const,
      readings: [need.reading],
      at: [need.at],
      ...(need.instance === undefined ? {} : { instance: need.instance }),
      ...(primary.ports[0] === undefined ? {} : { source: primary.ports[0] }),
      backups: backups.flatMap(({ way }) => way.ports.slice(0, 1)),
    }));

/** Ports of the ways of one reading, primary or backup. */
const portsOf = (chosen: readonly ChosenSources[], reading: ReadingId, which: 'primary' | 'backup'): Set<string> =>
  new Set(
    chosen
      .filter(({ need }) => need.reading === reading)
      .flatMap(({ primary, backups }) =>
        which === 'primary' ? primary.ports : backups.flatMap(({ way }) => way.ports),
      ),
  );

/** Senders of one reading under one number on one bus, of which one counts: the others stand by, or are switched off. */
const doubles = (reaches: Reaches, chosen: readonly ChosenSources[]): Setting[] =>
  doubledSources(reaches)
    .filter(({ reading }) => soleReadings.has(reading))
    .flatMap(({ reading, ports, instance }) => {
      const counts = portsOf(chosen, reading, 'primary');
      const standBy = portsOf(chosen, reading, 'backup');
      if (!ports.some((port) => counts.has(port))) return [];
      return ports
        .filter((port) => !counts.has(port))
        .map((port) => ({
          kit: port.split('.')[0] ?? port,
          port,
          does: standBy.has(port) ? ('stand-by' as const) : ('stop' as const),
          readings: [reading],
          at: [],
          ...(instance === undefined ? {} : { instance }),
          why: 'doubled' as const,
        }));
    });

type Heading = {
  readonly at: string;
  readonly source: string;
  readonly reference: 'true' | 'magnetic';
  readonly isOpen: boolean;
};

/** True or magnetic, as a screen wants it; and at a sender whose message may be either, where all who take it want the same. */
const references = (chosen: readonly ChosenSources[]): Setting[] => {
  const wanted = chosen.flatMap(({ need, primary }): Heading[] => {
    const [reference] = primary.wanted.references;
    if (need.reading !== 'heading' || (reference !== 'true' && reference !== 'magnetic')) return [];
    const [source = ''] = primary.ports;
    const isOpen = primary.signal.reference === undefined && primary.kit[0] !== need.at;
    return [{ at: need.at, source, reference, isOpen }];
  });
  const row = { does: 'reference' as const, readings: ['heading' as const] };
  const isAgreed = ({ source, reference }: Heading): boolean =>
    wanted.every((other) => other.source !== source || other.reference === reference);
  return [
    ...wanted.map(({ at, reference }) => ({ ...row, kit: at, at: [at], reference })),
    ...wanted
      .filter((one) => one.isOpen && isAgreed(one))
      .map(({ at, source, reference }) => ({
        ...row,
        kit: source.split('.')[0] ?? source,
        port: source,
        at: [at],
        reference,
      })),
  ];
};

/** The port at which the offset of a depth is entered: the first from which it travels on, else the screen’s own. */
const offsetOwner = ({ ports, kit, signals }: ChosenSources['primary']): number => {
  const travels = signals.map(({ withOffset }) => withOffset === true);
  const at = ports.findIndex((_, port) => travels.slice(port).every(Boolean) && kit[port] !== kit[port + 1]);
  return at < 0 ? ports.length - 1 : at;
};

/** Who enters the offset of each depth, and who on its way must leave his at nothing. */
const offsets = (chosen: readonly ChosenSources[]): Setting[] =>
  chosen
    .filter(({ need }) => need.reading === 'depth')
    .flatMap(({ need, primary, backups }) => [primary, ...backups.map(({ way }) => way)].map((way) => ({ need, way })))
    .flatMap(({ need, way }) => {
      const owner = offsetOwner(way);
      const [source = ''] = way.ports;
      const row = { readings: ['depth' as const], at: [need.at], source };
      const others = [...new Set(way.kit.slice(owner))].filter((kit) => kit !== way.kit[owner]);
      const wants = way.wanted.references.find((one) => one === 'keel' || one === 'waterline' || one === 'transducer');
      return [
        {
          ...row,
          kit: way.kit[owner] ?? need.at,
          ...(owner === way.ports.length - 1 ? {} : { port: way.ports[owner] ?? '' }),
          does: 'offset' as const,
          ...(wants === undefined ? {} : { reference: wants }),
        },
        ...others.map((kit) => ({ ...row, kit, does: 'no-offset' as const })),
      ];
    });

/** What screens and senders are set to, so that one source counts: choices, doubles, references, offsets. */
export const sourceSettings = (reaches: Reaches, chosen: readonly ChosenSources[]): Setting[] => [
  ...choices(chosen),
  ...doubles(reaches, chosen),
  ...references(chosen),
  ...offsets(chosen),
];
