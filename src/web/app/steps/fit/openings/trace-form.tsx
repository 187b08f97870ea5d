import { type ReactNode, useRef, useState } from 'react';
import type { Opening } from '../../../../../core/boat/opening.ts';
import type { Picture } from '../../../../../core/boat/picture.ts';
import { traceHole } from '../../../../../core/fitting/openings/trace-hole.ts';
import { NumberField } from '../../../forms/fields.tsx';
import { keepPicture, usePicture } from '../../../pictures/picture-keeper.ts';
import { shrinkPicture } from '../../../pictures/shrink-picture.ts';
import { type Mark, MarkOnPhoto, type Marks } from './mark-on-photo.tsx';
import { words } from './words.ts';

type Traced = Pick<Opening, 'hole'> & { readonly traced: NonNullable<Opening['traced']> };

const noMarks: Marks = { scale: [], outline: [] };

const spot = ([xPx, yPx]: Mark): { xPx: number; yPx: number } => ({ xPx, yPx });

/** The two points that were marked when this hole was traced before. */
const marksOf = (traced: Opening['traced']): Marks =>
  traced === undefined
    ? noMarks
    : {
        scale: [
          [traced.from.xPx, traced.from.yPx],
          [traced.to.xPx, traced.to.yPx],
        ],
        outline: [],
      };

const nextStep = ({ scale, outline }: Marks): string => {
  if (scale.length === 0) return words.markFirst;
  return scale.length === 1 ? words.markSecond : words.markOutline(outline.length);
};

/** A photo of a hole is chosen, two known points and the outline are marked on it, and the hole has its size from them. */
export const TraceForm = ({
  traced,
  onTraced,
}: {
  traced: Opening['traced'];
  onTraced: (traced: Traced) => void;
}): ReactNode => {
  const input = useRef<HTMLInputElement>(null);
  const [picture, setPicture] = useState<Picture | undefined>(traced?.picture);
  const [marks, setMarks] = useState<Marks>(() => marksOf(traced));
  const [apartMm, setApartMm] = useState(traced?.apartMm);
  const [isLevel, setIsLevel] = useState(false);
  const [isLarge, setIsLarge] = useState(false);
  const [says, setSays] = useState('');
  const state = usePicture(picture?.hash);
  const take = async (file: File): Promise<void> => {
    setSays(words.photoBusy);
    const made = await shrinkPicture(file);
    const whyNot = 'refusal' in made ? made.refusal : await keepPicture(made);
    setSays(whyNot === undefined ? '' : words.photoNotKept(whyNot));
    if (whyNot !== undefined || 'refusal' in made) return;
    setPicture(made.picture);
    setMarks(noMarks);
  };
  const all = [...marks.scale, ...marks.outline];
  const [from, to] = marks.scale;
  const hole =
    from === undefined || to === undefined || apartMm === undefined
      ? undefined
      : traceHole({ outlinePx: marks.outline, fromPx: from, toPx: to, apartMm, isLevel });
  return (
    <div className={isLarge ? 'trace trace-large' : 'trace'}>
      <p className="quiet">{words.photoHelp}</p>
      <p role="status" className={says === '' ? 'unseen' : undefined}>
        {says}
      </p>
      <button type="button" className="press-link" onClick={() => input.current?.click()}>
        {picture === undefined ? words.choosePhoto : words.otherPhoto}
      </button>
      <input
        ref={input}
        type="file"
        accept="image/jpeg,image/png,image/webp"
        hidden
        onChange={({ target }) => {
          const [file] = target.files ?? [];
          if (file !== undefined) void take(file);
          target.value = '';
        }}
      />
      {picture === undefined || state.kind !== 'here' ? null : (
        <>
          <button type="button" className="press-link" aria-pressed={isLarge} onClick={() => setIsLarge(!isLarge)}>
            {isLarge ? words.smaller : words.larger}
          </button>
          <p role="status">{nextStep(marks)}</p>
          <MarkOnPhoto picture={picture} url={state.url} marks={marks} onMarks={setMarks} />
          <p className="quiet">{words.pointHelp}</p>
          <div className="form-fields">
            <NumberField label={words.apart} value={apartMm} onValue={setApartMm} />
            <label className="trace-level">
              <input type="checkbox" checked={isLevel} onChange={({ target }) => setIsLevel(target.checked)} />
              <span>{words.level}</span>
            </label>
          </div>
          {hole === undefined ? null : <p>{words.traced(hole.widthMm, hole.heightMm)}</p>}
          <p className="opening-presses">
            <button
              type="button"
              className="press-link"
              disabled={all.length === 0}
              onClick={() => setMarks({ scale: all.slice(0, -1).slice(0, 2), outline: all.slice(2, -1) })}
            >
              {words.backOne}
            </button>
            <button
              type="button"
              className="press-link"
              disabled={hole === undefined}
              onClick={() => {
                if (hole === undefined || from === undefined || to === undefined || apartMm === undefined) return;
                setIsLarge(false);
                onTraced({ hole, traced: { picture, from: spot(from), to: spot(to), apartMm } });
              }}
            >
              {words.useTrace}
            </button>
          </p>
        </>
      )}
    </div>
  );
};
