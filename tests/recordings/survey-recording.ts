import { startRecordingReader } from '../../src/core/proof/readers/recording-reader.ts';
import { startSurvey } from '../../src/core/proof/survey/survey.ts';
import type { SurveyReport } from '../../src/core/proof/survey/survey-report.ts';

/** Surveys a whole recording in pieces of so many bytes. */
export const surveyRecording = (bytes: Uint8Array, pieceBytes = 65_536): SurveyReport => {
  const survey = startSurvey();
  const reader = startRecordingReader(survey);
  for (let at = 0; at < bytes.length; at += pieceBytes) reader.push(bytes.subarray(at, at + pieceBytes));
  return survey.report([reader.end()]);
};
