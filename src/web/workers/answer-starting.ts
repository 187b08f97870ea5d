import { edits } from '../../core/boat/edits/index.ts';
import type { EditCall } from '../../core/boat/history.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { heardEdit } from '../../core/kit/heard-edit.ts';
import { startRecordingReader } from '../../core/proof/readers/recording-reader.ts';
import { heardIn } from '../../core/proof/survey/heard.ts';
import { startSurvey } from '../../core/proof/survey/survey.ts';
import type { SurveyReport } from '../../core/proof/survey/survey-report.ts';
import { boatFromPattern } from '../../core/starting/boat-from-pattern.ts';
import type { StartingReply, StartingRequest } from './starting-protocol.ts';
import { words } from './words.ts';

/** Told of the bytes read no more often than this, so that the page has time to draw. */
const tellEveryBytes = 1024 * 1024;

const readRecording = async (recording: Blob, say: (reply: StartingReply) => void): Promise<SurveyReport> => {
  const survey = startSurvey();
  const reader = startRecordingReader(survey);
  let [readBytes, toldBytes] = [0, 0];
  const pieces = recording.stream().getReader();
  for (let piece = await pieces.read(); !piece.done; piece = await pieces.read()) {
    reader.push(piece.value);
    readBytes += piece.value.length;
    if (readBytes - toldBytes < tellEveryBytes) continue;
    toldBytes = readBytes;
    say({ kind: 'progress', readBytes });
  }
  const report = survey.report([reader.end()]);
  if (report.frames + report.joined > 0) return report;
  throw new UserError({
    says: words.noMessage,
    whatToDo: words.chooseAnother,
  });
};

const refusalOf = ({ says, place, whatToDo }: UserError): StartingReply => ({
  kind: 'refused',
  refusal: { says, whatToDo, ...(place === undefined ? {} : { place }) },
});

/** Answers what starts a boat, one request after the other; the recording read last stays for those that follow. */
export const answerStarting = (say: (reply: StartingReply) => void): ((request: StartingRequest) => Promise<void>) => {
  let report: SurveyReport | undefined;
  const answer = async (request: StartingRequest): Promise<StartingReply> => {
    switch (request.kind) {
      case 'read':
        report = undefined;
        report = await readRecording(request.recording, say);
        return { kind: 'heard', heard: heardIn(report) };
      case 'make': {
        const bare = boatFromPattern(request.asked);
        const params = report === undefined ? undefined : heardEdit(bare, report).params;
        return {
          kind: 'made',
          boatText: writeBoat(params === undefined ? bare : edits['add-heard'].apply(bare, params)),
        };
      }
      case 'edits': {
        if (report === undefined) return { kind: 'edits', edits: [], added: 0, known: 0 };
        // Who is aboard already is known by what each unit is to send, which the plan says; only then is it loaded.
        const { plan } = await import('../../core/plan.ts');
        const { params, takenOver, added, known } = heardEdit(request.boat, report, plan(request.boat, new Map()));
        const edits: EditCall[] = [
          ...(takenOver === undefined ? [] : [{ edit: 'take-identities' as const, params: takenOver }]),
          ...(params === undefined ? [] : [{ edit: 'add-heard' as const, params }]),
        ];
        return { kind: 'edits', edits, added, known };
      }
    }
  };
  return async (request) => {
    try {
      say(await answer(request));
    } catch (cause) {
      say(cause instanceof UserError ? refusalOf(cause) : { kind: 'fault', detail: String(cause) });
    }
  };
};
