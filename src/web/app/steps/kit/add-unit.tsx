import { type KeyboardEvent, type ReactNode, useCallback, useEffect, useId, useMemo, useRef, useState } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import { placeUnit } from '../../../../core/kit/place-unit.ts';
import { replaceUnit } from '../../../../core/kit/replace-unit.ts';
import { type FoundUnit, foundUnits } from '../../../../papers/kit/found-units.ts';
import { type Draggable, dragOnDrawing } from '../../../drawing/drag-on-drawing.ts';
import { markSpot } from '../../../drawing/spots.ts';
import { useCommands } from '../../commands/use-commands.ts';
import { useEdit } from '../../edit-context.ts';
import { putHintAway } from '../../hints/hint-store.ts';
import { Explained } from '../../words/explained.tsx';
import type { StepMarginProps } from '../step.ts';
import { sayOfHand, takeUp, useKitHand } from './kit-hand.ts';
import { OpenSheet } from './own-sheets.tsx';
import { PhaseChoice } from './phase-choice.tsx';
import { PlaceChoice, type PlaceWish } from './place-choice.tsx';
import { placeGoals } from './place-goals.ts';
import { sheetOnPage } from './sheet-on-page.ts';
import { forgetSheet, useOwnSheets } from './use-own-sheets.ts';
import { words } from './words.ts';
import './kit.css';

/** So many of what is found are shown; a further word finds the others sooner than a longer list. */
const shown = 8;
const gripPx = 24;

const firstWish: PlaceWish = { fate: 'comes', phase: 1, withNeeds: true };

const keyOf = ({ sheet, isOwn }: FoundUnit): string => `${isOwn ? 'own ' : ''}${sheet.id}`;

/** Rows that can be dragged from the list onto the boat. */
const useRowDrags = (boat: Boat, found: readonly FoundUnit[], put: (unit: FoundUnit, place: string) => void) => {
  const list = useRef<HTMLUListElement>(null);
  useEffect(() => {
    const rows = list.current;
    if (rows === null) return undefined;
    const names = new Map(boat.places.map(({ id, name }) => [id, name]));
    const drags = found.map((unit): Draggable => {
      const grip = rows.querySelector(`[data-grip="${CSS.escape(keyOf(unit))}"]`);
      return {
        grips: () => (grip === null ? [] : [markSpot(grip)]),
        reachPx: gripPx,
        goals: () => {
          const sheet = sheetOnPage();
          return sheet === undefined ? [] : placeGoals(sheet.frame, sheet.points, boat.places);
        },
        onOver: (key) =>
          sayOfHand(key === undefined ? words.held(unit.name) : words.heldOver(unit.name, names.get(key) ?? key)),
        onDrop: (place) => put(unit, place),
        onLeave: () => sayOfHand(''),
      };
    });
    return dragOnDrawing(rows, drags);
  }, [boat, found, put]);
  return list;
};

const FoundRow = ({
  unit,
  isPicked,
  isReplacing,
  onPress,
  children,
}: {
  unit: FoundUnit;
  isPicked: boolean;
  isReplacing: boolean;
  onPress: () => void;
  children: ReactNode;
}): ReactNode => (
  <li className={isPicked ? 'kit-found picked-sheet' : 'kit-found'}>
    <button type="button" className="row-button" aria-expanded={isReplacing ? undefined : isPicked} onClick={onPress}>
      {unit.name}
      {unit.isOwn ? <span className="row-fact"> {words.own}</span> : null}
      <span className="row-fact kit-line"> {unit.says}</span>
    </button>
    {isReplacing ? null : (
      <span className="kit-grip" data-grip={keyOf(unit)} title={words.drag(unit.name)} aria-hidden="true">
        ⠿
      </span>
    )}
    {unit.isOwn && isPicked ? (
      <button
        type="button"
        className="press-link kit-forget"
        aria-label={words.forgetSheet(unit.name)}
        onClick={() => void forgetSheet(unit.sheet.id)}
      >
        {words.forget}
      </button>
    ) : null}
    {children}
  </li>
);

