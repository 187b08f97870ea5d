import { UserError } from '../../src/core/boat/user-error.ts';
import { writeBoat } from '../../src/core/boat/write-boat.ts';
import { startAisSentences } from '../../src/core/proof/decode/ais-sentences.ts';
import { decodeMessage } from '../../src/core/proof/decode/decode-message.ts';
import { decodeSentence } from '../../src/core/proof/decode/decode-sentence.ts';
import { startLineReader } from '../../src/core/proof/readers/line-reader.ts';
import { startRecordingReader } from '../../src/core/proof/readers/recording-reader.ts';
import type { RecordingSink } from '../../src/core/proof/readers/recording-sink.ts';
import { draftBoat } from '../../src/core/proof/survey/draft-boat.ts';
import { heardIn } from '../../src/core/proof/survey/heard.ts';
import { startSurvey } from '../../src/core/proof/survey/survey.ts';
import type { SurveyReport } from '../../src/core/proof/survey/survey-report.ts';
import { surveyText } from '../../src/core/proof/survey/survey-text.ts';

/** Everything that makes something of a recording, in one sink, which throws where one hands out what cannot be. */
const startTakeAll = () => {
  const survey = startSurvey();
  const ais = startAisSentences();
  const sink: RecordingSink = {
    onFrame(frame) {
      if (frame.length > 8 || frame.id > 0x1fff_ffff || frame.id < 0) throw new Error('A frame that cannot be.');
      if (frame.timeUs !== undefined && !Number.isSafeInteger(frame.timeUs)) throw new Error('A time that cannot be.');
      survey.onFrame(frame);
    },
    onMessage(message) {
      if (message.pgn >= 262_144 || message.source > 255) throw new Error('A message that cannot be.');
      decodeMessage(message.pgn, message.data);
      survey.onMessage(message);
    },
    onSentence({ text }) {
      ais.take(text);
      for (const { value } of decodeSentence(text)) if (!Number.isFinite(value)) throw new Error('No number.');
    },
  };
  return { sink, survey };
};

/** What is made of a survey must stand whatever the damage. */
const tellAll = (report: SurveyReport): void => {
  surveyText(report);
  heardIn(report);
  writeBoat(draftBoat(report));
};

/** Reads lines as they come in, pieces of any size, through everything; returns how many lines came to something. */
export const startTakingLines = () => {
  const { sink, survey } = startTakeAll();
  const reader = startLineReader(sink);
  return {
    push: reader.push,
    end() {
      const counts = reader.end();
      tellAll(survey.report([counts]));
      return counts;
    },
  };
};

/** Reads a file through everything; one that is refused in a sentence is no fault. */
export const takeFile = (bytes: Uint8Array, pieceBytes: number): void => {
  const { sink, survey } = startTakeAll();
  try {
    const reader = startRecordingReader(sink);
    for (let at = 0; at < bytes.length; at += pieceBytes) reader.push(bytes.subarray(at, at + pieceBytes));
    surveyText(survey.report([reader.end()]));
  } catch (cause) {
    if (!(cause instanceof UserError)) throw cause;
  }
};
