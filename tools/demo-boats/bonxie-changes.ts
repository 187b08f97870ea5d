import type { Kit } from '../../src/core/boat/boat-schema.ts';
import { hears, listens, readings, says, sends } from '../../src/core/facts/sheets/parts.ts';
import type { ByHand } from './boat-from-table.ts';

type Change = NonNullable<Kit['changes']>[number];

const off = (...paths: string[]): Change[] => paths.map((path) => ({ path, how: 'seen' }));
const offOnBus = (...pgns: number[]): Change[] => off(...pgns.map((pgn) => `ports.n2k.sends.${pgn}`));
const set = (path: string, value: unknown): Change => ({
  path,
  value: JSON.parse(JSON.stringify(value)),
  how: 'manual',
});

/** The 24 V version of a unit whose typical sheet is of 12 V. */
const for24V = [set('power.dc.maxV', 32)];

/** How far it keeps from a compass by its manual. */
const compassRead = (valueM: number): Change[] => [set('compassSafe', { valueM, how: 'papers' })];

/** Her instruments and pilot heads are of a kind that takes 0.2 A at most. */
const len4 = [set('ports.n2k.len', 4), set('power.n2k.typical', 0.15), set('power.n2k.max', 0.2)];

/** One display leads the way and tells the bus of the true wind. */
const follows = offOnBus(129283, 129284, 129285, 130316);
const noWind = off('ports.n2k.sends.130306', 'ports.n2k.sends.wind-true');

/** Displays of the ship's systems lead nobody and say nothing of where she is. */
const shipDisplay = [...for24V, ...follows];

const ownPosition = [126992, 127258, 129025, 129026, 129029, 129539, 129540];

/** What the laboratory needs beside position, time, heading, depth and wind, and what the aft helm needs of the engine. */
const bridge: Change[] = [
  set(
    'ports.side-a.hears',
    hears(126992, 127250, 127251, 127258, 128267, 129025, 129026, 129029, 130306, 130312, 130313, 130314, 130316),
  ),
  set('ports.side-a.sends', sends(127488, 127489)),
  set('ports.side-b.hears', hears(127488, 127489)),
  set(
    'ports.side-b.sends',
    sends(126992, 127250, 127251, 127258, 128267, 129025, 129026, 129029, 130306, 130312, 130313, 130314, 130316),
  ),
  set('turns', [
    {
      fromPort: 'side-a',
      toPort: 'side-b',
      carries: readings(
        'position',
        'course-speed-ground',
        'time-date',
        'heading',
        'variation',
        'rate-of-turn',
        'depth',
        'wind-apparent',
        'wind-true',
        'water-temperature',
        'air-temperature',
        'pressure',
        'humidity',
      ),
    },
    { fromPort: 'side-b', toPort: 'side-a', carries: readings('engine') },
  ]),
];

const gyroConverter: Change[] = [
  set('ports.in.baud', 38_400),
  set('ports.in.hears', listens('HDT', 'ROT')),
  set('ports.n2k.sends', sends(127250, 127251)),
  set('turns', [{ fromPort: 'in', toPort: 'n2k', carries: readings('heading', 'rate-of-turn') }]),
  set('ports.out.sends', []),
];

const logConverter: Change[] = [
  set('ports.n2k.hears', hears(126992, 127250, 127258, 128267, 129025, 129026, 129029, 130306)),
  set('ports.out.sends', says(['DPT', 'HDT', 'MWV', 'RMC', 'ZDA'], 1000)),
  set('turns', [
    {
      fromPort: 'n2k',
      toPort: 'out',
      carries: readings(
        'position',
        'course-speed-ground',
        'time-date',
        'variation',
        'heading',
        'depth',
        'wind-apparent',
      ).map((carried) => ({ ...carried, loses: ['instance'] })),
    },
  ]),
];

/** The tanks behind an adapter: its three inputs in order, each with the reading and number it is. */
const tanks = (first: 'fuel-level' | 'water-level', number: number, input: string): Change =>
  set('turns', [{ fromPort: input, toPort: 'n2k', carries: [{ reading: first, asInstance: number }] }]);

