import { limitValue } from '../../boat/limit-value.ts';
import type { Sends } from '../../boat/sheet.ts';
import { sentencePreference } from '../../facts/conversion.ts';
import { readingsOf } from '../../facts/message-readings.ts';
import { nmea0183 } from '../../facts/nmea0183.ts';
import type { ReadingId } from '../../facts/reading-ids.ts';
import { aisStatic, satelliteSentences } from '../../facts/source-choice.ts';
import { charsPerSecond, lineLoad } from '../../joins/line-load.ts';
import type { PortNetwork, PortNode } from '../../readings/port-network.ts';
import type { SettingEntry } from '../../sources-shape.ts';
import type { ReliedMessage } from '../relied-messages.ts';

/** A setting before it has its id. */
export type Setting = Omit<SettingEntry, 'id'>;

const sendOf = ({ node, message, everyMs, enoughMs, readings, at, asBackup }: ReliedMessage): Setting => ({
  kit: node.kit,
  port: node.id,
  does: 'send',
  ...(typeof message === 'number' ? { pgn: message } : { sentence: message }),
  readings: [...readings],
  at: [...at],
  ...(asBackup ? { asBackup: true as const } : {}),
  ...(everyMs === undefined ? {} : { everyMs }),
  ...(enoughMs === undefined ? {} : { enoughMs }),
});

/** Names and sizes of other ships come in messages of their own, which no reading is known by. */
const shipNames = ({ kit, id, port }: PortNode, relied: readonly ReliedMessage[]): Setting[] => {
  const targets = relied.filter(({ message, readings }) => typeof message === 'number' && readings.has('ais-targets'));
  if (targets.length === 0) return [];
  const at = targets.flatMap((message) => [...message.at]);
  return aisStatic.pgns
    .filter((pgn) => port.sends?.some((sent) => sent.pgn === pgn) === true)
    .map((pgn) => ({ kit, port: id, does: 'send', pgn, readings: ['ais-targets'], at }));
};

const loadPct = (network: PortNetwork, { port }: PortNode, sends: readonly Sends[]): { over: boolean } => {
  const { sharePct } = lineLoad({ charsPerS: charsPerSecond(sends), baud: port.baud ?? nmea0183.baud.value });
  return { over: sharePct > limitValue(network.index.boat, 'nmea0183-load') };
};

const stopOf = (node: PortNode, sentence: string, why: NonNullable<Setting['why']>): Setting => ({
  kit: node.kit,
  port: node.id,
  does: 'stop',
  sentence,
  readings: [],
  at: [],
  why,
});

const givenBy = (sent: Sends): readonly ReadingId[] => readingsOf(sent).map(({ reading }) => reading);

/** Whether some listener takes a reading in by this sentence and by none that is on: it may use it though no need is entered. */
const isMissed = ({ memberships }: PortNode, sent: Sends, isOn: ReadonlySet<number | string>): boolean =>
  memberships.some(({ net }) =>
    net.listeners.some(({ node: { hears } }) =>
      givenBy(sent).some((reading) => {
        const heard = (hears.get(reading) ?? []).flatMap(({ sentence }) => sentence ?? []);
        return heard.includes(sent.sentence ?? '') && !heard.some((letters) => isOn.has(letters));
      }),
    ),
  );

/** Sentences of one line that nobody relies on and that had better be off: satellites, what comes another way too, what does not fit. */
const stopsOn = (network: PortNetwork, node: PortNode, relied: readonly ReliedMessage[]): Setting[] => {
  const isOn = new Set(relied.map(({ message }) => message));
  const used = new Set(relied.flatMap(({ readings }) => [...readings]));
  const sends = node.port.sends ?? [];
  const unused = sends.filter(({ sentence }) => sentence !== undefined && !isOn.has(sentence));
  const whyOf = (sent: Sends): Setting['why'] => {
    if (satelliteSentences.has(sent.sentence ?? '')) return 'satellites';
    const given = givenBy(sent);
    const isBrought = given.every((reading) => used.has(reading) && sentencePreference.has(reading));
    return given.length > 0 && isBrought && !isMissed(node, sent, isOn) ? 'doubled' : undefined;
  };
  const first = unused.flatMap((sent) => {
    const why = whyOf(sent);
    return why === undefined ? [] : [{ sent, why }];
  });
  const off = new Set(first.map(({ sent }) => sent));
  const rest = unused
    .filter((sent) => !off.has(sent))
    .sort((a, b) => charsPerSecond([b]) - charsPerSecond([a]) || ((a.sentence ?? '') < (b.sentence ?? '') ? -1 : 1));
  const full: Sends[] = [];
  for (const sent of rest) {
    if (
      !loadPct(
        network,
        node,
        sends.filter((one) => !off.has(one)),
      ).over
    )
      break;
    off.add(sent);
    full.push(sent);
  }
  return [
    ...first.map(({ sent, why }) => stopOf(node, sent.sentence ?? '', why)),
    ...full.map((sent) => stopOf(node, sent.sentence ?? '', 'line-full')),
  ];
};

/** Where a line stays too full with nothing on it but what is relied on, that is sent no faster than is enough. */
const slowed = (network: PortNetwork, node: PortNode, relied: readonly ReliedMessage[]): readonly ReliedMessage[] => {
  const sends = relied.flatMap(({ message, everyMs }): Sends[] =>
    typeof message === 'string' ? [{ sentence: message, ...(everyMs === undefined ? {} : { everyMs }) }] : [],
  );
  if (!loadPct(network, node, sends).over) return relied;
  return relied.map((one) =>
    one.enoughMs === undefined || one.everyMs === undefined || one.enoughMs <= one.everyMs
      ? one
      : { ...one, everyMs: one.enoughMs },
  );
};

const isLine = ({ port, memberships }: PortNode): boolean => port.protocol === 'nmea0183' && memberships.length > 0;

/**
 * What to switch on and off at each port: the messages somebody relies on, with their rates; on a line of sentences what only
 * takes room there; and the speed of every line that is joined.
 */
export const portSettings = (network: PortNetwork, relied: ReadonlyMap<string, readonly ReliedMessage[]>): Setting[] =>
  [...network.nodes.values()].flatMap((node) => {
    const own = relied.get(node.id) ?? [];
    if (!isLine(node)) return [...own.map(sendOf), ...shipNames(node, own)];
    const talks = node.memberships.some((membership) => membership.talks);
    return [
      {
        kit: node.kit,
        port: node.id,
        does: 'speed' as const,
        readings: [],
        at: [],
        baud: node.port.baud ?? nmea0183.baud.value,
      },
      ...slowed(network, node, own).map(sendOf),
      ...(talks ? stopsOn(network, node, own) : []),
    ];
  });
