import type { LinkState } from '../core/proof/live/link-state.ts';

type Gone = Extract<LinkState, { kind: 'gone' }>;

const known: Readonly<Record<string, readonly [says: string, whatToDo: string]>> = {
  EADDRINUSE: ['Another program on this machine listens there already.', 'Stop that program, or choose another port.'],
  EADDRNOTAVAIL: ['This machine has no such address.', 'Give an address of this machine, or none for all of them.'],
  EACCES: [
    'This machine does not allow it.',
    'Choose a port above 1023; for a serial port or file, ask for the right to read it.',
  ],
  EPERM: ['This machine does not allow it.', 'Ask for the right to read it.'],
  ECONNREFUSED: ['Nobody listens there.', 'Check address and port, and that the gateway serves data.'],
  ENOTFOUND: ['No machine of that name is known.', 'Give its address in figures, such as 192.168.1.20.'],
  EAI_AGAIN: ['No machine of that name can be found now.', 'Give its address in figures, such as 192.168.1.20.'],
  EHOSTUNREACH: ['There is no way to that machine.', 'Check that this machine is on the boat’s network.'],
  ENETUNREACH: ['There is no way to that network.', 'Check that this machine is on the boat’s network.'],
  ETIMEDOUT: ['That machine does not answer.', 'Check that it is switched on and on the same network.'],
  ECONNRESET: ['The other side broke the connection off.', 'Check that the gateway allows one more listener.'],
  ENOENT: ['It is not there.', 'Plug it in, or check the path.'],
  EISDIR: ['This is a folder, not a file.', 'Give the file that grows.'],
};

/** Why a link is gone, in a sentence and what to do, from what the operating system says. */
export const linkRefusal = (cause: unknown): Gone => {
  const code = cause instanceof Error && 'code' in cause ? String(cause.code) : '';
  const [says, whatToDo] = known[code] ?? [
    `The link is gone${code === '' ? '' : ` (${code})`}.`,
    'Check plug, power and network; it is tried again.',
  ];
  return { kind: 'gone', says, whatToDo };
};
