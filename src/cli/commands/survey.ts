import { createReadStream } from 'node:fs';
import { UserError } from '../../core/boat/user-error.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { draftBoat } from '../../core/proof/draft-boat.ts';
import { maskedReport } from '../../core/proof/masked-report.ts';
import type { ReaderCounts } from '../../core/proof/recorded-frame.ts';
import { startRecordingReader } from '../../core/proof/recording-reader.ts';
import { type Survey, startSurvey } from '../../core/proof/survey.ts';
import type { SurveyReport } from '../../core/proof/survey-report.ts';
import { surveyText } from '../../core/proof/survey-text.ts';
import { saveNewBoat } from '../save-new-boat.ts';

const cannotRead = (path: string, cause: unknown): UserError => {
  const code = (cause as NodeJS.ErrnoException).code;
  const says =
    code === 'ENOENT'
      ? 'There is no such recording.'
      : code === 'EISDIR'
        ? 'This is a folder, not a recording.'
        : 'This recording cannot be read.';
  return new UserError({ says, place: path, whatToDo: 'Give candump text or a pcap file, or - for standard input.' });
};

const readOne = async (path: string, survey: Survey): Promise<ReaderCounts> => {
  const reader = startRecordingReader(survey.take);
  const stream = path === '-' ? process.stdin : createReadStream(path, { highWaterMark: 1 << 20 });
  try {
    for await (const chunk of stream) reader.push(chunk as Uint8Array);
    return reader.end();
  } catch (cause) {
    throw cause instanceof UserError
      ? new UserError({ says: cause.says, place: path, whatToDo: cause.whatToDo })
      : cannotRead(path, cause);
  }
};

/** Reads the recordings one after the other, chunk by chunk, so that their size does not matter. */
const surveyOf = async (paths: readonly string[]): Promise<SurveyReport> => {
  const survey = startSurvey();
  const read: ReaderCounts[] = [];
  for (const path of paths) read.push(await readOne(path, survey));
  return survey.report(read);
};

/** `fairlead survey LOG…`: what is on a recorded bus; `--out` writes a boat file drafted from it. */
export const survey = async (
  logs: readonly string[],
  { out, json = false }: { out?: string; json?: boolean },
): Promise<void> => {
  const report = await surveyOf(logs);
  process.stdout.write(json ? `${maskedReport(report)}\n` : surveyText(report));
  if (out === undefined) return;
  await saveNewBoat(out, writeBoat(draftBoat(report)));
  process.stderr.write(`A boat file drafted from it is in ${out}. Next: fairlead plan ${out}\n`);
};
