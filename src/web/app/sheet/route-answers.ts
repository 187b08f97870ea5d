import { useEffect, useState } from 'react';
import type { LeadChoice } from '../../../core/leading/lead-choices.ts';
import type { LedLine } from '../../../core/led-line.ts';
import type { LineEntry, Plan } from '../../../core/plan-shape.ts';
import { useAsk } from '../ask-context.ts';

/** A hand on its way to another place asks nothing of those it only passes. */
const restMs = 100;

const noChoices: readonly LeadChoice[] = [];

/** Where a line of this plan may be led; undefined until it is known. */
export const useLeadChoices = (plan: Plan, line: LineEntry | undefined): readonly LeadChoice[] | undefined => {
  const ask = useAsk();
  const [known, setKnown] = useState<{ plan: Plan; id: string; choices: readonly LeadChoice[] } | undefined>(undefined);
  const id = line?.id;
  useEffect(() => {
    if (id === undefined) return undefined;
    let isGone = false;
    void ask({ asks: 'choices', line: id }).then(({ choices = noChoices }) => {
      if (!isGone) setKnown({ plan, id, choices });
    });
    return () => {
      isGone = true;
    };
  }, [ask, plan, id]);
  return known?.plan === plan && known.id === id ? known.choices : undefined;
};

/** What a line led by other ways comes to, kept as long as its plan; `none` where it could not be said. */
const answers = new WeakMap<Plan, Map<string, LedLine | 'none'>>();

const answersFor = (plan: Plan): Map<string, LedLine | 'none'> => {
  const found = answers.get(plan) ?? new Map<string, LedLine | 'none'>();
  answers.set(plan, found);
  return found;
};

/** What leading a line of this plan by other ways comes to; undefined until it is known. */
export const useLedLine = (
  plan: Plan,
  { line, choice }: { readonly line: LineEntry; readonly choice: LeadChoice },
): LedLine | 'none' | undefined => {
  const ask = useAsk();
  const [, setCount] = useState(0);
  const key = `${line.id} ${choice.ways.join()}`;
  const known = answersFor(plan).get(key);
  useEffect(() => {
    if (answersFor(plan).has(key)) return undefined;
    let isGone = false;
    const timer = setTimeout(() => {
      void ask({ asks: 'led', line: line.id, ways: choice.ways }).then(({ led }) => {
        answersFor(plan).set(key, led ?? 'none');
        if (!isGone) setCount((count) => count + 1);
      });
    }, restMs);
    return () => {
      isGone = true;
      clearTimeout(timer);
    };
  }, [ask, plan, line, choice, key]);
  return known;
};
