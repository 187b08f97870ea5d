import { type Command, commandGroups } from './command.ts';

const wordsOf = (text: string): string[] => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

/** How well a command fits what was typed: every word must begin one of its words; those it says count for more. */
const worthOf = ({ says, foundBy = [] }: Command, asked: readonly string[]): number => {
  const [said, other] = [wordsOf(says), foundBy.flatMap(wordsOf)];
  let sum = 0;
  for (const word of asked) {
    const at = said.findIndex((one) => one.startsWith(word));
    if (at >= 0) sum += at === 0 ? 3 : 2;
    else if (other.some((one) => one.startsWith(word))) sum += 1;
    else return 0;
  }
  return sum;
};

/** The commands that fit what was typed, the best first; all of them, by group, while nothing is. */
export const foundCommands = (commands: readonly Command[], text: string): readonly Command[] => {
  const asked = wordsOf(text);
  if (asked.length === 0) {
    return [...commands].sort((a, b) => commandGroups.indexOf(a.group) - commandGroups.indexOf(b.group));
  }
  return commands
    .map((command) => ({ command, worth: worthOf(command, asked) }))
    .filter(({ worth }) => worth > 0)
    .sort((a, b) => b.worth - a.worth)
    .map(({ command }) => command);
};
