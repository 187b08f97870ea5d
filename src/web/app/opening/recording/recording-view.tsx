import { type ReactNode, useCallback, useEffect, useId, useRef, useState } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { StartingReply, StartingRequest } from '../../../workers/starting-protocol.ts';
import { useEdit } from '../../edit-context.ts';
import { RefusalView } from '../../refusal-view.tsx';
import { NewBoatForm } from '../new-boat/new-boat-form.tsx';
import { useKeptBoat } from '../new-boat/use-kept-boat.ts';
import { words as newBoatWords } from '../new-boat/words.ts';
import { HeardView } from './heard-view.tsx';
import { useRecording } from './use-recording.ts';
import { words } from './words.ts';
import './recording.css';

type Ask = (request: StartingRequest) => void;

const ReadingView = ({ file, readBytes }: { file: File; readBytes: number }): ReactNode => (
  <>
    <p>{words.reading(file.name)}</p>
    <progress value={readBytes} max={Math.max(1, file.size)} aria-label={words.reading(file.name)} />
    <p className="quiet">{words.read({ readBytes, allBytes: file.size })}</p>
  </>
);

const AboardView = ({
  boat,
  units,
  ask,
  known,
}: {
  boat: Boat;
  units: number;
  ask: Ask;
  known: number | undefined;
}): ReactNode =>
  known === undefined ? (
    <>
      <button type="button" className="make-button" onClick={() => ask({ kind: 'edits', boat })}>
        {words.aboard({ units, boat: boat.name })}
      </button>
      <p className="quiet">{words.aboardHint}</p>
    </>
  ) : (
    <p role="status">{words.knowsAll(known)}</p>
  );

/** What comes of the boat that is open: edits, or the word that she knows them all; and of a new one, which is kept and opened. */
const useOutcome = (onDone: () => void) => {
  const edit = useEdit();
  const kept = useKeptBoat();
  const [known, setKnown] = useState<number | undefined>(undefined);
  const { take: keep } = kept;
  const take = useCallback(
    (reply: StartingReply): void => {
      keep(reply);
      if (reply.kind !== 'edits') return;
      if (reply.edits.length === 0) {
        setKnown(reply.known);
        return;
      }
      edit(reply.edits);
      onDone();
    },
    [keep, edit, onDone],
  );
  return { ...kept, known, take };
};

/** A recording that was picked or dropped: read with its progress, shown as what was heard, and put aboard the boat that is open or a new one. */
export const RecordingView = ({
  file,
  boat,
  onShut,
}: {
  file: File;
  /** the boat that is open */
  boat: Boat | undefined;
  onShut: () => void;
}): ReactNode => {
  const heading = useId();
  const title = useRef<HTMLHeadingElement>(null);
  const { known, take, begin, isMaking, refusal } = useOutcome(onShut);
  const { reading, ask } = useRecording(file, take);
  useEffect(() => title.current?.focus(), []);
  return (
    <section className="recording" aria-labelledby={heading}>
      <div className="recording-head">
        <h2 id={heading} ref={title} tabIndex={-1}>
          {words.heading}
        </h2>
        <button type="button" className="recording-shut" onClick={onShut}>
          {reading.state === 'reading' ? words.stop : words.shut}
        </button>
      </div>
      {reading.state === 'reading' ? <ReadingView file={file} readBytes={reading.readBytes} /> : null}
      {reading.state === 'refused' ? <RefusalView refusal={reading.refusal} /> : null}
      {reading.state !== 'heard' ? null : boat === undefined ? (
        <>
          <HeardView heard={reading.heard} />
          <h3>{words.newBoat}</h3>
          <NewBoatForm
            says={newBoatWords.makeWithHeard(reading.heard.units.length)}
            isMaking={isMaking}
            refusal={refusal}
            onMake={(asked) => {
              begin();
              ask({ kind: 'make', asked });
            }}
          />
        </>
      ) : (
        <HeardView heard={reading.heard}>
          {refusal === undefined ? null : <RefusalView refusal={refusal} />}
          <AboardView boat={boat} units={reading.heard.units.length} ask={ask} known={known} />
        </HeardView>
      )}
    </section>
  );
};
