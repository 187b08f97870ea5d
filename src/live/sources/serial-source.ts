import { startBaudSearch } from '../../core/proof/live/baud-search.ts';
import type { LinkState } from '../../core/proof/live/link-state.ts';
import { startLiveLines } from '../../core/proof/live/live-lines.ts';
import { backOff } from '../back-off.ts';
import { linkRefusal } from '../link-refusal.ts';
import type { LiveSource } from '../live-source.ts';
import { NoSerialLibrary, openSerialPort, type SerialPortHold } from './serial-port.ts';

/** What is said where serial ports cannot be read. */
export const noLibrary = {
  says: 'The library that reads serial ports is not installed here.',
  whatToDo: 'Install it beside Fairlead with: npm install serialport@13.0.0',
} as const;

const unplugged: LinkState = {
  kind: 'gone',
  says: 'The adapter was unplugged.',
  whatToDo: 'Plug it in again.',
};

/** Counts the bytes of a piece that end lines which can be read. */
const wholeBytes = (): ((bytes: Uint8Array) => number) => {
  let whole = 0;
  const lines = startLiveLines({
    onLine: ({ kind, bytes }) => {
      if (kind === 'whole' || kind === 'comment') whole += bytes;
    },
  });
  return (bytes) => {
    whole = 0;
    lines.push(bytes);
    return whole;
  };
};

/**
 * Hears a serial port, such as a USB adapter. Without a speed the usual ones are tried in turn until lines come whole. It is
 * only read: nothing is written to it.
 */
export const serialSource = ({
  path,
  baud,
  open = openSerialPort,
}: {
  path: string;
  baud?: number | undefined;
  open?: typeof openSerialPort;
}): LiveSource => {
  const retry = backOff();
  let port: SerialPortHold | undefined;
  let isStopped = false;

  const listen = async (onBytes: (bytes: Uint8Array) => void, onLink: (link: LinkState) => void): Promise<void> => {
    const search = startBaudSearch(baud);
    const wholeIn = wholeBytes();
    const lost = (link: LinkState): void => {
      if (isStopped || port === undefined) return;
      port = undefined;
      onLink(link);
      retry.again(() => void begin(onBytes, onLink));
    };
    const opened = await open({ path, baud: search.baud() });
    if (isStopped) return opened.close();
    port = opened;
    retry.reset();
    onLink({ kind: 'open', baud: search.baud() });
    opened.onClose((cause) => lost(cause === undefined ? unplugged : linkRefusal(cause)));
    opened.onBytes((bytes) => {
      onBytes(bytes);
      const next = search.heard({ came: bytes.length, whole: wholeIn(bytes), nowMs: performance.now() });
      if (next === undefined) return;
      opened.setBaud(next).then(
        () => isStopped || onLink({ kind: 'open', baud: next }),
        (cause: unknown) => lost(linkRefusal(cause)),
      );
    });
  };

  const begin = async (onBytes: (bytes: Uint8Array) => void, onLink: (link: LinkState) => void): Promise<void> => {
    try {
      await listen(onBytes, onLink);
    } catch (cause) {
      if (isStopped) return;
      onLink(cause instanceof NoSerialLibrary ? { kind: 'gone', ...noLibrary } : linkRefusal(cause));
      // a library does not come by waiting
      if (!(cause instanceof NoSerialLibrary)) retry.again(() => void begin(onBytes, onLink));
    }
  };

  return {
    says: `serial port ${path}`,
    start: (onBytes, onLink) => void begin(onBytes, onLink),
    stop: async () => {
      isStopped = true;
      retry.stop();
      await port?.close();
      port = undefined;
    },
  };
};
