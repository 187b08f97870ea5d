import type { ReactNode } from 'react';
import type { PortTalk } from '../../../papers/cards/unit-talk.ts';
import { useExplained } from '../words/explained.tsx';
import { words } from './words.ts';

/** So many messages are read at a glance; more are folded away. */
const openMessages = 6;

const MessageList = ({ talk }: { talk: PortTalk }): ReactNode => {
  const told = useExplained(talk.messages.flatMap(({ what, code = '', how }) => [what, code, how]));
  return (
    <ul className="messages">
      {talk.messages.map(({ code, how, what }, at) => (
        <li key={`${code ?? what} ${how}`}>
          {told[3 * at]}
          {code === undefined ? null : <span className="message-code"> {told[3 * at + 1]}</span>}
          {how === '' ? null : <span className="quiet">, {told[3 * at + 2]}</span>}
        </li>
      ))}
    </ul>
  );
};

const PortView = ({ talk }: { talk: PortTalk }): ReactNode => {
  const [language] = useExplained([talk.language]);
  const { port, messages } = talk;
  if (messages.length <= openMessages) {
    return (
      <>
        <p className="talk-port">
          {language}
          {words.port(port)}
        </p>
        <MessageList talk={talk} />
      </>
    );
  }
  return (
    <details className="talk-more">
      <summary>{words.portMessages(talk.language, port, messages.length)}</summary>
      <MessageList talk={talk} />
    </details>
  );
};

/** What a unit says or hears, port by port. */
export const TalkView = ({ talks, empty }: { talks: readonly PortTalk[]; empty: string }): ReactNode =>
  talks.length === 0 ? <p className="quiet">{empty}</p> : talks.map((talk) => <PortView key={talk.port} talk={talk} />);
