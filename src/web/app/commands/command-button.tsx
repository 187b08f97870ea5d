import type { ReactNode } from 'react';
import { useAllCommands } from './use-commands.ts';

/** The button of a command that is offered now; none where it is not. */
export const CommandButton = ({ id, className = 'step-button' }: { id: string; className?: string }): ReactNode => {
  const command = useAllCommands().find((one) => one.id === id);
  if (command === undefined) return null;
  const { says, short = says, whyNot, run } = command;
  return (
    // not `disabled`: the button would drop the keyboard when it can no longer be pressed
    <button
      type="button"
      className={className}
      aria-disabled={whyNot !== undefined}
      aria-label={whyNot === undefined ? says : `${short}: ${whyNot}`}
      title={whyNot ?? says}
      onClick={() => {
        if (whyNot === undefined) run();
      }}
    >
      {short}
    </button>
  );
};
