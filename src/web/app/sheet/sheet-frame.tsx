import { type ReactNode, type RefObject, useState } from 'react';
import type { LightStore } from '../../drawing/light-store.ts';
import { type SheetHandle, SheetView } from '../../drawing/sheet-view.tsx';
import type { CardChoice } from '../cards/card-choice.ts';
import { usePart } from '../use-part.ts';
import type { DrawingWords } from '../words/drawing-words.tsx';
import type { InPlace } from './in-place.ts';
import type { SheetList } from './sheet-list.tsx';
import { type BoatView, curveChoice } from './use-boat-view.ts';
import { words } from './words.ts';

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
  /** what each table of this step is called, and how it is opened and closed */
  readonly tableSwitches: readonly {
    readonly words: string;
    readonly isOpen: boolean;
    readonly onPress: () => void;
  }[];
  /** the drawing that stands in place of the boat; absent while she is shown */
  readonly inPlace: InPlace | undefined;
  /** the choice between the two; null where there is none */
  readonly choice: ReactNode;
  /** what stands in place of the drawing and its tools; null where the drawing stands */
  readonly instead: ReactNode;
  /** pages that are made for paper only */
  readonly pages: ReactNode;
  /** false while nothing hangs on a backbone, so that no curve can be drawn along it */
  readonly hasTrunk: boolean;
  /** false while nothing is aboard that could be pulled out */
  readonly hasKit: boolean;
  /** whether a press pulls out what is pressed, to see what goes dark */
  readonly isPulling: boolean;
  /** what a newcomer is told once of the row under the drawing */
  readonly hint: ReactNode;
  readonly onPullSwitch: () => void;
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
      <legend className="unseen">{words.curve}</legend>
      {curveChoice.values.map((kind) => (
        <button key={kind} type="button" aria-pressed={kind === now} onClick={() => curveChoice.choose(kind)}>
          {words.curves[kind]}
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
  tableSwitches,
  inPlace,
  choice,
  hasTrunk,
  hasKit,
  isPulling,
  onPullSwitch,
  hasWords,
  onWords,
}: Omit<
  SheetFrameProps,
  'hint' | 'boatName' | 'view' | 'lights' | 'table' | 'drag' | 'instead' | 'pages' | 'onPick' | 'onShow' | 'frame'
> & {
  /** whether the words on the drawing are explained under it now */
  hasWords: boolean;
  onWords: () => void;
}): ReactNode => (
  <div className="sheet-tools">
    {isList ? null : (
      <>
        <button type="button" aria-label={words.smaller} onClick={() => sheet.current?.smaller()}>
          −
        </button>
        <button type="button" onClick={() => sheet.current?.fit()}>
          {words.wholeSheet}
        </button>
        <button type="button" aria-label={words.larger} onClick={() => sheet.current?.larger()}>
          +
        </button>
        {choice}
        {inPlace === undefined && hasTrunk ? <CurveButtons /> : null}
      </>
    )}
    {tableSwitches.map(({ words: table, isOpen, onPress }) => (
      <button key={table} type="button" className="table-switch" aria-expanded={isOpen} onClick={onPress}>
        {' '}
        {table}
      </button>
    ))}
    {isList || !hasKit ? null : (
      <button type="button" className="pull-switch" aria-pressed={isPulling} onClick={onPullSwitch}>
        {words.pullOut}
      </button>
    )}
    <button type="button" className="words-switch" aria-expanded={hasWords} onClick={onWords}>
      {words.words}
      <span className="unseen">{words.onDrawing}</span>
    </button>
    <button type="button" onClick={onSwitch}>
      {isList ? words.showDrawing : words.showList}
    </button>
  </div>
);

const bringSheetList = () => import('./sheet-list.tsx');

const LateSheetList = (given: Parameters<typeof SheetList>[0]): ReactNode => {
  const part = usePart(bringSheetList);
  return part === undefined ? null : <part.SheetList {...given} />;
};

const bringDrawingWords = () => import('../words/drawing-words.tsx');

const LateDrawingWords = (given: Parameters<typeof DrawingWords>[0]): ReactNode => {
  const part = usePart(bringDrawingWords);
  return part === undefined ? null : <part.DrawingWords {...given} />;
};

/** The middle of the page: the sheet, or the list that says the same in words. */
export const SheetFrame = (props: SheetFrameProps): ReactNode => {
  const { boatName, view, lights, isList, onPick, onShow, frame, sheet, table, drag, inPlace, instead, pages } = props;
  const [hasWords, setHasWords] = useState(false);
  const shown = inPlace ?? view.drawn;
  const of = inPlace?.says ?? words.drawingOf(boatName);
  return (
    <main className="sheet-frame" tabIndex={-1}>
      <div
        className={[
          'sheet-window',
          ...(inPlace?.isOnPages === true ? ['in-place'] : []),
          ...(props.isPulling ? ['pulling'] : []),
        ].join(' ')}
        ref={frame}
        hidden={isList || instead !== null}
      >
        {shown === undefined ? null : (
          <SheetView
            ref={sheet}
            drawing={shown.drawing}
            overview={shown.overview}
            label={words.drawingKeys(of)}
            lights={lights}
            onPick={onPick}
          />
        )}
        {inPlace === undefined ? drag : null}
      </div>
      {isList && instead === null ? (
        <LateSheetList rows={view.rows} onShow={({ id }) => onShow([id], { kind: 'unit', id })} />
      ) : null}
      {table}
      {hasWords && instead === null && shown !== undefined ? <LateDrawingWords drawing={shown.drawing} /> : null}
      {instead === null && table === null ? props.hint : null}
      {instead ?? <SheetTools {...props} hasWords={hasWords} onWords={() => setHasWords(!hasWords)} />}
      {pages}
    </main>
  );
};
