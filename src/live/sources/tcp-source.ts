import { connect, type Socket } from 'node:net';
import { backOff } from '../back-off.ts';
import { linkRefusal } from '../link-refusal.ts';
import type { LiveSource } from '../live-source.ts';

const longestConnectMs = 5000;
const keepAliveMs = 10_000;

const hungUp = {
  kind: 'gone',
  says: 'The other side hung up.',
  whatToDo: 'Check that it is switched on; it is called again.',
} as const;

const silentOnCall = Object.assign(new Error('no answer'), { code: 'ETIMEDOUT' });

/** Calls a machine of the boat’s network that serves lines over TCP, and calls again where it hangs up. It sends nothing. */
export const tcpSource = ({ host, port }: { host: string; port: number }): LiveSource => {
  const retry = backOff();
  let socket: Socket | undefined;
  let isStopped = false;
  return {
    says: `TCP ${host.includes(':') ? `[${host}]` : host}:${port}`,
    start(onBytes, onLink) {
      const call = (): void => {
        let trouble: Error | undefined;
        const made = connect({ host, port });
        socket = made;
        made.setTimeout(longestConnectMs, () => made.destroy(silentOnCall));
        made.on('connect', () => {
          // a line may be silent for as long as it likes; that the machine is there is asked below it
          made.setTimeout(0).setKeepAlive(true, keepAliveMs);
          onLink({ kind: 'open' });
        });
        made.on('data', (bytes) => {
          retry.reset();
          onBytes(bytes);
        });
        made.on('error', (cause) => {
          trouble = cause;
        });
        made.on('close', () => {
          if (isStopped) return;
          onLink(trouble === undefined ? hungUp : linkRefusal(trouble));
          retry.again(call);
        });
      };
      call();
    },
    stop: () => {
      isStopped = true;
      retry.stop();
      socket?.removeAllListeners('data').destroy();
      return Promise.resolve();
    },
  };
};
