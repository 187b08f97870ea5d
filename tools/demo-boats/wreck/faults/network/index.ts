import type { Fault } from '../../fault.ts';
import { networkLanguagesSideBySide } from './languages-side-by-side.ts';
import { networkLinkTooLong } from './link-too-long.ts';
import { networkPicturesOverWifi } from './pictures-over-wifi.ts';
import { networkSocketWithoutPower } from './socket-without-power.ts';
import { networkSocketsOverloaded } from './sockets-overloaded.ts';
import { networkSwitchElsewhere } from './switch-elsewhere.ts';
import { networkTwoCablesInOneSocket } from './two-cables-in-one-socket.ts';

/** The faults of this area, one a rule. */
export const networkFaults: readonly Fault[] = [
  networkLanguagesSideBySide,
  networkLinkTooLong,
  networkPicturesOverWifi,
  networkSocketWithoutPower,
  networkSocketsOverloaded,
  networkSwitchElsewhere,
  networkTwoCablesInOneSocket,
];
