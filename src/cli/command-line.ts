import { Command, InvalidArgumentError } from 'commander';
import { program as programName } from '../core/program.ts';
import { accept } from './commands/accept.ts';
import { add } from './commands/add.ts';
import { check } from './commands/check.ts';
import { cure } from './commands/cure.ts';
import { listen } from './commands/listen.ts';
import { need } from './commands/need.ts';
import { newBoat } from './commands/new.ts';
import { open } from './commands/open.ts';
import { order } from './commands/order.ts';
import { plan } from './commands/plan.ts';
import { prove } from './commands/prove.ts';
import { quote } from './commands/quote.ts';
import { restore } from './commands/restore.ts';
import { sheets } from './commands/sheets.ts';
import { survey } from './commands/survey.ts';
import { tape } from './commands/tape.ts';
import { wire } from './commands/wire.ts';
import { commandsAboard } from './commands-aboard.ts';
import { countNumber } from './count-number.ts';

const portNumber = (text: string): number => {
  const port = Number(text);
  if (!Number.isInteger(port) || port < 0 || port > 65_535)
    throw new InvalidArgumentError('A port is a whole number from 0 to 65535.');
  return port;
};

const boreNumber = (text: string): number => {
  const mm = Number(text);
  if (!(mm > 0 && mm <= 1000)) throw new InvalidArgumentError('A bore is a number of millimetres from 1 to 1000.');
  return mm;
};

const jobInOrder = `
The job in its order, for a boat of your own:
  fairlead new --list                                   hull patterns
  fairlead new --pattern ketch --length 11 --out b.boat.json
  fairlead add b.boat.json chart plotter                a unit, where it belongs
  fairlead wire b.boat.json                             joins and circuits
  fairlead tape b.boat.json                             ways, to be taped
  fairlead check b.boat.json                            what is wrong
  fairlead cure b.boat.json FINDING                     what would mend it
  fairlead order b.boat.json                            what to buy
  fairlead work b.boat.json --starts 2027-03-31         jobs, day by day
  fairlead tick b.boat.json 1                           a job that is done
  fairlead dock b.boat.json                             tests at the dock
  fairlead prove b.boat.json bus.log                    a recording, held to it
  fairlead plan b.boat.json --out papers                all papers, the binder
fairlead plan b.boat.json says at its end what is next.
docs/guide/at-the-terminal.md goes through it.`;

/** All that can be typed at the terminal. It throws where something wrong was typed, and ends no program by itself. */
export const commandLine = new Command('fairlead')
  .description('Plans the whole replacement of a boat’s navigation electronics, from survey to the papers left aboard.')
  .version(programName)
  .showHelpAfterError('Add --help to see what can be typed.')
  .addHelpText('after', jobInOrder)
  .exitOverride();

commandLine
  .command('open')
  .description('serve the app on this machine, with the boats kept as files in a folder')
  .argument('[folder]', 'folder of the boat files (default: boats, made with the demo boats in it)')
  .option('--port <number>', 'port on 127.0.0.1, 0 for any free one', portNumber, 4610)
  .option('--lan', 'let phones on this machine’s network in, once each is paired by a code')
  .option('--lan-port <number>', 'port for phones, 0 for any free one (default: the one after --port)', portNumber)
  .action(open);

commandLine
  .command('new')
  .description('a boat from a hull pattern: usual places and ways, every length guessed')
  .option('--pattern <id>', 'hull pattern, for example ketch')
  .option('--length <length>', 'length of the hull, for example 11.8 or "39 ft"')
  .option('--beam <length>', 'beam, where it is known')
  .option('--draft <length>', 'draft, where it is known')
  .option('--air-draft <length>', 'height above the water, where it is known')
  .option('--name <name>', 'what she is called')
  .option('--out <file>', 'write the boat file here; a file that is there already is left alone')
  .option('--list', 'list the hull patterns')
  .action(newBoat);

commandLine
  .command('sheets')
  .description('list sheets, own ones first, or find those that answer to what you call a unit')
  .argument('[words...]', 'what you call it, for example: thing that hears ships')
  .option('--boats <folder>', 'folder of boats in which own sheets are kept', 'boats')
  .option('--json', 'print the sheets found as JSON')
  .action(sheets);

