import { type ReactNode, useCallback, useMemo, useState } from 'react';
import type { Opening } from '../../../../../core/boat/opening.ts';
import { type OpeningRow, openingRows } from '../../../../../papers/lists/opening-rows.ts';
import { useCommands } from '../../../commands/use-commands.ts';
import { useEdit } from '../../../edit-context.ts';
import { LitRows } from '../../../margin/lit-rows.tsx';
import { useWords } from '../../../words/units.ts';
import type { StepMarginProps } from '../../step.ts';
import { freshOpening } from './opening-draft.ts';
import { OpeningEditor } from './opening-editor.tsx';
import { OpeningPicture } from './opening-picture.tsx';
import './openings.css';
import { TemplateFiles } from './template-files.tsx';
import { words } from './words.ts';

/** Every opening of the boat with what becomes of it, and the form in which one is measured. */
export const OpeningsBlock = ({ boat, plan, hand }: StepMarginProps): ReactNode => {
  const edit = useEdit();
  const say = useWords();
  const [editing, setEditing] = useState<Opening | undefined>(undefined);
  const close = useCallback(() => setEditing(undefined), []);
  const rows = useMemo(() => openingRows(boat, plan), [boat, plan]);
  const measure = useCallback(() => setEditing(freshOpening(boat)), [boat]);
  useCommands(
    useMemo(
      () => [
        {
          id: 'measure-opening',
          group: 'boat',
          says: words.measure,
          foundBy: words.measureFoundBy,
          run: measure,
        } as const,
      ],
      [measure],
    ),
  );
  const controls = ({ opening, toDo, why, fit }: OpeningRow): ReactNode => (
    <>
      {toDo === undefined ? null : <p>{say(toDo)}</p>}
      {why === undefined || why === '' ? null : <p className="quiet">{say(why)}</p>}
      {fit === undefined ? null : <OpeningPicture name={opening.name} fit={fit} plates={plan.plates} hand={hand} />}
      {fit === undefined ? null : <TemplateFiles boat={boat} plan={plan} fit={fit} />}
      <span className="opening-presses">
        <button type="button" className="press-link" onClick={() => setEditing(opening)}>
          {words.changeShort}
          <span className="unseen"> {opening.name}</span>
        </button>
        <button
          type="button"
          className="press-link"
          onClick={() => edit([{ edit: 'remove-opening', params: { opening: opening.id } }])}
        >
          {words.takeOutShort}
          <span className="unseen"> {opening.name}</span>
        </button>
      </span>
    </>
  );
  return (
    <>
      <LitRows
        heading={words.heading}
        rows={rows.map((row) => ({ ...row, control: controls(row) }))}
        empty={words.none}
        hand={hand}
      />
      <div className="block opening-new">
        {editing === undefined ? (
          <button type="button" className="press-link" onClick={measure}>
            {words.measure}
          </button>
        ) : (
          <OpeningEditor key={editing.id} boat={boat} opening={editing} onClose={close} />
        )}
      </div>
    </>
  );
};
