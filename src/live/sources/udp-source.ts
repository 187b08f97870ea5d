import { createSocket, type Socket } from 'node:dgram';
import { backOff } from '../back-off.ts';
import { linkRefusal } from '../link-refusal.ts';
import type { LiveSource } from '../live-source.ts';

/** The port on which instruments are usually sent (registered for this with IANA). */
export const usualUdpPort = 10_110;

const lineFeed = 10;

/** A datagram holds whole lines; many senders leave the end of its last line out. */
const whole = (bytes: Uint8Array): Uint8Array =>
  bytes.at(-1) === lineFeed ? bytes : Uint8Array.from([...bytes, lineFeed]);

/** Hears what is sent to a UDP port, to this machine or to everyone. */
export const udpSource = ({ port, address }: { port: number; address?: string | undefined }): LiveSource => {
  const retry = backOff();
  let socket: Socket | undefined;
  return {
    says: `UDP port ${port}${address === undefined ? '' : ` of ${address}`}`,
    start(onBytes, onLink) {
      const open = (): void => {
        const made = createSocket({ type: address?.includes(':') === true ? 'udp6' : 'udp4', reuseAddr: true });
        socket = made;
        made.on('message', (bytes) => onBytes(whole(bytes)));
        made.on('error', (cause) => {
          made.close();
          socket = undefined;
          onLink(linkRefusal(cause));
          retry.again(open);
        });
        made.bind(port, address, () => {
          retry.reset();
          onLink({ kind: 'open' });
        });
      };
      open();
    },
    stop: () =>
      new Promise((done) => {
        retry.stop();
        if (socket === undefined) done();
        else socket.removeAllListeners('message').close(() => done());
        socket = undefined;
      }),
  };
};
