import type { Hears, Port } from '../boat/sheet.ts';
import type { PortNode } from './port-network.ts';
import { type Signal, usualBaud } from './signal.ts';

/** Why a port that a signal reaches does not take it in. */
export type Deafness = 'line-differs' | 'baud-differs' | 'dialect-differs' | 'generation-unknown' | 'not-heard';

// A bare reading on either side stands for any message that gives it; two messages must be the same.
const isSameMessage = (heard: Hears, { message }: Signal): boolean => {
  const own = heard.pgn ?? heard.sentence;
  return own === undefined || message === undefined || own === message;
};

const takes = (heard: Hears, signal: Signal): boolean =>
  isSameMessage(heard, signal) && (heard.instance === undefined || heard.instance === signal.instance);

type Dialect = string | undefined;

const strangeness = (own: Dialect, other: Dialect, confirmed: boolean): Deafness | undefined => {
  if (own === undefined && other === undefined) return undefined;
  const [maker, generation] = own?.split('/') ?? [];
  const [otherMaker, otherGeneration] = other?.split('/') ?? [];
  if (maker !== otherMaker) return 'dialect-differs';
  const isSure = generation === otherGeneration && generation !== 'unknown';
  return confirmed || isSure ? undefined : 'generation-unknown';
};

/** RS-232 joined bare to anything else is luck, not arrival (source: practice-0183-pairs). */
const linesClash = (own: Port['line'], other: Port['line']): boolean =>
  own !== undefined && other !== undefined && (own === 'rs232') !== (other === 'rs232');

/**
 * The entries of a port's `hears` that take a signal in, or why there is none. `confirmed` says that the person has
 * asked whether two generations of one maker's language understand each other.
 */
export const hearing = (node: PortNode, signal: Signal, confirmed: boolean): readonly Hears[] | Deafness => {
  if (linesClash(node.port.line, signal.line)) return 'line-differs';
  if (node.port.protocol === 'nmea0183' && signal.baud !== (node.port.baud ?? usualBaud)) return 'baud-differs';
  const strange = strangeness(node.port.dialect, signal.dialect, confirmed);
  if (strange !== undefined) return strange;
  const listed = node.hears.get(signal.reading) ?? [];
  const taken = listed.every((heard) => takes(heard, signal)) ? listed : listed.filter((heard) => takes(heard, signal));
  return taken.length === 0 ? 'not-heard' : taken;
};
