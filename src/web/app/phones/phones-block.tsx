import { type ReactNode, useRef } from 'react';
import { PairedPhones } from './paired-phones.tsx';
import { PairingCode } from './pairing-code.tsx';
import './phones.css';
import { type PhonesTold, phones, usePhones } from './phones-store.ts';
import { words } from './words.ts';

/** More than a few that were turned away are no browser’s. */
const shedToTellOf = 100;

const Press = ({ says, onPress }: { says: string; onPress: () => void }): ReactNode => (
  <button type="button" className="press-link" onClick={onPress}>
    {says}
  </button>
);

/** The name of a phone that was paired while this block stood. */
const useNewcomer = (told: PhonesTold | undefined): string | undefined => {
  const known = useRef<ReadonlySet<string> | undefined>(undefined);
  const newcomer = useRef<string | undefined>(undefined);
  if (told !== undefined) {
    const found = known.current === undefined ? undefined : told.devices.find(({ id }) => !known.current?.has(id));
    if (found !== undefined) newcomer.current = found.name;
    known.current = new Set(told.devices.map(({ id }) => id));
  }
  return newcomer.current;
};

const LetIn = ({ told, codeUntilMs }: { told: PhonesTold; codeUntilMs: number }): ReactNode => {
  const { addresses, code, connections } = told;
  return (
    <>
      <p className="quiet">{words.about}</p>
      {addresses.length === 0 ? <p>{words.noNetwork}</p> : null}
      {code === undefined ? null : <PairingCode code={code.code} untilMs={codeUntilMs} addresses={addresses} />}
      {connections.turnedAway >= shedToTellOf ? <p>{words.shed(connections.turnedAway)}</p> : null}
      <div className="phones-presses">
        <Press says={code === undefined ? words.newCode : words.otherCode} onPress={() => void phones.newCode()} />
        <Press says={words.letOut} onPress={() => void phones.letIn(false)} />
      </div>
    </>
  );
};

const LetOut = (): ReactNode => (
  <>
    <p>{words.off}</p>
    <p className="quiet">{words.wifi}</p>
    <div className="phones-presses">
      <Press says={words.letIn} onPress={() => void phones.letIn(true)} />
    </div>
  </>
);

/** Phones on the boat’s wifi: let in or not, the code that pairs one, and those that are paired, each to be revoked. */
export const PhonesBlock = (): ReactNode => {
  const { told, codeUntilMs, isAway, refused } = usePhones();
  const newcomer = useNewcomer(told);
  const trouble = isAway === undefined ? refused : words[isAway];
  return (
    <section className="block phones-block">
      <h2>{words.heading}</h2>
      <p role="status">{trouble ?? (newcomer === undefined ? '' : words.cameIn(newcomer))}</p>
      {told === undefined || isAway === 'without' ? null : (
        <>
          {told.on ? <LetIn told={told} codeUntilMs={codeUntilMs} /> : <LetOut />}
          {told.on || told.devices.length > 0 ? <PairedPhones devices={told.devices} /> : null}
        </>
      )}
    </section>
  );
};
