import type { ReactNode } from 'react';
import type { Finding } from '../../core/plan-shape.ts';
import { keepUnits } from '../../papers/lists/print-figure.ts';
import { type LightStore, useIsLit } from '../drawing/light-store.ts';
import { CureList } from './cure-list.tsx';
import type { Note } from './notes.ts';

/** A title is a heading here, so its full stop goes. */
const withoutStop = (title: string): string => title.replace(/\.$/, '');

/** What to do about a finding: links that do it, or a sentence. */
const NoteCure = ({ finding: { cure, cures }, currency }: { finding: Finding; currency: string }): ReactNode => {
  if (cures !== undefined) return <CureList cures={cures} currency={currency} />;
  return cure === undefined ? null : <p className="note-cure">{keepUnits(cure)}</p>;
};

/**
 * One finding in the margin beside the number of its balloon. Its title is a button: resting on it lights the drawing,
 * pressing it takes the drawing there.
 */
export const NoteView = ({
  note,
  title,
  currency,
  lights,
  onShow,
}: {
  note: Note;
  title: string | undefined;
  currency: string;
  lights: LightStore;
  onShow: (note: Note) => void;
}): ReactNode => {
  const { finding, balloon } = note;
  const lit = useIsLit(lights, note.lights);
  return (
    <li
      className={`note ${finding.level}${lit ? ' lit' : ''}`}
      data-finding={finding.id}
      onPointerEnter={() => lights.rest(note.lights)}
      onPointerLeave={() => lights.rest([])}
    >
      <span className="note-mark" aria-hidden="true">
        {balloon ?? '·'}
      </span>
      <h3>
        <button
          type="button"
          onClick={() => onShow(note)}
          onFocus={() => lights.rest(note.lights)}
          onBlur={() => lights.rest([])}
        >
          {balloon === undefined ? null : <span className="unseen">Balloon {balloon}: </span>}
          {title === undefined ? finding.says : withoutStop(title)}
        </button>
      </h3>
      {title === undefined ? null : <p>{keepUnits(finding.says)}</p>}
      <NoteCure finding={finding} currency={currency} />
      {note.more.length === 0 ? null : (
        <details className="note-more">
          <summary>and {note.more.length} more of this kind</summary>
          <ul>
            {note.more.map(({ id, says }) => (
              <li key={id}>{keepUnits(says)}</li>
            ))}
          </ul>
        </details>
      )}
      <p className="note-code">
        {finding.level} · <code>{finding.rule}</code>
      </p>
    </li>
  );
};
