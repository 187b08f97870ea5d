import { type ReactNode, useRef } from 'react';
import { CommandButton } from './commands/command-button.tsx';
import { FinderButton } from './commands/finder-button.tsx';
import { GuideButton } from './guide/guide-button.tsx';
import type { StepId } from './route.ts';
import { type Light, lights, setLight, useLight } from './theme.ts';
import { unitsChoice, useWords } from './words/units.ts';
import { words } from './words.ts';

const UnitsButtons = (): ReactNode => {
  const now = unitsChoice.use();
  return (
    <fieldset className="lights units-choice">
      <legend className="unseen">{words.unitsOfLength}</legend>
      {unitsChoice.values.map((units) => (
        <button key={units} type="button" aria-pressed={units === now} onClick={() => unitsChoice.choose(units)}>
          {words.units[units]}
        </button>
      ))}
    </fieldset>
  );
};

const LightButtons = (): ReactNode => {
  const now = useLight();
  return (
    <fieldset className="lights">
      <legend className="unseen">{words.lightOfScreen}</legend>
      {lights.map((light: Light) => (
        <button key={light} type="button" aria-pressed={light === now} onClick={() => setLight(light)}>
          {words.light[light]}
        </button>
      ))}
    </fieldset>
  );
};

/** Opens a boat file from this machine; it is read in the page and goes nowhere. */
export const OpenFile = ({ onFile, children }: { onFile: (file: File) => void; children: ReactNode }): ReactNode => {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" className="open-button" onClick={() => input.current?.click()}>
        {children}
      </button>
      <input
        ref={input}
        type="file"
        accept=".json,application/json,.zip,.log,.txt,.csv,.candump,.pcap,.pcapng,.gz"
        hidden
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          if (file !== undefined) onFile(file);
          event.target.value = '';
        }}
      />
    </>
  );
};

/** The line along the top: which boat, what it is, and the few things that hold for every page. */
export const TopBar = ({
  name,
  says,
  step,
  isHome,
  tools,
  onFile,
}: {
  name?: string;
  says?: string;
  /** the step one is at; absent on the list of boats */
  step: StepId | undefined;
  /** true on the list of boats, which needs no link to itself */
  isHome: boolean;
  /** what can be done with the boat that is open */
  tools?: ReactNode;
  onFile: (file: File) => void;
}): ReactNode => {
  const say = useWords();
  return (
    <header className="top-bar">
      <h1 tabIndex={-1}>{name ?? words.program}</h1>
      <p className="top-says">{say(says ?? words.whatItIs)}</p>
      <div className="top-tools">
        {tools}
        <FinderButton />
        <GuideButton step={step} />
        {isHome ? null : <a href="#/">{words.allBoats}</a>}
        <OpenFile onFile={onFile}>{words.openFile}</OpenFile>
        <CommandButton id="print" className="print-button" />
        <UnitsButtons />
        <LightButtons />
      </div>
    </header>
  );
};
