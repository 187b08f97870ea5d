import type { Rule } from '../rule.ts';
import { inputLeadsNowhere } from './input-leads-nowhere.ts';
import { messagesGoRound } from './messages-go-round.ts';
import { outputOverflows } from './output-overflows.ts';

/** The rules of this area. */
export const convertersRules: readonly Rule[] = [inputLeadsNowhere, messagesGoRound, outputOverflows];
