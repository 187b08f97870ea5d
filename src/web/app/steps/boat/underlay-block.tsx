import { type DragEvent, type ReactNode, useRef, useState } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Underlay, UnderlayView } from '../../../../core/boat/underlay.ts';
import { firstFixes, mirroredFixes, scaledFixes } from '../../../../core/boat/underlay-placement.ts';
import { useEdit } from '../../edit-context.ts';
import { boatOfFolder, keepPicture, usePicture } from '../../pictures/picture-keeper.ts';
import { shrinkPicture } from '../../pictures/shrink-picture.ts';
import { unitsChoice, useWords } from '../../words/units.ts';
import { TickField, TypedField } from './field.tsx';
import { takeTool, useTool } from './place-hand.ts';
import { parseTyped, shownLength } from './typed-length.ts';
import { words } from './words.ts';

const views = ['side', 'top'] as const satisfies readonly UnderlayView[];

const FileButton = ({ says, onFile }: { says: string; onFile: (file: File) => void }): ReactNode => {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" className="edit-link" onClick={() => input.current?.click()}>
        {says}
      </button>
      <input
        ref={input}
        type="file"
        accept="image/jpeg,image/png,image/webp"
        hidden
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          if (file !== undefined) onFile(file);
          event.target.value = '';
        }}
      />
    </>
  );
};

const Scale = ({ underlay }: { underlay: Underlay }): ReactNode => {
  const edit = useEdit();
  const units = unitsChoice.use();
  const tool = useTool();
  const [isLevel, setIsLevel] = useState(false);
  const { from, to } = underlay;
  const apartM = Math.hypot(to.alongM - from.alongM, to.acrossM - from.acrossM);
  const put = (typedM: number): void => {
    const fixes = scaledFixes(underlay, { points: [from, to], apartM: typedM, level: isLevel });
    edit([{ edit: 'set-underlay', params: { ...underlay, ...fixes } }]);
  };
  return (
    <>
      <button
        type="button"
        className="edit-link"
        aria-pressed={tool === 'points'}
        onClick={() => takeTool(tool === 'points' ? 'move' : 'points')}
      >
        {words.markPoints}
      </button>
      {tool === 'points' ? <p className="quiet">{words.toolSays.points}</p> : null}
      <TypedField
        label={words.apart}
        name="apart"
        shown={shownLength(apartM, units)}
        wrong={words.wrongLength}
        parse={(text) => {
          const typedM = parseTyped(text);
          return typedM === undefined || typedM < 0.05 ? undefined : typedM;
        }}
        onPut={put}
      />
      <TickField label={words.level} isTicked={isLevel} onTick={setIsLevel} />
    </>
  );
};

const Kept = ({ underlay, onFile }: { underlay: Underlay; onFile: (file: File) => void }): ReactNode => {
  const edit = useEdit();
  const picture = usePicture(underlay.picture.hash);
  const { view, hidden, mirrored, ...rest } = underlay;
  const set = (to: { readonly hidden?: boolean; readonly mirrored?: boolean }): void => {
    const flags = { hidden: hidden === true, mirrored: mirrored === true, ...to };
    const fixes = to.mirrored === undefined ? {} : mirroredFixes(underlay);
    const said = {
      ...(flags.mirrored ? { mirrored: true } : {}),
      ...(flags.hidden ? { hidden: true } : {}),
    };
    edit([{ edit: 'set-underlay', params: { view, ...rest, ...fixes, ...said } }]);
  };
  return (
    <>
      {picture.kind === 'here' && boatOfFolder() === undefined ? <p className="quiet">{words.pictureInPage}</p> : null}
      <div className="boat-actions">
        <button type="button" className="edit-link" onClick={() => set({ hidden: hidden !== true })}>
          {hidden === true ? words.show : words.hide}
        </button>
        <FileButton says={words.exchange} onFile={onFile} />
        <button
          type="button"
          className="edit-link"
          onClick={() => edit([{ edit: 'remove-underlay', params: { view } }])}
        >
          {words.takeAway}
        </button>
      </div>
      {hidden === true ? null : (
        <>
          <TickField
            label={words.mirrored}
            isTicked={mirrored === true}
            onTick={(isMirrored) => set({ mirrored: isMirrored })}
          />
          <Scale underlay={underlay} />
        </>
      )}
    </>
  );
};

const Missing = ({ underlay }: { underlay: Underlay }): ReactNode => {
  const picture = usePicture(underlay.picture.hash);
  return picture.kind === 'missing' ? (
    <p className="boat-wrong">{words.pictureMissing(words.viewOf[underlay.view])}</p>
  ) : null;
};

/** Says of each picture that the boat file names and the folder has not. */
export const MissingPictures = ({ boat }: { boat: Boat }): ReactNode =>
  (boat.underlays ?? []).map((underlay) => <Missing key={underlay.view} underlay={underlay} />);

/** The photo or scan of the boat’s plan under each view: chosen or dropped, scaled, hidden, taken away. */
export const UnderlayBlock = ({ boat }: { boat: Boat }): ReactNode => {
  const edit = useEdit();
  const say = useWords();
  const [says, setSays] = useState('');
  const take = async (view: UnderlayView, file: File): Promise<void> => {
    setSays(words.pictureBusy);
    const made = await shrinkPicture(file);
    if ('refusal' in made) {
      setSays(made.refusal);
      return;
    }
    const whyNot = await keepPicture(made);
    if (whyNot !== undefined) {
      setSays(words.pictureNotKept(whyNot));
      return;
    }
    setSays('');
    const { picture } = made;
    const fixes = firstFixes({ ...picture, lengthM: boat.hull.lengthM });
    edit([{ edit: 'set-underlay', params: { view, picture, ...fixes } }]);
  };
  const drop = (event: DragEvent, view: UnderlayView): void => {
    const [file] = event.dataTransfer.files;
    if (file === undefined) return;
    // a file dropped elsewhere on the page is a boat
    event.preventDefault();
    event.stopPropagation();
    void take(view, file);
  };
  return (
    <details className="boat-ticks underlays">
      <summary>{words.underlay}</summary>
      <p className="quiet">{words.underlayHelp}</p>
      <p role="status" className={says === '' ? 'unseen' : undefined}>
        {says}
      </p>
      {views.map((view) => {
        const underlay = boat.underlays?.find((one) => one.view === view);
        const onFile = (file: File): void => void take(view, file);
        return (
          <section
            key={view}
            className="underlay-drop"
            aria-label={say(words.viewOf[view])}
            onDragOver={(event) => event.preventDefault()}
            onDrop={(event) => drop(event, view)}
          >
            <h3>{words.viewOf[view]}</h3>
            {underlay === undefined ? (
              <FileButton says={words.choose[view]} onFile={onFile} />
            ) : (
              <Kept underlay={underlay} onFile={onFile} />
            )}
          </section>
        );
      })}
    </details>
  );
};
