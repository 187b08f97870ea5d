import type { ReactNode } from 'react';
import type { Hears, Plug, Port, Protocol, Sends } from '../../../../../core/boat/sheet.ts';
import { type ReadingId, readingIds } from '../../../../../core/facts/reading-ids.ts';
import { readingWords } from '../../../../../core/facts/reading-words.ts';
import { languageWords } from '../../../../../papers/cards/language-words.ts';
import { messageWords } from '../../../../../papers/kit/message-words.ts';
import { ChoiceField, NumberField } from '../../../forms/fields.tsx';
import { PasteBox } from './paste-box.tsx';
import { ElectricFields, MessageMore } from './port-more.tsx';
import { words } from './words.ts';

// reason: the keys of a table of every protocol are protocols
const protocols = Object.keys(languageWords) as Protocol[];
const roles = ['both', 'talk', 'listen'] as const;
/** Ports that carry messages by number or by letters. */
const withMessages: ReadonlySet<Protocol> = new Set(['nmea2000', 'nmea0183', 'ethernet', 'usb', 'wifi']);

/** What of a port may be not known. */
type Unsure = { readonly [Key in 'len' | 'baud' | 'onPlug' | 'sends' | 'hears']?: Port[Key] | undefined };

/** A port with something else said of it; what is not known stands nowhere. */
const withSaid = (port: Port, said: Unsure): Port => {
  const { len, baud, onPlug, sends, hears, ...rest } = { ...port, ...said };
  return {
    ...rest,
    ...(onPlug === undefined ? {} : { onPlug }),
    ...(len === undefined ? {} : { len }),
    ...(baud === undefined ? {} : { baud }),
    ...(sends === undefined || sends.length === 0 ? {} : { sends }),
    ...(hears === undefined || hears.length === 0 ? {} : { hears }),
  };
};

/** What is sent and what is heard are listed in the same way. */
type Message = Sends & Hears;

const withEvery = ({ everyMs: _, ...sent }: Message, everyMs: number | undefined): Message =>
  everyMs === undefined || everyMs <= 0 ? sent : { ...sent, everyMs };

const MessageList = ({
  heading,
  list,
  onList,
  withRates = false,
}: {
  heading: string;
  list: readonly Message[];
  onList: (list: Message[]) => void;
  withRates?: boolean;
}): ReactNode => (
  <div className="sheet-messages">
    <h4>{heading}</h4>
    {list.length === 0 ? <p className="quiet">{words.nothing}</p> : null}
    <ul>
      {list.map((message, at) => {
        const said = messageWords(message);
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: the number that tells two of one message apart is typed here
          <li key={`${at} ${said}`}>
            <span>{said}</span>
            {withRates ? (
              <input
                type="number"
                min={1}
                aria-label={words.everyOf(said)}
                placeholder={words.everyMs}
                value={message.everyMs ?? ''}
                onChange={({ target }) =>
                  onList(
                    list.map((one, index) =>
                      index === at ? withEvery(one, target.value === '' ? undefined : Number(target.value)) : one,
                    ),
                  )
                }
              />
            ) : null}
            <MessageMore
              message={message}
              isHeard={!withRates}
              onMessage={(next) => onList(list.map((one, index) => (index === at ? next : one)))}
            />
            <button
              type="button"
              className="press-link"
              aria-label={words.leaveOut(said)}
              onClick={() => onList(list.filter((_, index) => index !== at))}
            >
              ×
            </button>
          </li>
        );
      })}
    </ul>
  </div>
);

const AddReading = ({ port, onPort }: { port: Port; onPort: (port: Port) => void }): ReactNode => {
  const add = (reading: ReadingId): void => {
    const key = port.role === 'talk' ? 'sends' : 'hears';
    const list = port[key] ?? [];
    if (!list.some((one) => one.reading === reading)) onPort({ ...port, [key]: [...list, { reading }] });
  };
  return (
    <ChoiceField<ReadingId>
      label={words.addReading}
      value={undefined}
      choices={readingIds.map((reading) => [reading, readingWords[reading]] as const)}
      onValue={add}
    />
  );
};

/** One port of a sheet: its language, its way, its plug, and what it says and hears. */
export const PortFields = ({
  port,
  plugs,
  onPort,
  onTakeOut,
}: {
  port: Port;
  plugs: readonly Plug[];
  onPort: (port: Port) => void;
  onTakeOut: () => void;
}): ReactNode => (
  <details className="form-part">
    <summary>
      {words.port(port.id)} <span className="row-fact">{languageWords[port.protocol]}</span>
    </summary>
    <div className="form-fields">
      <ChoiceField
        label={words.language}
        value={port.protocol}
        choices={protocols.map((one) => [one, languageWords[one]] as const)}
        onValue={(protocol) => onPort({ ...port, protocol })}
      />
      <ChoiceField
        label={words.way}
        value={port.role}
        choices={roles.map((role) => [role, words.ways[role]] as const)}
        onValue={(role) => onPort({ ...port, role })}
      />
      <ChoiceField
        label={words.plug}
        value={port.onPlug ?? '-'}
        choices={[['-', words.noPlug] as const, ...plugs.map(({ id }) => [id, id] as const)]}
        onValue={(plug) => onPort(withSaid(port, { onPlug: plug === '-' ? undefined : plug }))}
      />
      {port.protocol === 'nmea2000' ? (
        <NumberField label={words.len} step={1} value={port.len} onValue={(len) => onPort(withSaid(port, { len }))} />
      ) : null}
      {port.protocol === 'nmea0183' ? (
        <NumberField
          label={words.baud}
          step={1}
          value={port.baud}
          onValue={(baud) => onPort(withSaid(port, { baud }))}
        />
      ) : null}
      {port.protocol === 'dc' ? null : <ElectricFields port={port} onPort={onPort} />}
    </div>
    {port.protocol === 'dc' ? null : (
      <>
        {port.role === 'listen' ? null : (
          <MessageList
            heading={words.sends}
            list={port.sends ?? []}
            withRates
            onList={(sends) => onPort(withSaid(port, { sends }))}
          />
        )}
        {port.role === 'talk' ? null : (
          <MessageList
            heading={words.hears}
            list={port.hears ?? []}
            onList={(hears) => onPort(withSaid(port, { hears }))}
          />
        )}
        {withMessages.has(port.protocol) ? <PasteBox port={port} onPort={onPort} /> : null}
        {port.protocol === 'nmea2000' || port.protocol === 'nmea0183' ? null : (
          <AddReading port={port} onPort={onPort} />
        )}
      </>
    )}
    <button type="button" className="press-link" onClick={onTakeOut}>
      {words.takeOutPort}
    </button>
  </details>
);
