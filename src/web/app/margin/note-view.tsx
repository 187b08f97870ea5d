import type { ReactNode } from 'react';
import type { Finding } from '../../../core/plan-shape.ts';
import { type LightStore, useIsLit } from '../../drawing/light-store.ts';
import { usePart } from '../use-part.ts';
import { useExplained, Word } from '../words/explained.tsx';
import { CureList } from './cure-list.tsx';
import type { Note } from './notes.ts';
import { words } from './words.ts';

const bringAccept = () => import('./accept-note.tsx');

/** A title is a heading here, so its full stop goes. */
const withoutStop = (title: string): string => title.replace(/\.$/, '');

/** What to do about a finding: links that do it, or a sentence. */
const NoteCure = ({
  finding: { cure, cures },
  told,
  currency,
}: {
  finding: Finding;
  /** the sentence with its trade words explained */
  told: ReactNode;
  currency: string;
}): ReactNode => {
  const isSaid = cures?.some(({ says }) => says === cure) === true;
  return (
    <>
      {cure === undefined || isSaid ? null : <p className="note-cure">{told}</p>}
      {cures === undefined ? null : <CureList cures={cures} currency={currency} />}
    </>
  );
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
  const accept = usePart(bringAccept);
  const [says, cure, ...more] = useExplained([finding.says, finding.cure ?? '', ...note.more.map((one) => one.says)]);
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
          {balloon === undefined ? null : <span className="unseen">{words.balloon(balloon)}</span>}
          {title === undefined ? finding.says : withoutStop(title)}
        </button>
      </h3>
      {title === undefined ? null : <p>{says}</p>}
      <NoteCure finding={finding} told={cure} currency={currency} />
      {note.more.length === 0 ? null : (
        <details className="note-more">
          <summary>{words.moreOfKind(note.more.length)}</summary>
          <ul>
            {note.more.map(({ id }, at) => (
              <li key={id}>{more[at]}</li>
            ))}
          </ul>
        </details>
      )}
      <p className="note-code">
        <Word of={finding.level}>{finding.level}</Word> · <code>{finding.rule}</code>
      </p>
      {accept === undefined ? null : (
        <accept.AcceptNote findings={[finding, ...note.more]} title={withoutStop(title ?? finding.says)} />
      )}
    </li>
  );
};