/** A water sender is the typical one, set to water. */
const water: Change[] = [set('ports.signal.sends.fuel-level.reading', 'water-level')];

/** Her engines were ordered for a steel hull. */
const isolatedPoles = [set('earthing', { body: 'metal', poles: 'isolated' })];

/** Two wires to each sender; its body touches the tank and nothing else. */
const twoWires = [set('earthing', { body: 'metal', bodyTo: 'nothing', signalTo: 'nothing' })];

/** Everything else that would touch her steel stands on a pad or a sleeve: measured when she was wired anew. */
export const bonxieMounts: NonNullable<ByHand['mounts']> = {
  'ais-ant': 'isolated',
  'ais-gnss': 'isolated',
  'depth-el': 'isolated',
  'gear-senders': 'metal',
  'gnss-1': 'isolated',
  hailer: 'isolated',
  'log-el': 'isolated',
  'radar-2': 'isolated',
  'radar-x': 'isolated',
  'sat-term': 'isolated',
  'sender-fuel-day': 'metal',
  'sender-fuel-port': 'metal',
  'sender-fuel-stbd': 'metal',
  'sender-water-aft': 'metal',
  'sender-water-fore': 'metal',
  'sonar-transducer': 'isolated',
  tuner: 'isolated',
  'vhf-1-ant': 'isolated',
  'vhf-2-ant': 'isolated',
  weather: 'isolated',
  'wind-main': 'isolated',
  'wind-miz': 'isolated',
};

/** How Bonxie's units differ from their typical sheets. */
export const bonxieChanges: ByHand['changes'] = {
  // under the compass on the wheelhouse roof: read before they were ordered
  'switch-1': compassRead(0.3),
  'switch-2': compassRead(0.3),
  'shunt-r': compassRead(0.5),
  // the camera over the winch is fed by an injector in this socket
  'switch-lab': [{ path: 'ports.p6.poe', value: 'af', how: 'seen' }],
  'mfd-wh-1': offOnBus(130316),
  'mfd-wh-2': [...follows, ...noWind],
  'mfd-chart': [...for24V, ...follows],
  'mfd-aft': [...for24V, ...follows],
  'ship-er': shipDisplay,
  'ship-wh': shipDisplay,
  'ship-lab': shipDisplay,
  'ship-mess': [...for24V, ...offOnBus(129283, 129284, 129285, ...ownPosition), ...noWind],
  'radar-2': for24V,
  sonar: for24V,
  'instr-wh-1': len4,
  'instr-wh-2': len4,
  'instr-wh-3': len4,
  'instr-aft-1': len4,
  'instr-aft-2': len4,
  'instr-aft-3': len4,
  'pilot-head-wh': len4,
  'pilot-head-aft': len4,
  // One variation on the bus: that of the position antenna.
  'sat-compass': offOnBus(127258),
  // Positions come from the two antennas; the AIS keeps its own to itself.
  'ais-a': offOnBus(129025, 129026, 129029),
  // The indicator has a potentiometer of its own, so two rudder angles would meet on the bus.
  'pilot-computer': offOnBus(127245),
  'conv-gyro': gyroConverter,
  'conv-log': logConverter,
  'bridge-gw': bridge,
  // The gearbox has senders and a converter of its own, and the set has no gearbox.
  'eng-gw': offOnBus(127493),
  'gen-gw': offOnBus(127493),
  'charger-gw': offOnBus(127503, 127504, 127506, 127508, 127509),
  'inverter-gw': offOnBus(127503, 127506, 127507, 127508),
  'tank-lab': [tanks('fuel-level', 2, 'in-1')],
  'tank-fwd': [tanks('water-level', 1, 'in-3')],
  'sender-water-aft': [...water, ...twoWires],
  'sender-water-fore': [...water, ...twoWires],
  'sender-fuel-day': twoWires,
  'sender-fuel-port': twoWires,
  'sender-fuel-stbd': twoWires,
  'gear-senders': twoWires,
  'main-engine': isolatedPoles,
  genset: isolatedPoles,
  // It hangs on the mains.
  'pc-lab': off('power.dc', 'ports.dc', 'plugs.supply'),
};
