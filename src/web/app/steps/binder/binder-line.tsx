import type { ReactNode } from 'react';
import { paperSizes } from '../../../../papers/pages/paper-sizes.ts';
import type { BinderDesk, DeskState, ShownBinder } from './binder-desk.ts';
import { readRevision } from './read-choice.ts';
import { words } from './words.ts';

const makingWords = ({ wanted, progress }: NonNullable<DeskState['making']>): string => {
  if (progress !== undefined) {
    return words.setting(progress.done, progress.of, progress.pages, progress.chapter);
  }
  return 'revision' in wanted.of ? words.planningRevision(wanted.of.revision.mark) : words.drawing;
};

const standsWords = ({ given, wanted, sizes }: ShownBinder): string => {
  const { name } = paperSizes[wanted.paper];
  const standing = words.standing[given.standing === 'as fitted' ? 'fitted' : 'planned'];
  if (given.revision === undefined) return words.standsNow(sizes.length, name, standing);
  return words.standsThen(given.revision, sizes.length, name, standing, given.dateIso ?? '');
};

/** One line over the pages: how far the making is, or what the papers are of. */
export const BinderLine = ({
  desk,
  state,
  isOld,
  onMake,
}: {
  desk: BinderDesk;
  state: DeskState;
  /** whether a revision is read and not the boat as she stands now */
  isOld: boolean;
  onMake: () => void;
}): ReactNode => {
  const { shown, making, writing, refused, isStopped } = state;
  const isBusy = making !== undefined || writing !== undefined;
  return (
    <div className="binder-line">
      <p role="status">
        {writing !== undefined ? (
          <span aria-live="off">{words.writing(writing.done, writing.of)}</span>
        ) : making !== undefined ? (
          <span aria-live="off">{makingWords(making)}</span>
        ) : refused !== undefined ? (
          refused
        ) : isStopped === true ? (
          shown === undefined ? (
            words.stoppedBare
          ) : (
            words.stopped
          )
        ) : shown === undefined ? null : (
          standsWords(shown)
        )}
      </p>
      {isBusy ? (
        <button type="button" className="press-link" onClick={desk.stop}>
          {words.stop}
        </button>
      ) : refused !== undefined || isStopped === true ? (
        <button type="button" className="press-link" onClick={onMake}>
          {words.makeBinder}
        </button>
      ) : null}
      {isOld ? (
        <button type="button" className="press-link" onClick={() => readRevision(undefined)}>
          {words.backToNow}
        </button>
      ) : null}
    </div>
  );
};
