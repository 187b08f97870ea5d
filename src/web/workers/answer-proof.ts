import { UserError } from '../../core/boat/user-error.ts';
import type { ProofReport } from '../../core/proof/compare/proof-report.ts';
import { provedReadings } from '../../core/proof/compare/proved-readings.ts';
import { takeOverWatched } from '../../core/proof/compare/take-over-watched.ts';
import { watchLogs } from '../../core/proof/compare/watch-logs.ts';
import type { Watched } from '../../core/proof/compare/watched.ts';
import { startRecordingReader } from '../../core/proof/readers/recording-reader.ts';
import type { ReaderCounts } from '../../core/proof/readers/recording-reader-shape.ts';
import type { RecordingSink } from '../../core/proof/readers/recording-sink.ts';
import type { ProofReply, ProofRequest } from './proof-protocol.ts';

/** Told of the bytes read no more often than this, so that the page has time to draw. */
const tellEveryBytes = 1024 * 1024;

const readBlob = async (
  recording: Blob,
  sink: RecordingSink,
  onBytes: (bytes: number) => void,
): Promise<ReaderCounts> => {
  const reader = startRecordingReader(sink);
  const pieces = recording.stream().getReader();
  for (let piece = await pieces.read(); !piece.done; piece = await pieces.read()) {
    reader.push(piece.value);
    onBytes(piece.value.length);
  }
  return reader.end();
};

interface Kept {
  readonly report: ProofReport;
  readonly watched: readonly Watched[];
}

const proved = ({ recordings, boat, plan }: Extract<ProofRequest, { kind: 'prove' }>, say: Say): Promise<Kept> => {
  let [readBytes, toldBytes] = [0, 0];
  const count = (bytes: number): void => {
    readBytes += bytes;
    if (readBytes - toldBytes < tellEveryBytes) return;
    toldBytes = readBytes;
    say({ kind: 'progress', readBytes });
  };
  const logs = recordings.map((recording) => ({ read: (sink: RecordingSink) => readBlob(recording, sink, count) }));
  return watchLogs({ boat, plan }, logs);
};

type Say = (reply: ProofReply) => void;

/** Answers what is asked of recordings, one request after the other. */
export const answerProof = (say: Say): ((request: ProofRequest) => Promise<void>) => {
  let kept: Kept | undefined;
  const answer = async (request: ProofRequest): Promise<ProofReply> => {
    if (request.kind === 'prove') {
      kept = undefined;
      kept = await proved(request, say);
      return { kind: 'proved', report: kept.report };
    }
    if (request.kind === 'take-over') {
      const params = kept === undefined ? undefined : takeOverWatched(request, kept.watched);
      return {
        kind: 'edits',
        of: request.kind,
        edits: params === undefined ? [] : [{ edit: 'take-identities', params }],
      };
    }
    const params = kept === undefined ? undefined : provedReadings(kept.report, request.on);
    return { kind: 'edits', of: request.kind, edits: params === undefined ? [] : [{ edit: 'note-proved', params }] };
  };
  return async (request) => {
    try {
      say(await answer(request));
    } catch (cause) {
      if (!(cause instanceof UserError)) say({ kind: 'fault', detail: String(cause) });
      else {
        const { says, place, whatToDo } = cause;
        say({ kind: 'refused', refusal: { says, whatToDo, ...(place === undefined ? {} : { place }) } });
      }
    }
  };
};
