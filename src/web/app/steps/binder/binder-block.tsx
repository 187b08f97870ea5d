import { type ReactNode, useMemo, useRef, useState } from 'react';
import { type PaperName, paperSizes } from '../../../../papers/pages/paper-sizes.ts';
import { useCommands } from '../../commands/use-commands.ts';
import { plainName, saveFile } from '../../saving/save-file.ts';
import type { StepMarginProps } from '../step.ts';
import { SheetsToLookAt } from './sheets-to-look-at.tsx';
import { type Making, useBinder } from './use-binder.ts';
import { words } from './words.ts';
import './binder.css';

/** Today where the person is, as a field for a day wants it. */
const today = (): string => {
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

const howFar = ({ progress, set, written }: Making): string => {
  if (set === undefined)
    return progress === undefined ? '' : words.chapters(progress.done, progress.of, progress.chapter);
  return written === set.pages.length ? words.packing : words.writing(written, set.pages.length);
};

const Made = ({ making, onSave, onStop }: { making: Making; onSave: () => void; onStop: () => void }): ReactNode => (
  <>
    <div aria-live="polite">
      {making.state === 'running' ? <p className="quiet">{howFar(making)}</p> : null}
      {making.state === 'failed' ? <p role="alert">{words.failed}</p> : null}
      {making.bytes === undefined || making.set === undefined ? null : <p>{words.ready(making.set.pages.length)}</p>}
    </div>
    {making.state === 'running' ? (
      <button type="button" className="binder-do" onClick={onStop}>
        {words.stop}
      </button>
    ) : null}
    {making.bytes === undefined ? null : (
      <button type="button" className="binder-do" onClick={onSave}>
        {words.save}
      </button>
    )}
    {making.set === undefined ? null : <SheetsToLookAt set={making.set} />}
  </>
);

const paperNames = Object.keys(paperSizes) as PaperName[];

/** The binder: on which paper and of what day, how far it is, its sheets to look at, and the file. */
export const BinderBlock = ({ boat, plan }: StepMarginProps): ReactNode => {
  const [paper, setPaper] = useState<PaperName>('a4');
  const [day, setDay] = useState(today);
  const { making, start, stop } = useBinder(boat);
  const now = (): void => start({ boat, plan, paper, ...(day === '' ? {} : { dateIso: day }) });
  const begin = useRef(now);
  begin.current = now;
  const bytes = making?.bytes;
  const save = (): void => {
    if (bytes !== undefined) saveFile({ name: words.fileName(plainName(boat.name)), text: bytes, type: 'pdf' });
  };
  useCommands(
    useMemo(
      () => [
        { id: 'make-binder', group: 'boat', says: words.make, foundBy: words.makeFoundBy, run: () => begin.current() },
      ],
      [],
    ),
  );
  return (
    <section className="block binder-block">
      <h2>{words.heading}</h2>
      <p className="quiet">{words.says}</p>
      <div className="binder-asked">
        <label>
          {words.paper}{' '}
          <select value={paper} onChange={(event) => setPaper(event.currentTarget.value as PaperName)}>
            {paperNames.map((name) => (
              <option key={name} value={name}>
                {words.papers[name]}
              </option>
            ))}
          </select>
        </label>
        <label>
          {words.day} <input type="date" value={day} onChange={(event) => setDay(event.currentTarget.value)} />
        </label>
      </div>
      <button type="button" className="binder-do" onClick={now}>
        {words.make}
      </button>
      {making === undefined ? null : <Made making={making} onSave={save} onStop={stop} />}
    </section>
  );
};
