import type { Command } from 'commander';
import { dock } from './commands/dock.ts';
import { tick } from './commands/tick.ts';
import { work } from './commands/work.ts';
import { countNumber } from './count-number.ts';

/** What is typed while the work is done: the jobs, ticks, tests at the dock. */
export const commandsAboard = (commandLine: Command): void => {
  commandLine
    .command('work')
    .description('list the jobs day by day, with who does them and what is done')
    .argument('<file>', 'boat file')
    .option('--starts <day>', 'first day of the work, as 2027-03-31, kept in the boat file')
    .option('--phase <number>', 'of which phase that is the first day', countNumber)
    .action(work);

  commandLine
    .command('tick')
    .description('write down that jobs are done, in the log beside the boat file')
    .argument('<file>', 'boat file')
    .argument('<jobs...>', 'number of each, or what stands in square brackets below it')
    .option('--by <name>', 'who did it')
    .option('--undo', 'it is not done after all')
    .action(tick);

  commandLine
    .command('dock')
    .description('list the tests at the dock, or write down and judge what one of them found')
    .argument('<file>', 'boat file')
    .argument('[test]', 'its number, or what stands in square brackets below it')
    .argument('[found]', 'what the meter shows, such as 61.2 or open; or yes or no')
    .option('--by <name>', 'who measured')
    .option('--note <words>', 'what else is to be remembered')
    .action(dock);
};