/** Finds a sheet by plain words, and puts a unit of it aboard: pick it, press its place. Or drag it onto the boat. */
export const AddUnit = ({ boat }: Pick<StepMarginProps, 'boat'>): ReactNode => {
  const edit = useEdit();
  const { sheets: own } = useOwnSheets();
  const heading = useId();
  const field = useRef<HTMLInputElement>(null);
  const { replaces } = useKitHand();
  const [text, setText] = useState('');
  const [picked, setPicked] = useState<string | undefined>(undefined);
  const [wish, setWish] = useState(firstWish);
  const [phase, setPhase] = useState<number | undefined>(undefined);
  const all = useMemo(() => foundUnits(text, own), [text, own]);
  const found = useMemo(() => (text.trim() === '' ? all : all.slice(0, shown)), [all, text]);
  const leaving = boat.kit.find(({ id }) => id === replaces);

  const close = useCallback((): void => {
    setPicked(undefined);
    takeUp({});
    setPhase(undefined);
    setText('');
    field.current?.focus({ preventScroll: true });
  }, []);
  const put = useCallback(
    ({ sheet }: FoundUnit, place: string): void => {
      const { edits, says } = placeUnit(boat, { sheet, place, ...wish });
      putHintAway('kit');
      edit(edits, says);
      close();
    },
    [boat, wish, edit, close],
  );
  const list = useRowDrags(boat, found, put);
  // the drawing takes the press of a place while something is picked
  useEffect(() => {
    const unit = found.find((one) => keyOf(one) === picked);
    if (unit !== undefined) takeUp({ picked: { sheet: unit.sheet, place: (place) => put(unit, place) } });
  }, [found, picked, put]);
  useEffect(() => () => takeUp({}), []);
  useEffect(() => {
    if (replaces !== undefined) field.current?.focus();
  }, [replaces]);

  const press = (unit: FoundUnit): void => {
    if (leaving === undefined) {
      const isOpen = picked === keyOf(unit);
      setPicked(isOpen ? undefined : keyOf(unit));
      if (isOpen) takeUp({});
      return;
    }
    const made = replaceUnit(boat, leaving.id, unit.sheet, phase);
    if (made !== undefined) edit(made.edits, made.says);
    close();
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const [first] = found;
    if (event.key === 'Enter' && first !== undefined && text.trim() !== '') press(first);
    else if (event.key === 'Escape') close();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  useCommands(
    useMemo(
      () => [
        {
          id: 'put-unit-aboard',
          group: 'change',
          says: words.put,
          foundBy: words.putFoundBy,
          run: () => field.current?.focus(),
        },
      ],
      [],
    ),
  );

  return (
    <section className="block kit-add" aria-labelledby={heading}>
      <h2 id={heading}>{leaving === undefined ? words.put : words.inPlaceOf(leaving.name)}</h2>
      {leaving === undefined ? null : (
        <>
          <p className="quiet">
            {words.inPlaceHelp}{' '}
            <button type="button" className="press-link" onClick={close}>
              {words.leaveIt}
            </button>
          </p>
          <p className="kit-wish">
            <PhaseChoice label={words.inPhase} phase={phase ?? leaving.phase ?? 1} isLabelSeen onPhase={setPhase} />
          </p>
        </>
      )}
      <label className="kit-search">
        <span>{words.search}</span>
        <input
          ref={field}
          type="search"
          autoComplete="off"
          placeholder={words.searchHint}
          value={text}
          onChange={({ target }) => {
            setText(target.value);
            setPicked(undefined);
          }}
          onKeyDown={onKeyDown}
        />
      </label>
      <p className="quiet kit-count" role="status">
        {text.trim() === '' ? words.offered : all.length === 0 ? words.noneFound : words.found(all.length)}
      </p>
      <ul className={text === '' && picked === undefined ? 'kit-results is-idle' : 'kit-results'} ref={list}>
        {found.map((unit) => (
          <FoundRow
            key={keyOf(unit)}
            unit={unit}
            isPicked={picked === keyOf(unit)}
            isReplacing={leaving !== undefined}
            onPress={() => press(unit)}
          >
            {picked !== keyOf(unit) || leaving !== undefined ? null : (
              <PlaceChoice
                boat={boat}
                sheet={unit.sheet}
                name={unit.name}
                wish={wish}
                onWish={setWish}
                onPlace={(place) => put(unit, place)}
              />
            )}
          </FoundRow>
        ))}
      </ul>
      {all.length > found.length ? (
        <p className="quiet">
          <Explained text={words.more(all.length - found.length)} />
        </p>
      ) : null}
      <OpenSheet />
    </section>
  );
};
