import { type DragEvent, type ReactNode, useCallback, useRef, useState } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Underlay, UnderlayView } from '../../../../core/boat/underlay.ts';
import { mirroredFixes, scaledFixes } from '../../../../core/boat/underlay-placement.ts';
import { CommandButton } from '../../commands/command-button.tsx';
import { useEdit } from '../../edit-context.ts';
import { TickedField, TypedField } from '../../forms/typed-field.tsx';
import { parseTyped, shownLength } from '../../forms/typed-length.ts';
import { boatOfFolder, usePicture } from '../../pictures/picture-keeper.ts';
import { unitsChoice, useWords } from '../../words/units.ts';
import { takeTool, useTool } from './place-hand.ts';
import { takePicture } from './take-picture.ts';
import { useUnderlayCommands } from './use-underlay-commands.ts';
import { words } from './words.ts';

const views = ['side', 'top'] as const satisfies readonly UnderlayView[];

const FileButton = ({
  says,
  view,
  onFile,
}: {
  says: string;
  view: UnderlayView;
  onFile: (file: File) => void;
}): ReactNode => {
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
        data-view={view}
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
      <TickedField label={words.level} isTicked={isLevel} onTick={setIsLevel} />
    </>
  );
};

const Kept = ({ underlay, onFile }: { underlay: Underlay; onFile: (file: File) => void }): ReactNode => {
  const edit = useEdit();
  const picture = usePicture(underlay.picture.hash);
  const { view, hidden, mirrored } = underlay;
  const mirror = (isMirrored: boolean): void => {
    const { mirrored: _, ...upright } = { ...underlay, ...mirroredFixes(underlay) };
    edit([{ edit: 'set-underlay', params: isMirrored ? { ...upright, mirrored: true } : upright }]);
  };
  return (
    <>
      {picture.kind === 'here' && boatOfFolder() === undefined ? <p className="quiet">{words.pictureInPage}</p> : null}
      <div className="boat-actions">
        <CommandButton id={`picture-shown-${view}`} className="edit-link" />
        <FileButton says={words.exchange} view={view} onFile={onFile} />
        <CommandButton id={`picture-away-${view}`} className="edit-link" />
      </div>
      {hidden === true ? null : (
        <>
          <TickedField label={words.mirrored} isTicked={mirrored === true} onTick={mirror} />
          <Scale underlay={underlay} />
        </>
      )}
    </>
  );
};

/** The photo or scan of the boat’s plan under each view: chosen or dropped, scaled, hidden, taken away. */
export const UnderlayBlock = ({ boat }: { boat: Boat }): ReactNode => {
  const edit = useEdit();
  const say = useWords();
  const [says, setSays] = useState('');
  const take = async (view: UnderlayView, file: File): Promise<void> => {
    setSays(words.pictureBusy);
    setSays(await takePicture({ boat, edit }, view, file));
  };
  const choose = useCallback((view: UnderlayView): void => {
    document.querySelector<HTMLInputElement>(`.underlays input[data-view="${view}"]`)?.click();
  }, []);
  useUnderlayCommands({ boat, edit }, choose);
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
              <FileButton says={words.choose[view]} view={view} onFile={onFile} />
            ) : (
              <Kept underlay={underlay} onFile={onFile} />
            )}
          </section>
        );
      })}
    </details>
  );
};
