import { type ReactNode, useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import type { LeadChoice } from '../../../core/leading/lead-choices.ts';
import { mayBeLed } from '../../../core/leading/may-be-led.ts';
import type { LineEntry, Plan } from '../../../core/plan-shape.ts';
import { cardBoat } from '../../../papers/cards/card-boat.ts';
import { lineFromTo } from '../../../papers/lists/led-words.ts';
import { dragOnDrawing } from '../../drawing/drag-on-drawing.ts';
import type { LightStore } from '../../drawing/light-store.ts';
import { useEdit } from '../edit-context.ts';
import type { OnSheetProps } from '../steps/step.ts';
import { leadLine } from './lead-line.ts';
import { LedView } from './led-view.tsx';
import { useLeadChoices } from './route-answers.ts';
import { routeDrag, type SheetPoints } from './route-drag.ts';
import { RouteGhost } from './route-ghost.tsx';
import { useHeldRoute } from './route-held.ts';
import './sheet-drag.css';
import { useWords } from '../words/units.ts';
import { teeDrags } from './tee-drags.ts';
import { words } from './words.ts';

/** The one line that is picked and may be led elsewhere; where several are picked nobody knows which is meant. */
const useChosenLine = (plan: Plan, lights: LightStore): LineEntry | undefined => {
  const picked = useSyncExternalStore(lights.subscribe, lights.picked);
  return useMemo(() => {
    const found = plan.lines.filter((line) => picked.has(line.id) && mayBeLed(line));
    return found.length === 1 ? found[0] : undefined;
  }, [plan, picked]);
};

const nothing: SheetPoints = [];

/** Says what is in the hand: a tee in a sentence, a line with all that leading it there comes to. */
const DragSays = ({ boat, plan, says }: Pick<OnSheetProps, 'boat' | 'plan'> & { says: string }): ReactNode => {
  const say = useWords();
  const held = useHeldRoute();
  // a route that the keyboard shows is told of where the keyboard is
  const inHand = held?.choices === undefined ? undefined : held;
  return (
    <div className="drag-says" role="status" hidden={says === '' && inHand === undefined}>
      {says === '' ? null : <p>{say(says)}</p>}
      {inHand === undefined ? null : (
        <>
          <p>{say(words.theLine(lineFromTo(cardBoat(boat), inHand.line)))}</p>
          {inHand.choice === undefined ? (
            <p>{words.holdOver}</p>
          ) : (
            <LedView boat={boat} plan={plan} line={inHand.line} choice={inHand.choice} />
          )}
        </>
      )}
    </div>
  );
};

/** The drawing under the hand: tees and the route of the line that is chosen are dragged elsewhere, say what that comes to, and settle there. */
export const SheetDrag = ({ boat, plan, frame, lights, points = nothing }: OnSheetProps): ReactNode => {
  const edit = useEdit();
  const [says, setSays] = useState('');
  const line = useChosenLine(plan, lights);
  const choices = useLeadChoices(plan, line);
  const held = useHeldRoute();
  useEffect(() => {
    const window = frame.current;
    if (window === null) return undefined;
    const onLead = (choice: LeadChoice): void => {
      if (line !== undefined) leadLine({ boat, plan, edit }, line, choice);
    };
    const isLedElsewhere = line !== undefined && choices !== undefined && choices.length > 0;
    const routes = isLedElsewhere ? [routeDrag({ line, choices, points, frame: window, onLead })] : [];
    window.classList.toggle('may-lead', isLedElsewhere);
    return dragOnDrawing(window, [...routes, ...teeDrags({ boat, plan, frame: window, edit, say: setSays })]);
  }, [boat, plan, frame, edit, line, choices, points]);
  const layer = held === undefined ? null : (frame.current?.querySelector('.sheet-layer') ?? null);
  return (
    <>
      <DragSays boat={boat} plan={plan} says={says} />
      {held === undefined || layer === null ? null : <RouteGhost held={held} points={points} layer={layer} />}
    </>
  );
};
