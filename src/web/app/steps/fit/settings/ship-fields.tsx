import type { ReactNode } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import { masked } from '../../../../../core/walk-round/masked.ts';
import { useEdit } from '../../../edit-context.ts';
import { parseName } from '../../../forms/parse-typed.ts';
import { ChosenField, TickedField, TypedField } from '../../../forms/typed-field.tsx';
import { words } from './words.ts';

const parseFlag = (text: string): string | undefined => /^\s*([a-z]{2})\s*$/i.exec(text)?.[1]?.toUpperCase();
const parseSign = (text: string): string | undefined => /^\s*([a-z0-9]{3,8})\s*$/i.exec(text)?.[1]?.toUpperCase();
const parseDigits = (text: string): string | undefined => {
  const digits = text.replace(/[\s.-]/g, '');
  return /^\d{9}$/.test(digits) ? digits : undefined;
};

/** The ship's number: what stands there is covered, a new one is typed over it and then read back by somebody else. */
const NumberFields = ({ boat }: { boat: Boat }): ReactNode => {
  const edit = useEdit();
  const number = boat.papers?.number;
  return (
    <>
      <TypedField
        label={words.number}
        name="ship-number"
        shown={number === undefined ? '' : masked(number.digits)}
        wrong={words.numberWrong}
        parse={parseDigits}
        onPut={(digits) =>
          edit([{ edit: 'set-papers', params: { number: { digits, from: number?.from ?? 'state' } } }])
        }
      />
      {number === undefined ? null : (
        <>
          <ChosenField
            label={words.numberFrom}
            value={number.from}
            options={words.givers}
            onChoose={(from) => {
              if (from !== undefined) edit([{ edit: 'set-papers', params: { number: { ...number, from } } }]);
            }}
          />
          <TypedField
            label={words.readBack}
            name="read-back"
            shown={number.readBackBy ?? ''}
            wrong={words.readBackHint}
            parse={parseName}
            onPut={(readBackBy) => edit([{ edit: 'set-papers', params: { number: { ...number, readBackBy } } }])}
          />
        </>
      )}
    </>
  );
};

/** Flag, who sets the radios up, call sign and number. */
export const ShipFields = ({ boat }: { boat: Boat }): ReactNode => {
  const edit = useEdit();
  const { flag = '', workBy, goesAbroad = false, callSign } = boat.papers ?? {};
  return (
    <>
      <TypedField
        label={words.flag}
        name="flag"
        shown={flag}
        wrong={words.flagWrong}
        parse={parseFlag}
        onPut={(put) => edit([{ edit: 'set-papers', params: { flag: put } }])}
      />
      <ChosenField
        label={words.workBy}
        value={workBy}
        options={words.works}
        none={words.notSaid}
        onChoose={(put) =>
          edit([{ edit: 'set-papers', params: put === undefined ? { forget: ['workBy'] } : { workBy: put } }])
        }
      />
      <TickedField
        label={words.abroad}
        isTicked={goesAbroad}
        onTick={(put) => edit([{ edit: 'set-papers', params: { goesAbroad: put } }])}
      />
      <TypedField
        label={words.callSign}
        name="call-sign"
        shown={callSign === undefined ? '' : masked(callSign)}
        wrong={words.callSignWrong}
        parse={parseSign}
        onPut={(put) => edit([{ edit: 'set-papers', params: { callSign: put } }])}
      />
      <NumberFields boat={boat} />
    </>
  );
};
