import type { Sheet } from '../../boat/sheet.ts';
import {
  busPlug,
  busPort,
  busPower,
  coaxPlug,
  hears,
  leads,
  ownPower,
  readings,
  safeFromCompass,
  sends,
  supplyPlug,
  supplyPort,
  typicalSheet,
} from './parts.ts';

const zones = ['zone-1', 'zone-2', 'zone-3', 'zone-4'] as const;

const audioPlayerBus = typicalSheet(['practice-sheet-gaps'], {
  id: 'audio-player-bus',
  name: 'Audio player with four zones and a bus plug, typical',
  kind: 'audio',
  plugs: [busPlug, coaxPlug('radio', 'so239'), supplyPlug, ...zones.map((zone) => leads(`leads-${zone}`))],
  ports: [
    supplyPort,
    busPort(1, { sends: sends(130569, 130573, 130586), hears: hears(130582) }),
    { id: 'rf', onPlug: 'radio', protocol: 'coax', role: 'listen', hears: readings('audio') },
    ...zones.map((id) => ({
      id,
      onPlug: `leads-${id}`,
      protocol: 'audio' as const,
      role: 'talk' as const,
      sends: readings('audio'),
    })),
    { id: 'phone', protocol: 'wifi', role: 'both' },
  ],
  power: [ownPower({ typicalA: 1, maxA: 12, minV: 10.8, fuseA: 15 })],
  compassSafe: safeFromCompass(0.2),
});

const audioRemoteBus = typicalSheet(['practice-sheet-gaps'], {
  id: 'audio-remote-bus',
  name: 'Remote control of an audio player, on the bus, typical',
  kind: 'audio',
  plugs: [busPlug],
  ports: [busPort(2, { sends: sends(130582), hears: hears(130569, 130573, 130586) })],
  power: [busPower({ typicalA: 0.06, maxA: 0.1 })],
  compassSafe: safeFromCompass(0.2),
  ipCode: 'IPX6/IPX7',
});

const loudspeaker = typicalSheet(['maker-compass-distance', 'practice-sheet-gaps'], {
  id: 'loudspeaker-magnet',
  name: 'Loudspeaker with a strong magnet, typical',
  kind: 'loudspeaker',
  plugs: [leads('lead')],
  ports: [{ id: 'audio', onPlug: 'lead', protocol: 'audio', role: 'listen', hears: readings('audio') }],
  compassSafe: safeFromCompass(2.55),
});

/** Music aboard: one box with its zones, its remote, and the loudspeakers a compass fears. */
export const audio: readonly Sheet[] = [audioPlayerBus, audioRemoteBus, loudspeaker];
