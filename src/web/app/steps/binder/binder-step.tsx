import type { ReactNode } from 'react';
import type { Step } from '../step.ts';
import { BinderPages } from './binder-pages.tsx';

/** What there is to do with the papers stands above the notes; under them stands nothing. */
const NothingMore = (): ReactNode => null;

/** The step Binder: the papers before they are printed, what came out otherwise, and what was given out. */
export const binderStep: Step = { Margin: NothingMore, Instead: BinderPages };
