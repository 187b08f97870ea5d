import { useEffect, useReducer } from 'react';
import { firstPictureSeen } from '../../drawing/first-picture.ts';
import type { StepId } from '../route.ts';
import type { Step } from './step.ts';

/** How each step is brought: none is part of the way to the first picture. */
const bringStep: Readonly<Record<StepId, () => Promise<Step>>> = {
  boat: () => import('./boat/boat-step.tsx').then(({ boatStep }) => boatStep),
  kit: () => import('./kit/kit-step.tsx').then(({ kitStep }) => kitStep),
  needs: () => import('./needs/needs-step.tsx').then(({ needsStep }) => needsStep),
  lines: () => import('./lines/lines-step.tsx').then(({ linesStep }) => linesStep),
  power: () => import('./power/power-step.tsx').then(({ powerStep }) => powerStep),
  fit: () => import('./fit/fit-step.tsx').then(({ fitStep }) => fitStep),
  buy: () => import('./buy/buy-step.tsx').then(({ buyStep }) => buyStep),
  work: () => import('./work/work-step.tsx').then(({ workStep }) => workStep),
  prove: () => import('./prove/prove-step.tsx').then(({ proveStep }) => proveStep),
  binder: () => import('./binder/binder-step.tsx').then(({ binderStep }) => binderStep),
};

/** The steps that have come; a step gone back to stands at once. */
const here = new Map<StepId, Step>();

/** What belongs to a step; undefined until it has come. */
export const useStep = (step: StepId): Step | undefined => {
  const [, draw] = useReducer((times: number) => times + 1, 0);
  useEffect(() => {
    if (here.has(step)) return;
    void firstPictureSeen.then(bringStep[step]).then((brought) => {
      here.set(step, brought);
      draw();
    });
  }, [step]);
  return here.get(step);
};
