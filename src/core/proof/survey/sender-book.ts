import type { DeviceName } from '../decode/name-field.ts';
import type { ProductInformation } from '../decode/product-information.ts';
import { type SentBook, type SurveyRoom, startSentBook, surveyRoom } from './sent-book.ts';

/** One sender as it is being surveyed. */
export interface Sender {
  address: number | undefined;
  readonly addresses: number[];
  name: DeviceName | undefined;
  claims: number;
  frames: number;
  product: ProductInformation | undefined;
  readonly sent: SentBook;
}

/** Who sends from which address, followed over the recording. */
export interface SenderBook {
  /** the sender at an address now */
  at(address: number): Sender;
  /** takes a claim of an address by a NAME and returns its sender */
  claim(address: number, name: DeviceName): Sender;
  all(): readonly Sender[];
}

/** 254 = cannot claim, 255 = everyone: no one sends messages from these. */
const lastAddress = 253;
/** More NAMEs than four full buses: a damaged recording. */
const mostNames = 1024;

/** More senders than a damaged recording may fill the memory with; what comes after shares one. */
const mostSenders = 4096;

const newSender = (room: SurveyRoom): Sender => ({
  address: undefined,
  addresses: [],
  name: undefined,
  claims: 0,
  frames: 0,
  product: undefined,
  sent: startSentBook(room),
});

/**
 * Starts following senders. A NAME keeps its sender wherever it moves; the one it drives from an address keeps its own
 * without an address until it claims again. The latest claim holds: whoever is stronger claims once more.
 */
export const startSenderBook = (): SenderBook => {
  const byAddress = new Array<Sender | undefined>(256).fill(undefined);
  const byName = new Map<string, Sender>();
  const all: Sender[] = [];
  const room = surveyRoom();
  const crowd = newSender(room);

  const addSender = (): Sender => {
    if (all.length >= mostSenders) return crowd;
    const sender = newSender(room);
    all.push(sender);
    return sender;
  };

  const settle = (sender: Sender, address: number): void => {
    sender.address = address;
    byAddress[address] = sender;
    if (!sender.addresses.includes(address)) sender.addresses.push(address);
  };

  const at = (address: number): Sender => {
    const known = byAddress[address];
    if (known !== undefined) return known;
    const sender = addSender();
    settle(sender, address);
    return sender;
  };

  /** A sender that showed no NAME so far is the one that claims its address. */
  const introduce = (address: number, name: DeviceName): Sender => {
    const here = byAddress[address];
    const sender = here !== undefined && here.name === undefined ? here : addSender();
    sender.name = name;
    byName.set(name.hex, sender);
    return sender;
  };

  const move = (sender: Sender, address: number): void => {
    if (sender.address === address) return;
    if (sender.address !== undefined) byAddress[sender.address] = undefined;
    sender.address = undefined;
    if (address > lastAddress) return;
    const driven = byAddress[address];
    if (driven !== undefined) driven.address = undefined;
    settle(sender, address);
  };

  return {
    at,
    claim(address, name) {
      const known = byName.get(name.hex);
      if (known === undefined && byName.size >= mostNames) return at(address);
      const sender = known ?? introduce(address, name);
      sender.claims += 1;
      move(sender, address);
      return sender;
    },
    all: () => all,
  };
};
