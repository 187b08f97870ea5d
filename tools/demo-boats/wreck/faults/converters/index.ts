import type { Fault } from '../../fault.ts';
import { convertersHeadingFromLog } from './heading-from-log.ts';
import { convertersInputLeadsNowhere } from './input-leads-nowhere.ts';
import { convertersLanguagesDiffer } from './languages-differ.ts';
import { convertersMessagesGoRound } from './messages-go-round.ts';
import { convertersOutputOverflows } from './output-overflows.ts';
import { convertersSingleWireAsBus } from './single-wire-as-bus.ts';

/** The faults of this area, one a rule. */
export const convertersFaults: readonly Fault[] = [
  convertersHeadingFromLog,
  convertersInputLeadsNowhere,
  convertersLanguagesDiffer,
  convertersMessagesGoRound,
  convertersOutputOverflows,
  convertersSingleWireAsBus,
];
