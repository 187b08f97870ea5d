import { stat } from 'node:fs/promises';
import { byCodeUnit } from '../../core/boat/ids.ts';

/** A serial port that is open for reading. */
export interface SerialPortHold {
  onBytes(take: (bytes: Uint8Array) => void): void;
  /** told once when the port is gone; without a cause it was unplugged */
  onClose(take: (cause: Error | undefined) => void): void;
  setBaud(baud: number): Promise<void>;
  close(): Promise<void>;
}

/** The library that reads serial ports is installed only where its machine code runs. */
export class NoSerialLibrary extends Error {}

const library = async () => {
  try {
    return await import('serialport');
  } catch (cause) {
    throw new NoSerialLibrary('serialport', { cause });
  }
};

/** Whether serial ports can be read on this machine at all. */
export const hasSerialLibrary = (): Promise<boolean> =>
  library().then(
    () => true,
    () => false,
  );

type Opened = Error | null | undefined;

/** The library says in a sentence what the system said by a code. */
const codedError = (error: Error): Error => {
  const text = error.message.toLowerCase();
  const code = [
    ['no such file', 'ENOENT'],
    ['permission denied', 'EACCES'],
    ['access denied', 'EACCES'],
    ['cannot lock', 'EADDRINUSE'],
    ['resource busy', 'EADDRINUSE'],
  ].find(([words = '']) => text.includes(words))?.[1];
  return code === undefined ? error : Object.assign(error, { code });
};

const settled = (act: (done: (error: Opened) => void) => void): Promise<void> =>
  new Promise((done, fail) => act((error) => (error == null ? done() : fail(codedError(error)))));

const lookMs = 500;

/**
 * Tells once when the file of a port is gone. A line of Linux that is hung up reads as empty for ever, so the library does
 * not always notice that an adapter was pulled. Where ports are no files nothing is told.
 */
const watchPath = (path: string, onGone: () => void): (() => void) => {
  let first: number | undefined;
  let timer: NodeJS.Timeout | undefined;
  let isOver = false;
  const look = async (): Promise<void> => {
    const now = await stat(path).then(
      ({ ino }) => ino,
      () => undefined,
    );
    if (isOver) return;
    first ??= now;
    if (first !== undefined && now !== first) onGone();
    else timer = setTimeout(() => void look(), lookMs);
  };
  void look();
  return () => {
    isOver = true;
    clearTimeout(timer);
  };
};

/** Opens a serial port for reading, 8 data bits, no parity, 1 stop bit, as all talkers of a boat use (raymond-nmea). */
export const openSerialPort = async ({ path, baud }: { path: string; baud: number }): Promise<SerialPortHold> => {
  const { SerialPort } = await library();
  const port = new SerialPort({ path, baudRate: baud, autoOpen: false });
  await settled((done) => port.open(done));
  port.on('error', () => undefined);
  const close = (): Promise<void> => (port.isOpen ? settled((done) => port.close(done)) : Promise.resolve());
  // unplugged: the library's own close tells it, like any other
  const endWatch = watchPath(path, () => void close().catch(() => undefined));
  port.once('close', endWatch);
  return {
    onBytes: (take) => void port.on('data', (bytes: Buffer) => take(bytes)),
    onClose: (take) =>
      void port.once('close', (error: (Error & { disconnected?: boolean }) | null | undefined) =>
        take(error == null || error.disconnected === true ? undefined : codedError(error)),
      ),
    setBaud: (rate) => settled((done) => port.update({ baudRate: rate }, done)),
    close,
  };
};

/** The paths of the serial ports of this machine, for a person to choose from; none where they cannot be listed. */
export const serialPorts = async (): Promise<readonly string[]> => {
  try {
    const { SerialPort } = await library();
    return (await SerialPort.list()).map(({ path }) => path).sort(byCodeUnit);
  } catch {
    return [];
  }
};
