import type { ReactNode } from 'react';
import type { AnswerProps } from './answer-props.ts';
import { OtherBoxes, PlaceIsSo } from './place-answers.tsx';
import { BankAnswer, PanelAnswer } from './supply-answers.tsx';
import { UnitAnswer } from './unit-answers.tsx';
import { WayAnswer } from './way-answers.tsx';

/** What takes the answer to a question of the walk. */
export const AnswerField = (props: AnswerProps): ReactNode => {
  const { index, question, what } = props;
  switch (question.subject) {
    case 'place':
      return question.kind === 'other-boxes' ? (
        <OtherBoxes index={index} about={question.about} what={what} />
      ) : (
        <PlaceIsSo index={index} about={question.about} what={what} />
      );
    case 'way':
      return <WayAnswer {...props} />;
    case 'unit':
      return <UnitAnswer {...props} />;
    case 'bank':
      return <BankAnswer {...props} />;
    case 'panel':
      return <PanelAnswer {...props} />;
  }
};
