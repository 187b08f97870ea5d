import type { Hears, Power, Sends, Sheet } from '../../boat/sheet.ts';
import { hears, readings, sends } from './parts.ts';

/** Where the figures of a display come from. */
export const displaySources = [
  'practice-lighting',
  'maker-loads',
  'practice-sent-messages',
  'practice-display-envelope',
] as const;

/** A display draws the same watts at any voltage: brightness decides, so typical lies far below the most. */
export const displayPower = (load: { typicalW: number; maxW: number; fuseA: number; maxV?: number }): Power => ({
  port: 'dc',
  typical: load.typicalW,
  max: load.maxW,
  unit: 'W',
  behaves: 'power',
  minV: 10,
  maxV: load.maxV ?? 16,
  fuseA: load.fuseA,
});

/** Messages a multifunction display understands. */
export const shown: Hears[] = hears(
  126983,
  126985,
  126992,
  127233,
  127237,
  127245,
  127250,
  127251,
  127257,
  127258,
  127488,
  127489,
  127493,
  127497,
  127501,
  127503,
  127504,
  127505,
  127506,
  127507,
  127508,
  128259,
  128267,
  128275,
  129025,
  129026,
  129029,
  129038,
  129039,
  129040,
  129041,
  129283,
  129284,
  129285,
  129291,
  129539,
  129540,
  129794,
  129808,
  129809,
  129810,
  130306,
  130310,
  130311,
  130312,
  130313,
  130314,
  130316,
  130577,
);

/** What a display that leads the way sends: route, alarms, man overboard. */
export const routeAndAlarms: Sends[] = sends(126983, 126985, 127233, 129283, 129284, 129285);

/** What displays show from the network. */
export const network: Hears[] = readings(
  'radar-picture',
  'radar-targets',
  'sonar-picture',
  'camera',
  'chart-share',
  'route',
  'depth',
  'water-temperature',
  'position',
  'course-speed-ground',
  'time-date',
);

/** The temperature of a sounder on the network reaches the instruments on the bus through one display. */
export const temperatureToBus: NonNullable<Sheet['turns']> = [
  { fromPort: 'eth', toPort: 'n2k', carries: readings('water-temperature') },
];

/** A display that works out true wind and tells the bus: the message alone would leave open which wind it is. */
export const workedOutWind: Sends[] = [...sends(130306), { reading: 'wind-true' }];
