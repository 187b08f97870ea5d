import type { Boat } from '../../core/boat/boat-schema.ts';
import type { EditCall } from '../../core/boat/history.ts';
import { UserError } from '../../core/boat/user-error.ts';
import type { Cure, Finding } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { picturesBeside } from '../../node/pictures-beside.ts';
import { cureWords, currencyOf } from '../../papers/lists/cure-words.ts';
import { changeBoatFile } from '../change-boat-file.ts';
import { findingOf } from '../finding-of.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';

const width = 80;

const cureLines = (boat: Boat, { says, cure, cures = [] }: Finding): string[] => [
  ...textLines(says, { width, lead: '' }),
  ...(cures.length === 0 ? textLines(cure ?? 'Nothing is known that would mend it.', { width, lead: '   ' }) : []),
  ...cures.flatMap((own, at) => textLines(cureWords(own, currencyOf(boat)), { width, lead: `${at + 1}  ` })),
];

const cureOf = ({ cures = [] }: Finding, number: number): Cure => {
  const cure = cures[number - 1];
  if (cure !== undefined && cure.edits.length > 0) return cure;
  throw new UserError({
    says:
      cure === undefined
        ? `This finding has no cure ${number} that could be put into the boat file.`
        : 'This cure is for a person to do; it changes nothing in the boat file.',
    whatToDo: 'Without a number all its cures are listed.',
  });
};

/** `fairlead cure FILE FINDING [NUMBER]`: the cures of one finding, or one of them put into the boat file as one step. */
export const cure = async (file: string, id: string, number: number | undefined): Promise<void> => {
  const read = await loadBoat(file);
  const { findings } = await solveAtTerminal(read.boat, await picturesBeside(file));
  const finding = findingOf(findings, id);
  if (number === undefined) {
    process.stdout.write(`${cureLines(read.boat, finding).join('\n')}\n`);
    if ((finding.cures ?? []).some(({ edits }) => edits.length > 0))
      process.stderr.write(`To take the first: fairlead cure ${file} '${id}' 1\n`);
    return;
  }
  const taken = cureOf(finding, number);
  // reason: a cure names edits by their ids, and every edit checks its parameters before it is made
  await changeBoatFile(file, read, taken.edits as readonly EditCall[]);
  process.stdout.write(`${textLines(`${taken.says} It is in ${file}.`, { width, lead: '' }).join('\n')}\n`);
  process.stderr.write(`Next: fairlead check ${file}\n`);
};
