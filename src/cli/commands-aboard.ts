import type { Command } from 'commander';
import { dock } from './commands/dock.ts';
import { fitted } from './commands/fitted.ts';
import { tick } from './commands/tick.ts';
import { work } from './commands/work.ts';
import { countNumber } from './count-number.ts';

/** What is typed while the work is done: the jobs, ticks, tests at the dock, what came out otherwise. */
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

  commandLine
    .command('fitted')
    .description('list what came out otherwise than planned, or note one such thing in the boat file')
    .argument('<file>', 'boat file')
    .argument('[thing]', 'label of a line, or what stands in square brackets below a thing')
    .option('--place <place>', 'where the unit stands')
    .option('--length <length>', 'how long the whole cable is, end to end')
    .option('--ways <ways>', 'the ways it is led through, with commas')
    .option('--wire <size>', 'the copper of a feed, in mm² or AWG')
    .option('--fuse <amperes>', 'what protects the circuit')
    .option('--is <words>', 'what it is like, where it is none of these')
    .option('--on <day>', 'when it was found, as 2027-04-30; today where it is not given')
    .option('--by <name>', 'who found it')
    .option('--note <words>', 'why, or what else is to be remembered')
    .option('--undo', 'take a difference back, and what the file was made to say by it')
    .action(fitted);
};
