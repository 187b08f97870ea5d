import { UserError } from '../../core/boat/user-error.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import type { HullMeasuresId } from '../../core/facts/hull-measures.ts';
import { boatFromPattern } from '../../core/starting/boat-from-pattern.ts';
import { patternOf } from '../../core/starting/pattern-of.ts';
import { atTerminal } from '../../papers/next/at-terminal.ts';
import { newBoatText } from '../../papers/starting/new-boat-text.ts';
import { patternsText } from '../../papers/starting/patterns-text.ts';
import { fileAsTyped } from '../file-as-typed.ts';
import { saveNewBoat } from '../save-new-boat.ts';
import { typedLength } from '../typed-length.ts';

interface NewOptions {
  readonly pattern?: string;
  readonly length?: string;
  readonly beam?: string;
  readonly draft?: string;
  readonly airDraft?: string;
  readonly name?: string;
  readonly out?: string;
  readonly list?: boolean;
}

const required = (value: string | undefined, option: string, whatToDo: string): string => {
  if (value !== undefined) return value;
  throw new UserError({ says: `${option} is missing.`, whatToDo });
};

const measuresOf = ({ length, beam, draft, airDraft }: NewOptions) => {
  const lengthText = required(length, '--length', 'Give the length of the hull, for example --length "39 ft".');
  const [lengthM, beamM, draftM, airDraftM] = [
    typedLength(lengthText, '--length'),
    typedLength(beam, '--beam'),
    typedLength(draft, '--draft'),
    typedLength(airDraft, '--air-draft'),
  ];
  return {
    ...(lengthM === undefined ? {} : { lengthM }),
    ...(beamM === undefined ? {} : { beamM }),
    ...(draftM === undefined ? {} : { draftM }),
    ...(airDraftM === undefined ? {} : { airDraftM }),
  };
};

const patternFrom = (text: string | undefined): HullMeasuresId =>
  patternOf(required(text, '--pattern', 'Give one, for example --pattern ketch; --list shows them all.')).id;

/** `fairlead new --pattern P --length M --out FILE`: a boat from a hull pattern, in a file that was not there before; `--list` lists the patterns. */
export const newBoat = async (options: NewOptions): Promise<void> => {
  if (options.list === true) {
    process.stdout.write(patternsText());
    return;
  }
  const pattern = patternFrom(options.pattern);
  const measures = measuresOf(options);
  const out = required(
    options.out,
    '--out',
    'Say where the boat file is to be written, for example --out mine.boat.json.',
  );
  const boat = boatFromPattern({ pattern, name: options.name ?? 'New boat', ...measures });
  await saveNewBoat(out, writeBoat(boat));
  process.stdout.write(newBoatText(boat));
  process.stderr.write(`Written to ${out}. Next: ${atTerminal('kit', fileAsTyped(out)) ?? ''}\n`);
};
