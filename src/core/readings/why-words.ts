import type { BoatIndex } from '../boat/boat-index.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import type { BrokenLink } from '../plan-shape.ts';
import type { PortNode } from './port-network.ts';
import type { Signal } from './signal.ts';

/** Why a need is not met, and what a person could look at. */
export interface WhyNot {
  readonly link: BrokenLink;
  readonly says: string;
  readonly cures: readonly string[];
}

/** A unit by the name its owner gave it. */
export const unitWords = (index: BoatIndex, kit: string): string => index.kit.get(kit)?.name ?? kit;

/** A port of a unit: "port out of Converter". */
export const portWords = (index: BoatIndex, node: PortNode): string =>
  `port ${node.port.id} of ${unitWords(index, node.kit)}`;

const messageWords = (message: number | string): string => (typeof message === 'number' ? `PGN ${message}` : message);

/** " as DBT", " as PGN 128267", or nothing for a bare reading. */
export const asMessage = ({ message }: Pick<Signal, 'message'>): string =>
  message === undefined ? '' : ` as ${messageWords(message)}`;

/** The messages by which a port would take a reading in: "DPT or PGN 128267". */
export const heardAs = (node: PortNode, reading: ReadingId): string =>
  (node.hears.get(reading) ?? [])
    .flatMap((heard) => heard.pgn ?? heard.sentence ?? [])
    .map(messageWords)
    .sort()
    .join(' or ');
