import type { Hears, Plug, Port, Power, Sends, Sheet } from '../../boat/sheet.ts';
import { pgnInfo } from '../pgns.ts';
import type { ReadingId } from '../reading-ids.ts';
import { type SourceKey, sources } from '../sources.ts';

/**
 * A sheet of no maker: what a unit of this kind usually is. Its note names where the figures come from.
 *
 * @example typicalSheet(['maker-loads'], { id: 'ethernet-switch', name: '5-port Ethernet switch, typical', … })
 */
export const typicalSheet = (from: readonly SourceKey[], parts: Omit<Sheet, 'source' | 'sourceNote'>): Sheet => ({
  ...parts,
  source: 'typical',
  sourceNote: ["Typical of its kind; the maker's sheet wins.", ...from.map((key) => sources[key].text)].join(' '),
});

/** Messages a port sends, each at its usual interval (facts: pgns); one that comes on event has none. */
export const sends = (...pgns: readonly number[]): Sends[] =>
  pgns.map((pgn) => {
    const everyMs = pgnInfo(pgn)?.everyMs;
    return everyMs === undefined ? { pgn } : { pgn, everyMs };
  });

/** Messages a port understands. */
export const hears = (...pgns: readonly number[]): Hears[] => pgns.map((pgn) => ({ pgn }));

/** Sentences a port sends, all at one interval (ms), or on event where none is given. */
export const says = (sentences: readonly string[], everyMs?: number): Sends[] =>
  sentences.map((sentence) => (everyMs === undefined ? { sentence } : { sentence, everyMs }));

/** Sentences a port understands. */
export const listens = (...sentences: readonly string[]): Hears[] => sentences.map((sentence) => ({ sentence }));

/** Readings on a port that has no messages of its own: analog, coax, engine bus, picture. */
export const readings = (...ids: readonly ReadingId[]): { reading: ReadingId }[] => ids.map((reading) => ({ reading }));

/** The bus plug of a unit: male, so that the female end of a drop goes on. */
export const busPlug: Plug = { id: 'bus', connector: 'n2k-micro', gender: 'male' };

/** The bus port of a unit; len in steps of 50 mA. */
export const busPort = (len: number, more: { sends?: Sends[]; hears?: Hears[] }): Port => ({
  id: 'n2k',
  onPlug: 'bus',
  protocol: 'nmea2000',
  role: 'both',
  len,
  ...more,
});

/** What a unit draws from the bus itself: A, at the bus's 9 to 16 V. */
export const busPower = ({ typicalA, maxA }: { typicalA: number; maxA: number }): Power => ({
  port: 'n2k',
  typical: typicalA,
  max: maxA,
  unit: 'A',
  behaves: 'current',
  minV: 9,
  maxV: 16,
});

/** The two supply leads of a unit with its own feed. */
export const supplyPlug: Plug = {
  id: 'supply',
  connector: 'leads',
  gender: 'none',
  conductors: [
    { label: 'plus', colour: 'red', ports: ['dc'], role: 'plus' },
    { label: 'minus', colour: 'black', ports: ['dc'], role: 'minus' },
  ],
};

/** The supply port of a unit with its own feed. */
export const supplyPort: Port = { id: 'dc', onPlug: 'supply', protocol: 'dc', role: 'listen' };

/** What a unit draws from its own feed: A at 12 V, taken as constant power; a 12 V unit unless `maxV` says otherwise. */
export const ownPower = (load: {
  typicalA: number;
  maxA: number;
  minV: number;
  maxV?: number;
  fuseA?: number;
}): Power => ({
  port: 'dc',
  typical: load.typicalA,
  max: load.maxA,
  unit: 'A',
  behaves: 'power',
  atV: 12,
  minV: load.minV,
  maxV: load.maxV ?? 16,
  ...(load.fuseA === undefined ? {} : { fuseA: load.fuseA }),
});

/** What a unit for 12 and 24 V draws from its own feed: watts, whatever the voltage. */
export const ownWatts = (load: { typicalW: number; maxW: number; minV: number; fuseA?: number }): Power => ({
  port: 'dc',
  typical: load.typicalW,
  max: load.maxW,
  unit: 'W',
  behaves: 'power',
  minV: load.minV,
  maxV: 32,
  ...(load.fuseA === undefined ? {} : { fuseA: load.fuseA }),
});

/** Bare leads or screws for NMEA 0183 pairs: an A and a B for each port. */
export const pairPlug = (id: string, ports: readonly string[]): Plug => ({
  id,
  connector: 'leads',
  gender: 'none',
  conductors: ports.flatMap((port) => [
    { label: `${port} A`, colour: 'as marked', ports: [port], role: 'A' as const },
    { label: `${port} B`, colour: 'as marked', ports: [port], role: 'B' as const },
  ]),
});

/** Two bare leads of a sensor or a sender. */
export const signalPlug = (id: string, port: string): Plug => ({
  id,
  connector: 'leads',
  gender: 'none',
  conductors: [
    { label: `${port} signal`, colour: 'as marked', ports: [port], role: 'signal' },
    { label: `${port} common`, colour: 'as marked', ports: [port], role: 'common' },
  ],
});

/** A socket for the plug of a coax. */
export const coaxPlug = (id: string, connector: 'so239' | 'tnc'): Plug => ({ id, connector, gender: 'female' });

/** The Ethernet socket of a unit. */
export const netPlug: Plug = { id: 'net', connector: 'rj45', gender: 'female' };

/** The Ethernet port of a unit with one. */
export const netPort = (more: { sends?: Sends[]; hears?: Hears[] }): Port => ({
  id: 'eth',
  onPlug: 'net',
  protocol: 'ethernet',
  role: 'both',
  ...more,
});

/** A compass-safe distance (m) read from a table of stand-ins, not from the unit's plate. */
export const safeFromCompass = (valueM: number): NonNullable<Sheet['compassSafe']> => ({ valueM, how: 'papers' });

interface PairPort {
  readonly onPlug?: string;
  /** differential unless said */
  readonly line?: 'single-ended' | 'rs232';
  /** 4800 unless said */
  readonly baud?: number;
  readonly isolated?: true;
}

/** An NMEA 0183 output: differential and 4800 baud unless said. */
export const talkPort = (id: string, { sends, ...more }: PairPort & { readonly sends: Sends[] }): Port => ({
  id,
  onPlug: 'data',
  protocol: 'nmea0183',
  line: 'differential',
  baud: 4800,
  role: 'talk',
  ...more,
  sends,
});

/** An NMEA 0183 input: differential and 4800 baud unless said. */
export const listenPort = (id: string, { hears, ...more }: PairPort & { readonly hears: Hears[] }): Port => ({
  id,
  onPlug: 'data',
  protocol: 'nmea0183',
  line: 'differential',
  baud: 4800,
  role: 'listen',
  ...more,
  hears,
});

/** An input for a bare sensor: what it may measure. */
export const analogIn = (id: string, onPlug: string, ...ids: readonly ReadingId[]): Port => ({
  id,
  onPlug,
  protocol: 'analog',
  role: 'listen',
  hears: readings(...ids),
});

/** The lead of a bare sensor: what it measures, as often as it is asked. */
export const analogOut = (id: string, onPlug: string, ...ids: readonly ReadingId[]): Port => ({
  id,
  onPlug,
  protocol: 'analog',
  role: 'talk',
  sends: readings(...ids),
});

/** Bare leads of a sensor with more than two cores. */
export const leads = (id: string): Plug => ({ id, connector: 'leads', gender: 'none' });
