import type { Rule } from '../rule.ts';
import { headingFromLog } from './heading-from-log.ts';
import { inputLeadsNowhere } from './input-leads-nowhere.ts';
import { languagesDiffer } from './languages-differ.ts';
import { messagesGoRound } from './messages-go-round.ts';
import { outputOverflows } from './output-overflows.ts';
import { singleWireAsBus } from './single-wire-as-bus.ts';

/** The rules of this area. */
export const convertersRules: readonly Rule[] = [
  headingFromLog,
  inputLeadsNowhere,
  languagesDiffer,
  messagesGoRound,
  outputOverflows,
  singleWireAsBus,
];
