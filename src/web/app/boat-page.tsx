import { type ReactNode, type RefObject, useCallback, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { type LightStore, lightStore } from '../drawing/light-store.ts';
import type { SheetHandle } from '../drawing/sheet-view.tsx';
import type { PlanAnswer } from '../workers/protocol.ts';
import { courseFacts } from './course-facts.ts';
import { CourseLine } from './course-line.tsx';
import { MarginView } from './margin-view.tsx';
import { NeedsTable } from './needs/needs-table.tsx';
import type { Note } from './notes.ts';
import type { StepId } from './route.ts';
import { SheetFrame } from './sheet-frame.tsx';
import { useBoatView } from './use-boat-view.ts';
import { useSheetSize } from './use-sheet-size.ts';

interface BoatPageProps {
  readonly answer: PlanAnswer;
  readonly step: StepId;
  readonly hrefOf: (step: StepId) => string;
  /** what the planner is doing now, and how to stop it */
  readonly progress: string | undefined;
  readonly onStop: () => void;
}

/** Brings the first note about any of the ids into sight. */
const bringNote = (margin: HTMLElement | null, ids: readonly string[], notes: readonly Note[]): void => {
  const note = notes.find((one) => one.lights.some((id) => ids.includes(id)));
  if (note === undefined) return;
  margin
    ?.querySelector(`[data-finding="${CSS.escape(note.finding.id)}"]`)
    ?.scrollIntoView({ block: 'nearest', behavior: 'instant' });
};

interface Picking {
  /** what was picked on the drawing; a note that is picked says itself what it is */
  readonly picked: readonly string[];
  readonly isList: boolean;
  readonly switchList: () => void;
  /** picks on the drawing, and brings its note into sight */
  readonly pick: (ids: readonly string[]) => void;
  /** picks in the margin or the list, and takes the drawing there */
  readonly show: (ids: readonly string[]) => void;
}

const usePicking = ({
  lights,
  notes,
  margin,
  sheet,
}: {
  lights: LightStore;
  notes: readonly Note[];
  margin: RefObject<HTMLElement | null>;
  sheet: RefObject<SheetHandle | null>;
}): Picking => {
  const [picked, setPicked] = useState<readonly string[]>([]);
  const [isList, setIsList] = useState(false);
  const pick = useCallback(
    (ids: readonly string[]) => {
      lights.pick(ids);
      setPicked(ids);
      bringNote(margin.current, ids, notes);
    },
    [lights, margin, notes],
  );
  const show = (ids: readonly string[]): void => {
    // A hidden drawing has no measures, so it must stand before it is moved.
    flushSync(() => {
      setIsList(false);
      setPicked([]);
    });
    lights.pick(ids);
    sheet.current?.show(ids);
  };
  return { picked, isList, switchList: () => setIsList(!isList), pick, show };
};

/** One boat: the course line, the sheet, the margin; what is picked in one is lit in the others. */
export const BoatPage = ({ answer, step, hrefOf, progress, onStop }: BoatPageProps): ReactNode => {
  const { boat, plan, titles } = answer;
  const frame = useRef<HTMLDivElement>(null);
  const margin = useRef<HTMLElement>(null);
  const sheet = useRef<SheetHandle>(null);
  const [lights] = useState(lightStore);
  const view = useBoatView(answer, useSheetSize(frame));
  const { picked, isList, switchList, pick, show } = usePicking({ lights, notes: view.notes, margin, sheet });
  const [isTable, setIsTable] = useState(false);
  return (
    <div className="boat-page">
      <CourseLine waypoints={courseFacts({ boat, plan })} here={step} hrefOf={hrefOf} />
      <SheetFrame
        boatName={boat.name}
        view={view}
        lights={lights}
        isList={isList}
        onSwitch={switchList}
        table={
          isTable && step === 'needs' ? (
            <NeedsTable boat={boat} plan={plan} lights={lights} onClose={() => setIsTable(false)} />
          ) : null
        }
        onTable={step === 'needs' && !isTable ? () => setIsTable(true) : undefined}
        onPick={pick}
        onShow={show}
        frame={frame}
        sheet={sheet}
      />
      <MarginView
        ref={margin}
        boat={boat}
        plan={plan}
        step={step}
        notes={view.notes}
        titles={titles}
        picked={view.rows.find((row) => picked.includes(row.id))}
        lights={lights}
        onShow={show}
        progress={progress}
        onStop={onStop}
      />
    </div>
  );
};
