import type { ReactNode, RefObject } from 'react';
import type { LightStore } from '../drawing/light-store.ts';
import { type SheetHandle, SheetView } from '../drawing/sheet-view.tsx';
import { SheetList } from './sheet-list.tsx';
import type { BoatView } from './use-boat-view.ts';

interface SheetFrameProps {
  readonly boatName: string;
  readonly view: BoatView;
  readonly lights: LightStore;
  readonly isList: boolean;
  readonly onSwitch: () => void;
  /** a table over the lower part of the sheet, while somebody types in it */
  readonly table: ReactNode;
  /** how the table is opened at this step; absent where there is none */
  readonly onTable: (() => void) | undefined;
  readonly onPick: (ids: readonly string[]) => void;
  readonly onShow: (ids: readonly string[]) => void;
  /** the window whose size the sheet takes */
  readonly frame: RefObject<HTMLDivElement | null>;
  readonly sheet: RefObject<SheetHandle | null>;
}

/** The row under the drawing: its size, and the same in words. */
const SheetTools = ({
  sheet,
  isList,
  onSwitch,
  onTable,
}: Pick<SheetFrameProps, 'sheet' | 'isList' | 'onSwitch' | 'onTable'>): ReactNode => (
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
      </>
    )}
    {onTable === undefined ? null : (
      <button type="button" onClick={onTable}>
        table of needs
      </button>
    )}
    <button type="button" className="list-switch" onClick={onSwitch}>
      {isList ? 'show the drawing' : 'show as a list'}
    </button>
  </div>
);

/** The middle of the page: the sheet, or the list that says the same in words. */
export const SheetFrame = (props: SheetFrameProps): ReactNode => {
  const { boatName, view, lights, isList, onPick, onShow, frame, sheet, table } = props;
  return (
    <main className="sheet-frame" tabIndex={-1}>
      <div className="sheet-window" ref={frame} hidden={isList}>
        {view.drawn === undefined ? null : (
          <SheetView
            ref={sheet}
            drawing={view.drawn.drawing}
            label={`Drawing of ${boatName}. Arrow keys move it, plus and minus change its size, 0 shows the whole sheet.`}
            lights={lights}
            onPick={onPick}
          />
        )}
      </div>
      {isList ? <SheetList rows={view.rows} onShow={(row) => onShow([row.id])} /> : null}
      {table}
      <SheetTools {...props} />
    </main>
  );
};
