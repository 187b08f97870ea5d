import { UserError } from '../../core/boat/user-error.ts';
import { dockFigures } from '../../core/facts/dock-figures.ts';
import { foundOf } from '../../core/proof/dock/found-of.ts';
import { type Found, judge } from '../../core/proof/dock/judge.ts';
import type { TestEntry } from '../../core/tests-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { picturesBeside } from '../../node/pictures-beside.ts';
import { cardBoat } from '../../papers/cards/card-boat.ts';
import { keepUnits } from '../../papers/lists/print-figure.ts';
import { busFaultWords } from '../../papers/proof/bus-fault-words.ts';
import { judgedWords } from '../../papers/proof/judged-words.ts';
import { testWords } from '../../papers/proof/test-words.ts';
import { testsText } from '../../papers/proof/tests-text.ts';
import { fileAsTyped } from '../file-as-typed.ts';
import { logAtTerminal } from '../log-at-terminal.ts';
import { namedOrNumbered } from '../named-or-numbered.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';
import { writeInLog } from '../write-in-log.ts';

interface DockOptions {
  readonly by?: string;
  readonly note?: string;
}

const width = 80;

/** A meter that shows no figure for its resistance has found more than any. */
const openOhm = 10 * dockFigures.openOhm.value;

const foundFrom = ({ kind, unit }: TestEntry, text: string | undefined): Found => {
  if (kind === 'yes-no' && (text === 'yes' || text === 'no')) return text === 'yes';
  if (kind !== 'yes-no' && unit === 'ohm' && text === 'open') return openOhm;
  const value = Number((text ?? '').replace(',', '.'));
  if (kind !== 'yes-no' && text !== undefined && text.trim() !== '' && Number.isFinite(value)) return value;
  const wanted =
    kind === 'yes-no'
      ? 'Write yes where it was as it should be, else no.'
      : `Write the figure the meter shows${unit === 'ohm' ? ' in ohm, or open,' : unit === 'V' ? ' in volts' : ''} behind the test.`;
  throw new UserError({
    says: text === undefined ? 'What was found is missing.' : `“${text}” is not what this test finds.`,
    whatToDo: wanted,
  });
};

/** `fairlead dock FILE`: the tests at the dock; with a test, by number or id, and what was found that is judged and written into the log beside the boat file. */
export const dock = async (
  file: string,
  testTyped: string | undefined,
  foundTyped: string | undefined,
  { by, note }: DockOptions,
): Promise<void> => {
  const { boat } = await loadBoat(file);
  const { tests, ...plan } = await solveAtTerminal(boat, await picturesBeside(file));
  const log = await logAtTerminal(file);
  if (testTyped === undefined) {
    process.stdout.write(testsText(boat, { ...plan, tests }, log));
    return;
  }
  const id = namedOrNumbered(testTyped, {
    ids: tests.map((test) => test.id),
    numbers: new Map(tests.map((test, at) => [test.id, at + 1])),
    what: 'test',
    list: `fairlead dock ${fileAsTyped(file)}`,
  });
  const test = tests.find((one) => one.id === id);
  if (test === undefined) return;
  const found = foundFrom(test, foundTyped);
  await writeInLog(file, [
    {
      kind: 'reading',
      test: id,
      ...(typeof found === 'boolean' ? { right: found } : { value: found }),
      ...(by === undefined ? {} : { by }),
      ...(note === undefined ? {} : { note }),
    },
  ]);
  const before = foundOf(log.readings);
  const index = cardBoat(boat);
  const bus = plan.buses.find(({ id: busId }) => test.group === 'bus' && test.about.includes(busId));
  const judged = judge(test, found, (other) => (other === id ? found : before(other)));
  const says = [
    `${testWords(index, test)}: ${judgedWords(test, found, judged)}`,
    ...(bus === undefined ? [] : busFaultWords(index, bus, await logAtTerminal(file))),
  ];
  process.stdout.write(`${says.flatMap((words) => textLines(keepUnits(words), { width, lead: '' })).join('\n')}\n`);
};
