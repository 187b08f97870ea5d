import type { ComponentType, RefObject } from 'react';
import type { Failure } from '../../../core/blackouts-shape.ts';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import type { ScaledView } from '../../../papers/sheet/view.ts';
import type { LightStore } from '../../drawing/light-store.ts';
import type { RowHand } from '../margin/lit-rows.tsx';
import type { SheetPoints } from '../sheet/route-drag.ts';

/** What the margin of a step is made from. */
export interface StepMarginProps {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly hand: RowHand;
  /** pulls something out, to see what goes dark */
  readonly onPull: (failure: Failure) => void;
}

/** What a table over the lower part of the sheet is made from. */
export interface StepTableProps {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly lights: LightStore;
  readonly onClose: () => void;
}

/** What lies on the drawing under the hand is made from. */
export interface OnSheetProps {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly frame: RefObject<HTMLDivElement | null>;
  readonly lights: LightStore;
  /** where the places lie on the sheet; absent while it is not drawn */
  readonly points: SheetPoints | undefined;
  /** its views, as maps between metres aboard and the sheet */
  readonly views: readonly ScaledView[] | undefined;
}

export interface StepTable {
  readonly words: string;
  readonly Table: ComponentType<StepTableProps>;
}

/** One step of the job: what stands in the margin there, and what a person works with. Each is brought when it is gone to. */
export interface Step {
  /** what stands over the notes: what is picked, in a step where that is what one works with */
  readonly Above?: ComponentType<StepMarginProps>;
  readonly Margin: ComponentType<StepMarginProps>;
  /** what is done here first of all, and therefore stands above the notes */
  readonly Begin?: ComponentType<StepMarginProps>;
  /** the tables over the sheet, and what each is called */
  readonly tables?: readonly StepTable[];
  /** what can be moved on the drawing, in place of tees and routes */
  readonly OnSheet?: ComponentType<OnSheetProps>;
  /** what stands in place of the drawing, with tools of its own */
  readonly Instead?: ComponentType<Omit<StepTableProps, 'onClose'>>;
  /** pages that are made for paper only */
  readonly Pages?: ComponentType<Omit<StepTableProps, 'onClose'>>;
}
