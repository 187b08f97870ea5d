import { type KeyboardEvent, type ReactNode, useEffect, useId, useRef, useState } from 'react';
import type { Command } from './command.ts';
import { foundCommands } from './found-commands.ts';
import { useAllCommands } from './use-commands.ts';
import { words } from './words.ts';
import './command-finder.css';

/** The next line by a key: up and down go round, Home and End to the ends. */
const nextLine = (key: string, at: number, count: number): number | undefined => {
  switch (key) {
    case 'ArrowDown':
      return (at + 1) % count;
    case 'ArrowUp':
      return (at + count - 1) % count;
    default:
      return undefined;
  }
};

const Line = ({
  command,
  id,
  isHere,
  onDo,
}: {
  command: Command;
  id: string;
  isHere: boolean;
  onDo: () => void;
}): ReactNode => (
  // biome-ignore lint/a11y/useKeyWithClickEvents: the keyboard does it from the field above
  <div
    id={id}
    role="option"
    // the field keeps the keyboard and names the line it is at
    tabIndex={-1}
    aria-selected={isHere}
    aria-disabled={command.whyNot !== undefined}
    className={isHere ? 'here' : undefined}
    onClick={onDo}
  >
    <span>
      {command.says}
      {command.whyNot === undefined ? null : <span className="quiet">{words.notNow(command.whyNot)}</span>}
    </span>
    {command.keys?.[0] === undefined ? null : <kbd>{command.keys[0]}</kbd>}
  </div>
);

/** All that can be done here, with a field to type in; Enter does the line one is at, Escape shuts it. */
export const CommandFinder = ({ onClose }: { onClose: () => void }): ReactNode => {
  const [text, setText] = useState('');
  const [at, setAt] = useState(0);
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const found = foundCommands(useAllCommands(), text);
  const here = found[Math.min(at, found.length - 1)];
  const lineId = (command: Command): string => `${id}-${command.id}`;
  useEffect(() => field.current?.focus(), []);
  useEffect(() => {
    if (here !== undefined) document.getElementById(`${id}-${here.id}`)?.scrollIntoView({ block: 'nearest' });
  }, [here, id]);
  const does = (command: Command | undefined): void => {
    if (command === undefined || command.whyNot !== undefined) return;
    onClose();
    command.run();
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const next = nextLine(event.key, at, Math.max(1, found.length));
    if (next !== undefined) setAt(next);
    else if (event.key === 'Enter') does(here);
    else if (event.key === 'Escape') onClose();
    else return;
    event.preventDefault();
  };
  return (
    <search className="command-finder" aria-label={words.finder} onKeyDown={onKeyDown}>
      <input
        ref={field}
        role="combobox"
        aria-expanded="true"
        aria-controls={id}
        aria-autocomplete="list"
        aria-label={words.typeHere}
        placeholder={words.typeHere}
        autoComplete="off"
        spellCheck={false}
        {...(here === undefined ? {} : { 'aria-activedescendant': lineId(here) })}
        value={text}
        onChange={(event) => {
          setText(event.target.value);
          setAt(0);
        }}
        onBlur={(event) => {
          if (event.relatedTarget !== null) onClose();
        }}
      />
      {found.length === 0 ? <p className="quiet">{words.nothingFound}</p> : null}
      <div
        id={id}
        role="listbox"
        tabIndex={-1}
        aria-label={words.finder}
        // a press on a line leaves the keyboard in the field
        onMouseDown={(event) => event.preventDefault()}
      >
        {found.map((command) => (
          <Line
            key={command.id}
            command={command}
            id={lineId(command)}
            isHere={command === here}
            onDo={() => does(command)}
          />
        ))}
      </div>
    </search>
  );
};
