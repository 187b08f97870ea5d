import type { Found } from './check.ts';
import { sendersOf } from './find-messages.ts';
import { unitOfPort } from './planned-sends.ts';
import type { MessageState, ProofMessage } from './proof-report.ts';
import { bytesOf, lastOf, unitName } from './say.ts';
import type { Seen } from './seen.ts';

/** What can be shown of a planned message as it came. */
const shown = (seen: Seen, { on, port, message, state }: ProofMessage): Pick<Found, 'atS' | 'bytes'> => {
  const bus = seen.buses.find(({ id }) => id === on);
  if (bus !== undefined && typeof message === 'number') {
    const [evidence] = sendersOf(bus, unitOfPort(port)).flatMap((sender) => bus.evidenceOf(sender, message));
    if (evidence === undefined || state !== 'empty') return lastOf(evidence);
    return bytesOf(message, evidence.lastEmpty);
  }
  const record = seen.lines
    .find(({ id }) => id === on)
    ?.watched.line.records()
    .find(({ formatter }) => formatter === message);
  return bytesOf(message, state === 'empty' ? record?.lastEmpty : record?.last);
};

interface Words {
  readonly says: (message: ProofMessage, unit: string) => string;
  readonly cure: string;
}

/** Findings for every planned message in one state, of units that were heard at all. */
export const messageFindings = (seen: Seen, state: MessageState, { says, cure }: Words): Found[] => {
  const heard = new Set(
    seen.units
      .filter((unit) => unit.state !== 'silent' && unit.state !== 'not-due')
      .map(({ unit, on }) => `${unit} ${on}`),
  );
  return seen.messages
    .filter((one) => one.state === state && heard.has(`${unitOfPort(one.port)} ${one.on}`))
    .map((one) => {
      const unit = unitName(seen.planned, unitOfPort(one.port));
      return {
        about: [one.port],
        apart: one.message,
        says: says(one, unit),
        device: unit,
        message: one.message,
        ...shown(seen, one),
        cure,
      };
    });
};
