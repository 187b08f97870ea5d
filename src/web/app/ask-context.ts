import { createContext, useContext } from 'react';
import type { RouteAnswer, RouteQuestion } from '../workers/protocol.ts';

/** Asks the planning worker about a line of the plan that is shown. */
export type AskRoute = (question: RouteQuestion) => Promise<RouteAnswer>;

export const AskContext = createContext<AskRoute>(() => Promise.resolve({}));

/** How the page asks where a line may be led, and what that comes to. */
export const useAsk = (): AskRoute => useContext(AskContext);
