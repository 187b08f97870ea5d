import { UserError } from '../../boat/user-error.ts';
import { joinedBytes, uint32At } from './file-words.ts';
import { type CapturedInterface, readInterface } from './pcapng-section.ts';
import { startTally } from './reader-tally.ts';
import { emptyFrame } from './recorded-frame.ts';
import type { RecordingReader } from './recording-reader-shape.ts';
import type { RecordingSink } from './recording-sink.ts';
import { readSocketCanRecord, socketCanLink } from './socketcan-record.ts';

const sectionHeader = 0x0a0d_0d0a;
const interfaceDescription = 1;
const simplePacket = 3;
const enhancedPacket = 6;
const byteOrderMagic = 0x1a2b_3c4d;
/** Type, length, and the length once more at the end. */
const frameBytes = 12;
const headBytes = 8;
const enhancedHeadBytes = 20;
/** Longest block believed; a longer one means that the file is damaged and the rest cannot be told apart. */
const longestBlockBytes = 1_048_576;
/** More interfaces than any recorder has: a damaged file. */
const mostInterfaces = 4096;

/** Whether a recording begins as a pcapng file. */
export const looksLikePcapng = (bytes: Uint8Array): boolean =>
  bytes.length >= 4 && uint32At(bytes, 0, false) === sectionHeader;

const otherNetwork = (link: number): UserError =>
  new UserError({
    says: `This pcapng file holds another kind of network (link type ${link}); a bus recording has link type 227.`,
    whatToDo: 'Record the bus interface itself, for example can0.',
  });

/** A packet as it stands in its block. */
interface Packet {
  readonly on: CapturedInterface | undefined;
  readonly timeUs: number | undefined;
  readonly data: Uint8Array;
}

const enhancedOf = (body: Uint8Array, interfaces: readonly CapturedInterface[], little: boolean): Packet => {
  const on = interfaces[uint32At(body, 0, little)];
  const captured = uint32At(body, 12, little);
  const timeUs = on?.timeUsOf(uint32At(body, 4, little), uint32At(body, 8, little));
  return {
    on,
    // A time beyond what a number holds exactly is no clock's, but damage.
    timeUs: Number.isSafeInteger(timeUs) ? timeUs : undefined,
    data: body.subarray(enhancedHeadBytes, enhancedHeadBytes + captured),
  };
};

const simpleOf = (body: Uint8Array, interfaces: readonly CapturedInterface[], little: boolean): Packet => {
  const [on] = interfaces;
  const original = uint32At(body, 0, little);
  const captured = on === undefined || on.snapBytes === 0 ? original : Math.min(original, on.snapBytes);
  return { on, timeUs: undefined, data: body.subarray(4, 4 + captured) };
};

/**
 * Reads a pcapng file: sections of either byte order, interfaces of link type 227 with any step of their clock,
 * enhanced and simple packets. Other blocks are passed over. Throws UserError when a section holds packets of another
 * network only; damaged blocks are counted, never fatal.
 */
export const startPcapngReader = ({ onFrame }: RecordingSink): RecordingReader => {
  const frame = emptyFrame();
  const tally = startTally();
  let pending: Uint8Array = new Uint8Array(0);
  let pendingAt = 0;
  let little = true;
  let damaged = false;
  let interfaces: CapturedInterface[] = [];

  const take = ({ on, timeUs, data }: Packet, byte: number): void => {
    if (on !== undefined && on.link !== socketCanLink) {
      if (interfaces.every(({ link }) => link !== socketCanLink)) throw otherNetwork(on.link);
      return;
    }
    frame.timeUs = timeUs;
    if (on !== undefined && readSocketCanRecord(data, frame)) {
      tally.frames += 1;
      onFrame?.(frame);
    } else tally.broken({ byte, says: 'a packet that holds no frame of the bus' });
  };

  const takeBlock = (type: number, body: Uint8Array, byte: number): void => {
    if (type === enhancedPacket && body.length >= enhancedHeadBytes) take(enhancedOf(body, interfaces, little), byte);
    else if (type === simplePacket && body.length >= 4) take(simpleOf(body, interfaces, little), byte);
    else if (type === interfaceDescription && interfaces.length < mostInterfaces) {
      const described = readInterface(body, little);
      if (described === undefined) tally.broken({ byte, says: 'an interface that is not described whole' });
      else interfaces.push(described);
    } else if (type === enhancedPacket || type === simplePacket)
      tally.broken({ byte, says: 'a packet too short for its own head' });
  };

  const giveUp = (byte: number, says: string): void => {
    damaged = true;
    tally.broken({ byte, says: `${says}: what follows cannot be told apart` });
  };

  /** A new section sets the byte order, by a number that reads backwards in the other one. */
  const openSection = (bytes: Uint8Array, at: number): boolean => {
    little = uint32At(bytes, at + headBytes, true) === byteOrderMagic;
    interfaces = [];
    return little || uint32At(bytes, at + headBytes, false) === byteOrderMagic;
  };

  /** Reads the block at a position and returns where the next one begins; the same position when it is not whole. */
  const readBlock = (bytes: Uint8Array, at: number): number => {
    const isSection = uint32At(bytes, at, false) === sectionHeader;
    if (isSection && !openSection(bytes, at)) {
      giveUp(pendingAt + at, 'a section of no known byte order');
      return bytes.length;
    }
    const length = uint32At(bytes, at + 4, little);
    if (length < frameBytes || length % 4 !== 0 || length > longestBlockBytes) {
      giveUp(pendingAt + at, `a block of ${length} bytes`);
      return bytes.length;
    }
    const end = at + length;
    if (end > bytes.length) return at;
    if (uint32At(bytes, end - 4, little) !== length)
      tally.broken({ byte: pendingAt + at, says: 'a block whose two lengths differ' });
    else if (!isSection)
      takeBlock(uint32At(bytes, at, little), bytes.subarray(at + headBytes, end - 4), pendingAt + at);
    return end;
  };

  const readOn = (bytes: Uint8Array): void => {
    let at = 0;
    while (at + frameBytes <= bytes.length) {
      const next = readBlock(bytes, at);
      if (next === at) break;
      at = next;
    }
    pending = bytes.slice(at);
    pendingAt += at;
  };

  return {
    push(chunk) {
      if (!damaged) readOn(joinedBytes(pending, chunk));
    },
    end: () => tally.counts({ cutShort: damaged || pending.length > 0 }),
  };
};
