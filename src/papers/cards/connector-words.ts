import type { Plug } from '../../core/boat/sheet.ts';

/** Connectors whose name on a sheet is no plain word. */
const words: ReadonlyMap<string, string> = new Map([
  ['deck-socket-4', 'deck socket, four poles'],
  ['leads', 'bare leads'],
  ['n2k-micro', 'micro bus plug, five poles'],
  ['n2k-mini', 'mini bus plug, five poles'],
  ['rj45', 'RJ45 socket'],
  ['so239', 'SO-239 coax socket'],
  ['own-plug', 'the maker’s own plug'],
  ['tnc', 'TNC coax socket'],
  ['transducer-8', 'plug of a transducer, eight poles'],
  ['usb-a', 'USB socket'],
  ['video-bnc', 'BNC video socket'],
]);

/** A plug that only one maker has: "maker-a-push-5" is maker A's, of its type push 5. */
const ownWords = (connector: string): string | undefined => {
  const [, maker = '', type = ''] = /^maker-([a-z])-(.+)$/.exec(connector) ?? [];
  return maker === '' ? undefined : `maker ${maker.toUpperCase()}’s own plug, type ${type.replaceAll('-', ' ')}`;
};

/**
 * A connector in words, with its gender where it has one.
 *
 * @example connectorWords({ id: 'bus', connector: 'n2k-micro', gender: 'male' }) // 'micro bus plug, five poles, male'
 */
export const connectorWords = ({ connector, gender }: Plug): string =>
  [
    words.get(connector) ?? ownWords(connector) ?? connector.replaceAll('-', ' '),
    ...(gender === 'none' ? [] : [gender]),
  ].join(', ');
