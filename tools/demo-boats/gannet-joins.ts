import type { Join } from '../../src/core/boat/boat-schema.ts';

type Member = Join['members'][number];
type Kind = Join['kind'];

const member = (dotted: string, as: Member['as']): Member => {
  const [kit = '', port = ''] = dotted.split('.');
  return { kit, port, as };
};

const fixed = (id: string, kind: Kind, members: Member[]): Join => ({ id, kind, members, hold: 'fixed' });

/** One talker and its one listener. */
const lead = (id: string, kind: Kind, talker: string, listener: string): Join =>
  fixed(id, kind, [member(talker, 'talk'), member(listener, 'listen')]);

const link = (id: string, socket: string, unit: string): Join =>
  fixed(id, 'ethernet', [member(`switch.${socket}`, 'both'), member(`${unit}.eth`, 'both')]);

const onNav = [
  'mfd-helm',
  'mfd-fly',
  'instr-helm',
  'instr-fly',
  'depth-bus',
  'gnss',
  'heading',
  'ais',
  'vhf-1',
  'conv-fly',
  'conv-pilot',
  'eng-gw-port',
  'eng-gw-stbd',
  'tank-box',
  'shunt',
];

/** Gannet's joins, written out from the words of her tables; the old kit among itself and with the kept pilot last. */
export const gannetJoins: readonly Join[] = [
  {
    id: 'on-nav',
    kind: 'nmea2000',
    bus: 'nav',
    members: onNav.map((kit) => ({ kit, port: 'n2k', as: 'both' })),
    hold: 'fixed',
  },
  link('link-helm', 'p1', 'mfd-helm'),
  link('link-fly', 'p2', 'mfd-fly'),
  link('link-radar', 'p3', 'radar'),
  link('link-sonar', 'p4', 'sonar'),
  lead('lead-echo', 'analog', 'transducer.echo', 'sonar.echo'),
  lead('coax-ais', 'coax', 'ais-whip.rf', 'ais.vhf-rf'),
  lead('coax-ais-gnss', 'coax', 'ais-gnss.rf', 'ais.gnss-rf'),
  lead('coax-vhf-1', 'coax', 'vhf-1-whip.rf', 'vhf-1.rf'),
  lead('coax-vhf-2', 'coax', 'vhf-2-whip.rf', 'vhf-2.rf'),
  lead('pair-vhf-2', 'nmea0183', 'conv-fly.out', 'vhf-2.in'),
  lead('pair-to-pilot', 'nmea0183', 'conv-pilot.out', 'pilot-computer.in'),
  lead('pair-from-pilot', 'nmea0183', 'pilot-computer.out', 'conv-pilot.in'),
  lead('wire-head', 'single-wire', 'pilot-computer.head-wire', 'pilot-head.wire'),
  lead('wire-head-fly', 'single-wire', 'pilot-head.next', 'pilot-head-fly.wire'),
  lead('lead-fluxgate', 'analog', 'fluxgate.signal', 'pilot-computer.flux'),
  lead('lead-rudder', 'analog', 'rudder-ref.signal', 'pilot-computer.rudder-in'),
  lead('lead-pump', 'analog', 'pilot-computer.motor', 'pump.motor'),
  lead('engine-bus-port', 'engine-can', 'engine-p.engine-bus', 'eng-gw-port.engine-bus'),
  lead('engine-bus-stbd', 'engine-can', 'engine-s.engine-bus', 'eng-gw-stbd.engine-bus'),
  lead('lead-fuel-p', 'analog', 'fuel-p.signal', 'tank-box.in-1'),
  lead('lead-fuel-s', 'analog', 'fuel-s.signal', 'tank-box.in-2'),
  lead('lead-water', 'analog', 'water-s.signal', 'tank-box.in-3'),
  lead('old-pair-gps', 'nmea0183', 'old-gps.out', 'old-plotter.in'),
  lead('old-pair-pilot', 'nmea0183', 'old-plotter.out', 'pilot-computer.in'),
  lead('old-radar-cable', 'video', 'old-radar.video', 'old-radar-screen.video'),
  lead('old-depth-lead', 'analog', 'old-sounder.repeater', 'old-depth-fly.in'),
];
