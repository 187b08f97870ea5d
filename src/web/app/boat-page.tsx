import { type ReactNode, type RefObject, useCallback, useMemo, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import type { Failure } from '../../core/blackouts-shape.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { SearchWords } from '../../papers/lists/search-words.ts';
import { type LightStore, lightStore } from '../drawing/light-store.ts';
import type { SheetHandle } from '../drawing/sheet-view.tsx';
import type { PlanAnswer } from '../workers/protocol.ts';
import type { CardChoice } from './cards/card-choice.ts';
import { useCableOfAddress } from './cards/use-cable-of-address.ts';
import { type CardState, useCard } from './cards/use-card.ts';
import { courseFacts } from './course/course-facts.ts';
import { CourseLine } from './course/course-line.tsx';
import { HintSlot } from './hints/hint-slot.tsx';
import { putHintAway } from './hints/hint-store.ts';
import { useFoundWork } from './log/found-work.ts';
import { useDone } from './log/use-done.ts';
import { useTested } from './log/use-tested.ts';
import { MarginView } from './margin/margin-view.tsx';
import type { Note } from './margin/notes.ts';
import type { Pull } from './pull-out/pull.ts';
import type { StepId } from './route.ts';
import { SheetChoice } from './sheet/sheet-choice.tsx';
import { SheetFrame } from './sheet/sheet-frame.tsx';
import { useBoatView } from './sheet/use-boat-view.ts';
import { useSheetSize } from './sheet/use-sheet-size.ts';
import { needsSheetChoice, useLineDiagram } from './steps/needs/lanes/use-line-diagram.ts';
import { powerSheetChoice, usePowerDrawing } from './steps/power/use-power-drawing.ts';
import { useStep } from './steps/steps.ts';
import { usePart } from './use-part.ts';

// brought once the page stands: no part of the way to the first picture
const bringCards = () => import('./cards/card-view.tsx');
const bringDrag = () => import('./sheet/sheet-drag.tsx');
const bringNext = () => import('./next/next-line.tsx');
const bringPull = () => import('./pull-out/pull-out-card.tsx');

interface BoatPageProps {
  readonly answer: PlanAnswer;
  readonly step: StepId;
  /** the label of the cable that the address names */
  readonly cable: string | undefined;
  readonly hrefOf: (step: StepId) => string;
  /** what the planner is doing now, and how to stop it */
  readonly progress: SearchWords | undefined;
  readonly onStop: () => void;
}

const noteOf = (margin: HTMLElement | null, finding: string): Element | null | undefined =>
  margin?.querySelector(`[data-finding="${CSS.escape(finding)}"]`);

/** A note, out of the fold of those that belong to other steps. */
const openedNote = (margin: HTMLElement | null, finding: string): Element | null | undefined => {
  const note = noteOf(margin, finding);
  note?.closest('details.notes-elsewhere')?.setAttribute('open', '');
  return note;
};

/** Brings the first note about any of the ids into sight. */
const bringNote = (margin: HTMLElement | null, ids: readonly string[], notes: readonly Note[]): void => {
  const note = notes.find((one) => one.lights.some((id) => ids.includes(id)));
  if (note === undefined) return;
  openedNote(margin, note.finding.id)?.scrollIntoView({ block: 'nearest', behavior: 'instant' });
};

interface Picking {
  readonly isList: boolean;
  readonly switchList: () => void;
  /** picks on the drawing, and brings its note into sight */
  readonly pick: (ids: readonly string[]) => void;
  /** picks in the margin or the list, and takes the drawing there; `choice` is the card that opens with it */
  readonly show: (ids: readonly string[], choice?: CardChoice) => void;
}

const usePicking = ({
  lights,
  notes,
  card,
  units,
  margin,
  sheet,
}: {
  lights: LightStore;
  card: CardState;
  /** ids of the units of the boat */
  units: ReadonlySet<string>;
  notes: readonly Note[];
  margin: RefObject<HTMLElement | null>;
  sheet: RefObject<SheetHandle | null>;
}): Picking => {
  const [isList, setIsList] = useState(false);
  const { maker, open } = card;
  const pick = useCallback(
    (ids: readonly string[]) => {
      const unit = ids.find((id) => units.has(id));
      if (unit !== undefined) putHintAway('sheet');
      lights.pick(ids);
      open(unit === undefined ? undefined : { kind: 'unit', id: unit });
      bringNote(margin.current, ids, notes);
    },
    [lights, margin, notes, units, open],
  );
  const show = (ids: readonly string[], choice?: CardChoice): void => {
    const lit = choice === undefined ? ids : (maker?.cardOf(choice)?.lights ?? ids);
    // before the list goes, so that the card knows what opened it
    open(choice);
    // A hidden drawing has no measures, so it must stand before it is moved.
    flushSync(() => setIsList(false));
    lights.pick(lit);
    sheet.current?.show(lit);
    // where the page is one column the drawing has just scrolled the card away
    margin.current?.querySelector('.card-head')?.scrollIntoView({ block: 'center', behavior: 'instant' });
  };
  return { isList, switchList: () => setIsList(!isList), pick, show };
};

/** The work as it was last known: a plan made in haste right after an edit has none, and the one that follows it has. */
const useLastWork = ({ boat }: Plan, work: Plan['work']): Plan['work'] => {
  const [last, setLast] = useState({ boat, work });
  if (work !== undefined && last.work !== work) setLast({ boat, work });
  return work ?? (last.boat === boat ? last.work : undefined);
};

/** One boat: the course line, the sheet, the margin; what is picked in one is lit in the others. */
export const BoatPage = ({ answer, step, cable, hrefOf, progress, onStop }: BoatPageProps): ReactNode => {
  const { boat, plan, titles } = answer;
  const frame = useRef<HTMLDivElement>(null);
  const margin = useRef<HTMLElement>(null);
  const sheet = useRef<SheetHandle>(null);
  const [lights] = useState(lightStore);
  const size = useSheetSize(frame);
  const view = useBoatView(answer, size, step);
  const isOneLine = powerSheetChoice.use() === 'one line';
  const oneLine = usePowerDrawing(answer, { size, isAsked: step === 'power' && isOneLine });
  const isLanes = needsSheetChoice.use() === 'lines of data';
  const lanes = useLineDiagram(answer, { size, isAsked: step === 'needs' && isLanes });
  const card = useCard(answer, lights);
  const units = useMemo(() => new Set(boat.kit.map(({ id }) => id)), [boat]);
  const { isList, switchList, pick, show } = usePicking({ lights, notes: view.notes, card, units, margin, sheet });
  useCableOfAddress(cable, { card, lights, sheet, isDrawn: view.drawn !== undefined });
  const cards = usePart(bringCards);
  const drag = usePart(bringDrag);
  const puller = usePart(bringPull);
  const next = usePart(bringNext);
  // what is pulled out to see what goes dark; undefined while nothing may be
  const [pull, setPull] = useState<Pull | undefined>(undefined);
  const putBack = (): void => {
    setPull(undefined);
    document.querySelector<HTMLElement>('.pull-switch')?.focus({ preventScroll: true });
  };
  const pullOut = (failure: Failure): void => {
    putHintAway('pull');
    flushSync(() => setPull({ ids: [failure.fails], failure }));
    margin.current?.querySelector<HTMLElement>('.pull-card h2')?.focus();
  };
  const [openTable, setOpenTable] = useState<string | undefined>(undefined);
  const closeTable = (): void => {
    flushSync(() => setOpenTable(undefined));
    document.querySelector<HTMLElement>('.table-switch')?.focus();
  };
  const tested = useTested(boat.name, plan.tests);
  const done = useDone(boat.name);
  const work = useLastWork(plan, useFoundWork(plan));
  const part = useStep(step);
  const tables = part?.tables ?? [];
  const table = tables.find(({ words }) => words === openTable);
  const OnSheet = part?.OnSheet ?? drag?.SheetDrag;
  const choiceOf: Partial<Record<StepId, ReactNode>> = {
    needs: <SheetChoice choice={needsSheetChoice} />,
    power: <SheetChoice choice={powerSheetChoice} />,
  };
  return (
    <div className="boat-page">
      <div className="course-side">
        <div className="next-room">
          {next === undefined ? null : (
            <next.NextLine
              boat={boat}
              plan={work === undefined ? plan : { ...plan, work }}
              tested={tested}
              done={done}
              isSettled={answer.settled}
              here={step}
              hrefOf={hrefOf}
            />
          )}
        </div>
        <HintSlot place="course" step={step} />
        <CourseLine waypoints={courseFacts({ boat, plan, tested, work, done })} here={step} hrefOf={hrefOf} />
      </div>
      <SheetFrame
        boatName={boat.name}
        view={view}
        lights={lights}
        isList={isList}
        onSwitch={switchList}
        table={
          table === undefined ? null : <table.Table boat={boat} plan={plan} lights={lights} onClose={closeTable} />
        }
        drag={
          OnSheet === undefined ? null : (
            <OnSheet
              boat={boat}
              plan={plan}
              frame={frame}
              lights={lights}
              points={view.drawn?.points}
              views={view.drawn?.views}
            />
          )
        }
        tableSwitches={tables.map(({ words }) => ({
          words,
          isOpen: words === openTable,
          onPress: () => {
            putHintAway('table');
            setOpenTable(words === openTable ? undefined : words);
          },
        }))}
        inPlace={oneLine ?? lanes}
        choice={choiceOf[step] ?? null}
        instead={part?.Instead === undefined ? null : <part.Instead boat={boat} plan={plan} lights={lights} />}
        pages={part?.Pages === undefined ? null : <part.Pages boat={boat} plan={plan} lights={lights} />}
        onPick={pick}
        hasTrunk={plan.buses.length > 0}
        hasKit={boat.kit.length > 0}
        isPulling={pull !== undefined}
        onPullSwitch={() => {
          putHintAway('pull');
          if (pull === undefined) setPull({ ids: [] });
          else putBack();
        }}
        hint={<HintSlot place="sheet" step={step} />}
        onShow={show}
        frame={frame}
        sheet={sheet}
      />
      <MarginView
        ref={margin}
        boat={boat}
        plan={plan}
        step={part}
        at={step}
        notes={view.notes}
        titles={titles}
        isSettled={answer.settled}
        card={
          pull !== undefined && puller !== undefined ? (
            <puller.PullOutCard
              boat={boat}
              plan={plan}
              pull={pull}
              frame={frame}
              drawn={oneLine ?? lanes ?? view.drawn}
              onPull={setPull}
              onLeave={putBack}
            />
          ) : cards === undefined || card.content === undefined || card.maker === undefined ? null : (
            <cards.CardView
              content={card.content}
              maker={card.maker}
              rows={view.rows}
              titles={titles}
              lights={lights}
              goBack={card.goBack}
              onGoOn={card.goOn}
              onClose={card.close}
              onNote={({ finding, lights: ids }) => {
                lights.pick(ids);
                openedNote(margin.current, finding.id)?.querySelector('button')?.focus();
              }}
            />
          )
        }
        lights={lights}
        onShow={show}
        onPull={pullOut}
        progress={progress}
        onStop={onStop}
      />
    </div>
  );
};
