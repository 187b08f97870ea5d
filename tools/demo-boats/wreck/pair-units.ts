import type { Boat, Kit } from '../../../src/core/boat/boat-schema.ts';
import type { Port, Sheet } from '../../../src/core/boat/sheet.ts';

type Ports = readonly (Pick<Port, 'id' | 'role'> & Partial<Port>)[];

/** A sheet of old sentences that somebody has read in its manual: its ports are lines of 4800 baud unless they say otherwise. */
export const sentenceSheet = (
  id: string,
  { name, kind, ports, turns }: { name: string; kind: string; ports: Ports; turns?: NonNullable<Sheet['turns']> },
): Sheet => ({
  id,
  name,
  kind,
  source: 'manual',
  sourceNote: 'Read aboard in its manual, chapter on connections.',
  plugs: [{ id: 'wires', connector: 'leads', gender: 'none' }],
  ports: ports.map((port) => ({ onPlug: 'wires', protocol: 'nmea0183', baud: 4800, ...port })),
  ...(turns === undefined ? {} : { turns }),
  compassSafe: { valueM: 0.2, how: 'papers', lessM: 0, moreM: 0 },
});

/** A unit at the helm that stays. */
export const atHelm = (id: string, name: string, sheet: string): Kit => ({
  id,
  name,
  sheet,
  fate: 'stays',
  place: 'helm',
});

/** The boat with one talker’s pair to a listener. */
export const withPair = (boat: Boat, id: string, from: string, to: string): Boat => {
  const member = (dotted: string, as: 'talk' | 'listen') => {
    const [kit = '', port = ''] = dotted.split('.');
    return { kit, port, as };
  };
  const members = [member(from, 'talk'), member(to, 'listen')];
  return { ...boat, joins: [...boat.joins, { id, kind: 'nmea0183', members, hold: 'fixed' }] };
};

/** The boat with a multiplexer that has a wifi, and the recorder it talks to. */
export const withWifiMux = (
  boat: Boat,
  { stem, mux, recorder, remote }: { stem: string; mux: string; recorder: string; remote?: NonNullable<Kit['remote']> },
): Boat => {
  const [muxId, recorderId] = [`${stem}-mux`, `${stem}-recorder`];
  const muxSheet = sentenceSheet(`${muxId}-sheet`, {
    name: `${mux}, as its manual has it`,
    kind: 'multiplexer',
    ports: [
      { id: 'air', role: 'both', protocol: 'wifi' },
      { id: 'out', role: 'talk', sends: [{ sentence: 'MTW', everyMs: 2000 }] },
    ],
  });
  const recorderSheet = sentenceSheet(`${recorderId}-sheet`, {
    name: `${recorder}, as its manual has it`,
    kind: 'recorder',
    ports: [{ id: 'in', role: 'listen', hears: [{ sentence: 'MTW' }] }],
  });
  const aboard = {
    ...boat,
    sheets: [...boat.sheets, muxSheet, recorderSheet],
    kit: [
      ...boat.kit,
      { ...atHelm(muxId, mux, muxSheet.id), ...(remote === undefined ? {} : { remote }) },
      atHelm(recorderId, recorder, recorderSheet.id),
    ],
  };
  return withPair(aboard, `${stem}-line`, `${muxId}.out`, `${recorderId}.in`);
};

/** The boat with a source named. */
export const withSource = (boat: Boat, choice: NonNullable<Boat['sources']>[number]): Boat => ({
  ...boat,
  sources: [...(boat.sources ?? []), choice],
});
