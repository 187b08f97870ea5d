import type { ReactNode } from 'react';
import type { Hears, Port } from '../../../../../core/boat/sheet.ts';
import { messageWords } from '../../../../../papers/kit/message-words.ts';
import { DescribedFields, type FieldOf } from '../../../forms/described.tsx';
import { words } from './words.ts';

type Wants = NonNullable<Hears['wants']>;

const line: FieldOf<Port> = { key: 'line', label: words.lineKind, ask: 'choice', choices: words.lineKinds };
const isolated: FieldOf<Port> = { key: 'isolated', label: words.isolated, ask: 'whether' };
const poe: FieldOf<Port> = { key: 'poe', label: words.poe, ask: 'choice', choices: words.poes };
const dialect: FieldOf<Port> = {
  key: 'dialect',
  label: words.dialect,
  ask: 'text',
  longest: 30,
  hint: 'maker-a/2',
};

const electricFields = ({ protocol }: Port): readonly FieldOf<Port>[] => {
  if (protocol === 'nmea0183' || protocol === 'modbus') return [line, isolated, dialect];
  return protocol === 'ethernet' ? [poe, dialect] : [isolated, dialect];
};

/** What of a port is electric, and the maker’s own language it speaks. */
export const ElectricFields = ({ port, onPort }: { port: Port; onPort: (port: Port) => void }): ReactNode => (
  <DescribedFields of={port} fields={electricFields(port)} onOf={onPort} />
);

const wantsFields: readonly FieldOf<Wants>[] = [
  { key: 'everyMs', label: words.wantsEvery, ask: 'number', step: 1 },
  { key: 'reference', label: words.wantsReference, ask: 'choice', choices: words.references },
  { key: 'withOffset', label: words.wantsOffset, ask: 'whether' },
];

const numberField: readonly FieldOf<Hears>[] = [{ key: 'instance', label: words.instance, ask: 'number', step: 1 }];

/** Which number a message is of, and how whoever hears it wants it. */
export const MessageMore = ({
  message,
  isHeard,
  onMessage,
}: {
  message: Hears;
  isHeard: boolean;
  onMessage: (message: Hears) => void;
}): ReactNode => (
  <details className="sheet-more">
    <summary aria-label={words.moreOf(messageWords(message))}>{words.more}</summary>
    <div className="form-fields">
      <DescribedFields of={message} fields={numberField} onOf={onMessage} />
      {isHeard ? (
        <DescribedFields<Wants>
          of={message.wants ?? {}}
          fields={wantsFields}
          onOf={(wants) => onMessage({ ...message, wants })}
        />
      ) : null}
    </div>
  </details>
);
