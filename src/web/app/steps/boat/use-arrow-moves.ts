import { useEffect, useMemo, useRef } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { MakeEdits } from '../../edit-context.ts';
import { moveWords } from './move-words.ts';
import { moveEdit, noShift } from './moved-places.ts';
import { holdInHand, type Shift } from './place-hand.ts';
import type { Axis } from './view-axes.ts';

/** Presses that follow each other within this are one step of undo. */
const runMs = 700;

interface Run {
  readonly held: string;
  readonly ids: ReadonlySet<string>;
  /** where the place that has the keyboard is to stand */
  target: Shift;
  timer: ReturnType<typeof setTimeout> | undefined;
}

const shiftTo = (boat: Boat, { held, target }: Run): Shift => {
  const place = boat.places.find(({ id }) => id === held);
  if (place === undefined) return noShift;
  return { xM: target.xM - place.xM, yM: target.yM - place.yM, zM: target.zM - place.zM };
};

export interface ArrowMoves {
  /** moves what is picked, held by one place, a little farther */
  readonly press: (held: string, ids: ReadonlySet<string>, by: Partial<Record<Axis, number>>) => void;
  /** puts down what is on its way */
  readonly put: () => void;
}

/** Moves picked places by the arrow keys: a run of presses is one edit, made once they pause. */
export const useArrowMoves = ({ boat, edit }: { readonly boat: Boat; readonly edit: MakeEdits }): ArrowMoves => {
  const latest = useRef({ boat, edit });
  latest.current = { boat, edit };
  const run = useRef<Run | undefined>(undefined);
  const moves = useMemo((): ArrowMoves => {
    const put = (): void => {
      const now = run.current;
      if (now?.timer === undefined) return;
      clearTimeout(now.timer);
      now.timer = undefined;
      latest.current.edit([moveEdit(latest.current.boat, now.ids, shiftTo(latest.current.boat, now))]);
    };
    const press: ArrowMoves['press'] = (held, ids, by) => {
      const place = latest.current.boat.places.find(({ id }) => id === held);
      if (place === undefined) return;
      if (run.current?.held !== held) put();
      const now = run.current?.held === held ? run.current : { held, ids, target: { ...place }, timer: undefined };
      const { xM, yM, zM } = now.target;
      now.target = { xM: xM + (by.xM ?? 0), yM: yM + (by.yM ?? 0), zM: zM + (by.zM ?? 0) };
      clearTimeout(now.timer);
      now.timer = setTimeout(put, runMs);
      run.current = now;
      const shift = shiftTo(latest.current.boat, now);
      holdInHand({ kind: 'places', ids, shift }, moveWords({ boat: latest.current.boat, ids, shift, held }));
    };
    return { press, put };
  }, []);
  // what was put down shows where it was going until the boat has it there
  useEffect(() => {
    const now = run.current;
    if (now?.timer === undefined) {
      run.current = undefined;
      holdInHand();
    } else holdInHand({ kind: 'places', ids: now.ids, shift: shiftTo(boat, now) });
  }, [boat]);
  useEffect(() => moves.put, [moves]);
  return moves;
};
