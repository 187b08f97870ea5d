import { type ReactNode, type RefObject, useState } from 'react';
import type { LightStore } from '../drawing/light-store.ts';
import { type SheetHandle, SheetView } from '../drawing/sheet-view.tsx';
import type { CardChoice } from './cards/card-choice.ts';
import type { SheetList } from './sheet-list.tsx';
import { type BoatView, curveChoice } from './use-boat-view.ts';
import { usePart } from './use-part.ts';
import { DrawingWords } from './words/drawing-words.tsx';

interface SheetFrameProps {
  readonly boatName: string;
  readonly view: BoatView;
  readonly lights: LightStore;
  readonly isList: boolean;
  readonly onSwitch: () => void;
  /** a table over the lower part of the sheet, while somebody types in it */
  readonly table: ReactNode;
  /** what may be dragged on the drawing */
  readonly drag: ReactNode;
  /** how the table is opened and closed at this step; absent where there is none */
  readonly onTable: (() => void) | undefined;
  readonly onPick: (ids: readonly string[]) => void;
  readonly onShow: (ids: readonly string[], card?: CardChoice) => void;
  /** the window whose size the sheet takes */
  readonly frame: RefObject<HTMLDivElement | null>;
  readonly sheet: RefObject<SheetHandle | null>;
}

const CurveButtons = (): ReactNode => {
  const now = curveChoice.use();
  return (
    <fieldset className="lights curves">
      <legend className="unseen">Curve along the trunk</legend>
      {curveChoice.values.map((kind) => (
        <button key={kind} type="button" aria-pressed={kind === now} onClick={() => curveChoice.choose(kind)}>
          {kind}
        </button>
      ))}
    </fieldset>
  );
};

/** The row under the drawing: its size, and the same in words. */
const SheetTools = ({
  sheet,
  isList,
  onSwitch,
  onTable,
  table,
  hasWords,
  onWords,
}: Pick<SheetFrameProps, 'sheet' | 'isList' | 'onSwitch' | 'onTable' | 'table'> & {
  /** whether the words on the drawing are explained under it now */
  hasWords: boolean;
  onWords: () => void;
}): ReactNode => (
  <div className="sheet-tools">
    {isList ? null : (
      <>
        <button type="button" aria-label="Smaller" onClick={() => sheet.current?.smaller()}>
          −
        </button>
        <button type="button" onClick={() => sheet.current?.fit()}>
          whole sheet
        </button>
        <button type="button" aria-label="Larger" onClick={() => sheet.current?.larger()}>
          +
        </button>
        <CurveButtons />
      </>
    )}
    {onTable === undefined ? null : (
      <button type="button" className="table-switch" aria-expanded={table !== null} onClick={onTable}>
        table of needs
      </button>
    )}
    <button type="button" className="words-switch" aria-expanded={hasWords} onClick={onWords}>
      words<span className="unseen"> on the drawing</span>
    </button>
    <button type="button" onClick={onSwitch}>
      {isList ? 'show the drawing' : 'show as a list'}
    </button>
  </div>
);

const bringSheetList = () => import('./sheet-list.tsx');

const LateSheetList = (given: Parameters<typeof SheetList>[0]): ReactNode => {
  const part = usePart(bringSheetList);
  return part === undefined ? null : <part.SheetList {...given} />;
};

/** The middle of the page: the sheet, or the list that says the same in words. */
export const SheetFrame = (props: SheetFrameProps): ReactNode => {
  const { boatName, view, lights, isList, onPick, onShow, frame, sheet, table, drag } = props;
  const [hasWords, setHasWords] = useState(false);
  return (
    <main className="sheet-frame" tabIndex={-1}>
      <div className="sheet-window" ref={frame} hidden={isList}>
        {view.drawn === undefined ? null : (
          <SheetView
            ref={sheet}
            drawing={view.drawn.drawing}
            overview={view.drawn.overview}
            label={`Drawing of ${boatName}. Arrow keys move it, plus and minus change its size, 0 shows the whole sheet.`}
            lights={lights}
            onPick={onPick}
          />
        )}
        {drag}
      </div>
      {isList ? <LateSheetList rows={view.rows} onShow={({ id }) => onShow([id], { kind: 'unit', id })} /> : null}
      {table}
      {hasWords && view.drawn !== undefined ? <DrawingWords drawing={view.drawn.drawing} /> : null}
      <SheetTools {...props} hasWords={hasWords} onWords={() => setHasWords(!hasWords)} />
    </main>
  );
};
