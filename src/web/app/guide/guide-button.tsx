import { type ReactNode, useMemo } from 'react';
import type { Command } from '../commands/command.ts';
import { useCommands } from '../commands/use-commands.ts';
import { words as courseWords } from '../course/words.ts';
import type { StepId } from '../route.ts';
import { openGuide, useOpenGuide } from './guide-hand.ts';
import { words } from './words.ts';

/** Where the guide begins for somebody who has no boat open yet. */
const firstPage = 'start-from-an-empty-page';

/** Opens the guide at the page of the step one is at, and shuts it again. */
export const GuideButton = ({ step }: { step: StepId | undefined }): ReactNode => {
  const isOpen = useOpenGuide() !== undefined;
  const page = step ?? firstPage;
  const says = step === undefined ? words.openSays : words.openAt(courseWords.step[step]);
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'guide', group: 'go', says, foundBy: words.foundBy, run: () => openGuide(page) },
      ],
      [says, page],
    ),
  );
  return (
    <button
      type="button"
      className="guide-button"
      aria-expanded={isOpen}
      title={says}
      onClick={() => openGuide(isOpen ? undefined : page)}
    >
      {words.guide}
    </button>
  );
};
