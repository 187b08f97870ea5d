import type { Rule } from '../rule.ts';
import { languagesSideBySide } from './languages-side-by-side.ts';
import { linkTooLong } from './link-too-long.ts';
import { picturesOverWifi } from './pictures-over-wifi.ts';
import { socketWithoutPower } from './socket-without-power.ts';
import { socketsOverloaded } from './sockets-overloaded.ts';
import { switchElsewhere } from './switch-elsewhere.ts';
import { twoCablesInOneSocket } from './two-cables-in-one-socket.ts';

/** The rules of this area. */
export const networkRules: readonly Rule[] = [
  languagesSideBySide,
  linkTooLong,
  picturesOverWifi,
  socketWithoutPower,
  socketsOverloaded,
  switchElsewhere,
  twoCablesInOneSocket,
];