commandLine
  .command('add')
  .description('put a unit aboard, by what you call it or by its sheet, with what such a unit usually shows')
  .argument('<file>', 'boat file')
  .argument('<words...>', 'what you call it, for example: thing that hears ships; or the id of a sheet')
  .option('--at <place>', 'id of the place, or words of its name (default: the likeliest)')
  .option('--fate <fate>', 'comes, stays or goes', 'comes')
  .option('--phase <number>', 'in which phase of the refit', countNumber)
  .option('--name <name>', 'what it is called')
  .option('--boats <folder>', 'folder of boats in which own sheets are kept', 'boats')
  .action(add);

commandLine
  .command('cure')
  .description('list the cures of a finding, or put one of them into the file')
  .argument('<file>', 'boat file')
  .argument('<finding>', 'what stands in square brackets below it, in quotes')
  .argument('[number]', 'which cure is put into the file', countNumber)
  .action(cure);

commandLine
  .command('accept')
  .description('leave a finding as it is, with the reason; a danger is mended')
  .argument('<file>', 'boat file')
  .argument('<finding>', 'what stands in square brackets below it, in quotes')
  .argument('<reason...>', 'why it may stay')
  .action(accept);

commandLine
  .command('need')
  .description('say what must be seen at which screen; without a reading, list what is said')
  .argument('<file>', 'boat file')
  .argument('[reading...]', 'what is to be seen, for example: water temperature')
  .option('--at <unit>', 'id of the screen, or words of its name')
  .option('--number <number>', 'of which engine, tank or battery', countNumber)
  .option('--wish', 'it is a wish, no must')
  .option('--remove', 'it need no longer be seen there')
  .action(need);

commandLine
  .command('wire')
  .description('put into the file what the plan proposes: joins, plugs on the bus, circuits')
  .argument('<file>', 'boat file')
  .action(wire);

commandLine
  .command('tape')
  .description('put a taped length on a way, or on the cable of a unit; without one, list what to tape')
  .argument('<file>', 'boat file')
  .argument('[way]', 'id of the way, or of a unit: from its place to its plug')
  .argument('[length]', 'for example 3.45 or "11 ft 4 in"')
  .option('--seen', 'somebody looked into the way')
  .option('--pulled', 'a line was pulled through the way')
  .option('--bore <millimetres>', 'how wide the way is, as measured', boreNumber)
  .option('--counted', 'every cable in the way is in the boat file')
  .action(tape);

commandLine
  .command('plan')
  .description('compute everything for one boat and say what matters; many boats as a table')
  .argument('<files...>', 'boat file, or - for standard input; or several, or a folder of them')
  .option(
    '--out <folder>',
    'write the binder, plan, findings, lists and drawings to this folder; of many boats to a folder in it each',
  )
  .option('--binder <file>', 'write the binder alone to this file, as a PDF')
  .option('--paper <size>', 'paper of the binder: a4 or letter', 'a4')
  .option('--date <day>', 'day printed on the binder, as 2026-11-26; none is printed where none is given')
  .option(
    '--issue <sentence>',
    'give out the next revision, for what or why, of today or of --date; kept in the boat file',
  )
  .option('--by <name>', 'who gives it out')
  .option('--revision <mark>', 'go back to a revision that was given out')
  .option('--give-labels', 'hand out labels to lines that have none, and keep them in the boat file')
  .option('--labels <geometry>', 'print the labels on this sheet or tape, for example a4-3x8-70x37 or tape-12')
  .option('--labels-from <number>', 'first label of the sheet that is not used up yet', countNumber)
  .option('--label-copies <number>', 'how often each label is printed', countNumber)
  .option('--address <address>', 'address at which the app is opened, for the codes on the labels')
  .option('--json', 'print the whole plan as JSON')
  .option('--compare', 'also compare keeping old kit with replacing it, each wired at least cost')
  .option('--threads <number>', 'how many boats at a time (default: as many as there are cores)', countNumber)
  .option('--times', 'also say how many seconds each of many boats took')
  .action(plan);

commandLine
  .command('check')
  .description('the findings only; ends with 1 when there is any danger or fault; many boats as a table')
  .argument('<files...>', 'boat file, or - for standard input; or several, or a folder of them')
  .option('--json', 'print the findings as JSON')
  .option('--threads <number>', 'how many boats at a time (default: as many as there are cores)', countNumber)
  .option('--times', 'also say how many seconds each of many boats took')
  .action(check);

