import { restStep } from '../rest/rest-step.tsx';
import type { Step } from '../step.ts';
import { BinderBlock } from './binder-block.tsx';

/** The step Binder: all papers as one file, looked at before they are printed. */
export const binderStep: Step = { ...restStep, Begin: BinderBlock };
