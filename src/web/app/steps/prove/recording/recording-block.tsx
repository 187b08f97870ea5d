import { type DragEvent, type ReactNode, useCallback, useMemo, useRef } from 'react';
import { useCommands } from '../../../commands/use-commands.ts';
import { RefusalView } from '../../../refusal-view.tsx';
import type { StepMarginProps } from '../../step.ts';
import { ProofView } from './proof-view.tsx';
import { type Proving, useProof } from './use-proof.ts';
import { words } from './words.ts';
import './recording-block.css';

const PickView = ({ onFiles }: { onFiles: (files: readonly File[]) => void }): ReactNode => {
  const drop = (event: DragEvent): void => {
    event.preventDefault();
    // Elsewhere on the page a dropped recording is put aboard.
    event.nativeEvent.stopPropagation();
    onFiles([...event.dataTransfer.files]);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a place to drop; the field in it is for keys
    <div className="proof-pick" onDragOver={(event) => event.preventDefault()} onDrop={drop}>
      <label>
        <span>{words.pick}</span>
        <input type="file" multiple onChange={({ currentTarget }) => onFiles([...(currentTarget.files ?? [])])} />
      </label>
      <span className="quiet">{words.drop}</span>
    </div>
  );
};

const ReadingView = ({
  proving,
  onStop,
}: {
  proving: Extract<Proving, { state: 'reading' }>;
  onStop: () => void;
}): ReactNode => (
  <>
    <p>{words.reading(proving.names)}</p>
    <progress
      value={Math.min(proving.readBytes, proving.allBytes)}
      max={Math.max(1, proving.allBytes)}
      aria-label={words.reading(proving.names)}
    />
    <p className="quiet">{words.read(proving)}</p>
    <button type="button" className="press-link" onClick={onStop}>
      {words.stop}
    </button>
  </>
);

/** Recordings of the boat’s wires held against her plan: units, readings and what is otherwise, lighting the drawing. */
export const RecordingBlock = ({ boat, plan, hand }: StepMarginProps): ReactNode => {
  const { proving, prove, ask, end } = useProof({ boat, plan });
  const block = useRef<HTMLElement>(null);
  const pick = useCallback(() => block.current?.querySelector<HTMLElement>('input[type=file]')?.focus(), []);
  useCommands(
    useMemo(
      () => [
        { id: 'prove-recording', group: 'change', says: words.command, foundBy: words.foundBy, run: pick } as const,
      ],
      [pick],
    ),
  );
  return (
    <section ref={block} className="block proof-block">
      <h2>{words.heading}</h2>
      {proving.state === 'none' || proving.state === 'refused' ? (
        <>
          <p className="quiet">{words.about}</p>
          {proving.state === 'refused' ? <RefusalView refusal={proving.refusal} /> : null}
          <PickView onFiles={prove} />
        </>
      ) : null}
      {proving.state === 'reading' ? <ReadingView proving={proving} onStop={end} /> : null}
      {proving.state === 'proved' ? (
        <ProofView
          boat={boat}
          report={proving.report}
          tookNothing={proving.tookNothing}
          hand={hand}
          onTakeOver={() => ask({ kind: 'take-over', boat, plan })}
          onNote={(on) => ask({ kind: 'note-proved', on })}
          onAgain={end}
        />
      ) : null}
    </section>
  );
};