commandLine
  .command('order')
  .description('list what to buy, or note where an item stands')
  .argument('<file>', 'boat file')
  .argument('[item]', 'what stands in square brackets below it; all: each that is still to be ordered')
  .argument('[state]', 'have, order, ordered, arrived or returned')
  .option('--from <supplier>', 'where it was ordered')
  .option('--due <day>', 'the day it is to arrive, as 2027-03-31')
  .option('--lead-days <number>', 'how many days it takes to come', countNumber)
  .action(order);

commandLine
  .command('quote')
  .description('what the refit brings, takes away and costs: parts, hours, what is not in it')
  .argument('<file>', 'boat file, or - for standard input')
  .argument('[more...]', 'further boat files to set beside it')
  .option('--since <file>', 'also say what changed against this older file, and what that costs')
  .option('--compare', 'also quote each way to wire her, old kit kept or replaced')
  .option(
    '--out <folder>',
    'write the quote as text, as pages to print and to sign, and its parts as CSV to this folder',
  )
  .option('--paper <size>', 'paper of its pages: a4 or letter', 'a4')
  .option('--json', 'print the quote as JSON')
  .action(quote);

commandsAboard(commandLine);

commandLine
  .command('restore')
  .description('put the newest backup in the place of a boat file that is damaged; the damaged one is kept')
  .argument('<file>', 'boat file that cannot be read')
  .action(restore);

commandLine
  .command('survey')
  .description('list what is on a recorded bus and draft a boat file from it')
  .argument(
    '<logs...>',
    'recordings of the bus: candump text, comma-separated lines, NMEA 0183 text, pcap, pcapng, each packed with gzip or not',
  )
  .option('--out <file>', 'write the drafted boat file here')
  .option('--into <file>', 'put what was heard aboard this boat; --out gets her, and her file stays as it is')
  .option('--pattern <id>', 'draft it on a hull pattern (fairlead new --list)')
  .option('--length <length>', 'length of that hull, for example 11.8 or "39 ft"')
  .option('--json', 'print what was found as JSON')
  .action(survey);

const secondsNumber = (text: string): number => {
  const seconds = Number(text);
  if (!(seconds > 0 && seconds <= 864_000))
    throw new InvalidArgumentError('That is a number of seconds above 0, at most 864000.');
  return seconds;
};

commandLine
  .command('prove')
  .description('hold recordings against the plan; ends with 1 when anything planned is missing or wrong')
  .argument('<file>', 'boat file, or - for standard input')
  .argument('<logs...>', 'recordings of her buses and 0183 lines; BUS=LOG or KIT.PORT=LOG says which one it is of')
  .option('--keep', 'note in the boat file who the units are and which readings were heard')
  .option('--out <folder>', 'write the report as JSON, text and pages to this folder')
  .option('--paper <size>', 'paper of its pages: a4 or letter', 'a4')
  .option('--json', 'print the report as JSON')
  .action(prove);

commandLine
  .command('listen')
  .description(
    'hold the live bus against the plan while it speaks; ends with 1 when anything planned is missing or wrong',
  )
  .argument('<file>', 'boat file')
  .option('--udp [port]', 'hear what is sent to a UDP port (usually 10110)')
  .option('--bind <address>', 'only at this address of this machine')
  .option('--tcp <host:port>', 'call a gateway that serves data over TCP')
  .option('--serial <path>', 'hear a serial port, such as a USB adapter')
  .option('--baud <number>', 'its speed; without it 4800, 38400 and 115200 are tried until lines come whole')
  .option('--stdin', 'hear standard input: candump -L can0 | fairlead listen boat.json --stdin')
  .option('--tail <file>', 'follow a file that another program writes')
  .option('--on <wire>', 'the bus, or UNIT.PORT of the talker, that is heard; without it the one that fits best')
  .option('--record <file>', 'write what comes in on the end of this file')
  .option('--for <seconds>', 'stop after so many seconds', secondsNumber)
  .option('--ask <interface>', 'also ask the units who they are, through cansend; sends nothing without a yes')
  .option('--thorough', 'with --ask: also what each unit is, sends and hears')
  .option('--yes', 'with --ask: say yes beforehand')
  .option('--json', 'print the report as JSON at the end')
  .action(listen);
