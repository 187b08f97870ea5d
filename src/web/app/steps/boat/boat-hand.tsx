import { type ReactNode, useCallback, useEffect, useRef } from 'react';
import { type Draggable, dragOnDrawing } from '../../../drawing/drag-on-drawing.ts';
import { useEdit } from '../../edit-context.ts';
import '../../sheet/sheet-drag.css';
import { unitsChoice, useWords } from '../../words/units.ts';
import type { OnSheetProps } from '../step.ts';
import { focusOnName } from './focus-on-name.ts';
import { type PlaceDragging, placeDrags } from './place-drags.ts';
import { heldNow, takeTool, tools, usePlaceHand, useTool } from './place-hand.ts';
import { PlaceLayer } from './place-layer.tsx';
import { gridM } from './snap.ts';
import { underlayDrags } from './underlay-hand.ts';
import { useArrowMoves } from './use-arrow-moves.ts';
import { useBoatCommands } from './use-boat-commands.ts';
import { usePictureDrop } from './use-picture-drop.ts';

/** Says what is in the hand. */
const HandSays = (): ReactNode => {
  const { says } = usePlaceHand();
  const words = useWords();
  return (
    <div className="drag-says" role="status" hidden={says === ''}>
      <p>{words(says)}</p>
    </div>
  );
};

/** What can be taken hold of: places and ways, and the marks of the pictures under them, which go last. */
const everyDrag = (on: PlaceDragging): Draggable[] => {
  const underlays = on.boat.underlays ?? [];
  const isPoints = on.tool === 'points';
  return [...placeDrags(on), ...underlayDrags({ ...on, underlays }, { isPoints, inHand: heldNow })];
};

/** The boat under the hand: her places and ways, to be picked, moved, added, split and joined. */
export const BoatHand = ({ boat, frame, lights, views }: OnSheetProps): ReactNode => {
  const edit = useEdit();
  const tool = useTool();
  const stepM = gridM[unitsChoice.use() === 'feet' ? 'feet' : 'metres'];
  const moves = useArrowMoves({ boat, edit });
  useBoatCommands({ boat, lights, edit });
  usePictureDrop(frame, { boat, views: views ?? [], edit });
  const onNew = useCallback(
    (id: string): void => {
      lights.pick([id]);
      focusOnName(id);
    },
    [lights],
  );
  const on = { boat, views: views ?? [], lights, edit, tool, stepM, onNew };
  const latest = useRef<Omit<PlaceDragging, 'frame'>>(on);
  latest.current = on;
  useEffect(() => {
    const window = frame.current;
    if (window === null) return undefined;
    return dragOnDrawing(window, () => everyDrag({ ...latest.current, frame: window }));
  }, [frame]);
  useEffect(() => () => takeTool('move'), []);
  useEffect(() => {
    for (const one of tools) frame.current?.classList.toggle(`boat-tool-${one}`, one === tool);
    return () => {
      for (const one of tools) frame.current?.classList.remove(`boat-tool-${one}`);
    };
  }, [frame, tool]);
  const layer = views === undefined ? null : (frame.current?.querySelector('.sheet-layer') ?? null);
  const over = views === undefined ? null : (frame.current?.querySelector('.sheet-over-layer') ?? null);
  return (
    <>
      <HandSays />
      {views === undefined || layer === null || over === null ? null : (
        <PlaceLayer
          boat={boat}
          views={views}
          layer={layer}
          over={over}
          lights={lights}
          stepM={stepM}
          onArrow={(held, by) => {
            const picked = lights.picked();
            moves.press(held, new Set(boat.places.flatMap(({ id }) => (picked.has(id) ? [id] : []))), by);
          }}
          onPut={moves.put}
        />
      )}
    </>
  );
};
