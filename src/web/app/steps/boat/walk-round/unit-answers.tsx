import type { ReactNode } from 'react';
import type { BoatIndex } from '../../../../../core/boat/boat-index.ts';
import type { Kit } from '../../../../../core/boat/boat-schema.ts';
import type { Plug, Sheet } from '../../../../../core/boat/sheet.ts';
import { notedSettings } from '../../../../../core/facts/noted-settings.ts';
import { answerEdit } from '../../../../../core/walk-round/answer-edits.ts';
import { masked, shownSetting } from '../../../../../core/walk-round/masked.ts';
import { AnswerOptions, AnswerPick, yesNo } from './answer-options.tsx';
import type { AnswerProps } from './answer-props.ts';
import { PhotoField } from './photo-field.tsx';
import { WalkForm } from './walk-form.tsx';
import { words } from './words.ts';

const genders = ['male', 'female', 'none'] as const;

const Serial = ({ unit, what }: { unit: Kit; what: string }): ReactNode => {
  const { serial, software } = unit.aboard ?? {};
  return (
    <WalkForm
      question={`serial ${unit.id}`}
      what={what}
      wrong={words.wrongSerial}
      blanks={[
        { name: 'serial', says: words.serial, ...(serial === undefined ? {} : { hint: masked(serial) }) },
        { name: 'software', says: words.software, ...(software === undefined ? {} : { first: software }) },
      ]}
      read={(typed) => {
        const number = typed('serial') || serial;
        if (number === undefined || number.length > 80 || typed('software').length > 80) return undefined;
        const version = typed('software') === '' ? {} : { software: typed('software') };
        return [answerEdit({ kind: 'serial', unit: unit.id, serial: number, ...version })];
      }}
    />
  );
};

/** One plug as the file has it, to be put right where it is another. */
const PlugForm = ({ unit, plug, what }: { unit: Kit; plug: Plug; what: string }): ReactNode => (
  <WalkForm
    question={`plugs ${unit.id} ${plug.id}`}
    what={words.plugOf({ what, plug: plug.id })}
    wrong={words.wrongPlug}
    blanks={[
      { name: 'connector', says: words.plug(plug.id), first: plug.connector },
      {
        name: 'gender',
        says: words.pins,
        first: plug.gender,
        choices: genders.map((gender) => [gender, words.genders[gender]]),
      },
    ]}
    read={(typed) => {
      const connector = typed('connector');
      const gender = genders.find((one) => one === typed('gender')) ?? plug.gender;
      if (connector === '' || connector.length > 60) return undefined;
      return [answerEdit({ kind: 'plugs', unit: unit.id, plug: plug.id, connector, gender })];
    }}
  />
);

const Plugs = ({ unit, sheet, what }: { unit: Kit; sheet: Sheet; what: string }): ReactNode => (
  <>
    <AnswerOptions
      what={what}
      options={[
        [
          words.allAsInFile,
          sheet.plugs.map(({ id, connector, gender }) =>
            answerEdit({ kind: 'plugs', unit: unit.id, plug: id, connector, gender }),
          ),
        ],
      ]}
    />
    {sheet.plugs.map((plug) => (
      <PlugForm key={plug.id} unit={unit} plug={plug} what={what} />
    ))}
  </>
);

const WireColours = ({ unit, sheet, what }: { unit: Kit; sheet: Sheet; what: string }): ReactNode =>
  sheet.plugs.map(({ id, conductors = [] }) => {
    if (conductors.length === 0) return null;
    return (
      <WalkForm
        key={id}
        question={`wire-colours ${unit.id} ${id}`}
        what={words.plugOf({ what, plug: id })}
        wrong={words.wrongColour}
        blanks={conductors.map(({ label, colour }) => ({
          name: label,
          says: words.wire({ plug: id, label }),
          first: colour,
        }))}
        read={(typed) => {
          const colours = conductors.map(({ label }) => ({ label, colour: typed(label) }));
          return colours.some(({ colour }) => colour === '' || colour.length > 40)
            ? undefined
            : [answerEdit({ kind: 'plugs', unit: unit.id, plug: id, colours })];
        }}
      />
    );
  });

const Settings = ({ unit, sheet, what }: { unit: Kit; sheet: Sheet; what: string }): ReactNode => {
  const noted = unit.aboard?.settings ?? [];
  const usual = notedSettings.byKind[sheet.kind] ?? [];
  const names = [...usual, ...noted.map(({ name }) => name).filter((name) => !usual.includes(name))];
  const hintOf = (name: string): { hint?: string } => {
    const found = noted.find((setting) => setting.name === name);
    return found === undefined ? {} : { hint: shownSetting(found) };
  };
  return (
    <>
      <WalkForm
        question={`settings ${unit.id}`}
        what={what}
        wrong={words.wrongSetting}
        blanks={[
          ...names.map((name) => ({ name, says: name, ...hintOf(name) })),
          { name: 'own name', says: words.anotherSetting, hint: words.itsName },
          { name: 'own value', says: words.itsValue },
        ]}
        read={(typed) => {
          const own = { name: typed('own name'), value: typed('own value') };
          if ((own.name === '') !== (own.value === '') || own.name.length > 80) return undefined;
          const settings = [...names.map((name) => ({ name, value: typed(name) })), own].filter(
            ({ value }) => value !== '',
          );
          if (settings.some(({ value }) => value.length > 400)) return undefined;
          return settings.length === 0 ? [] : [answerEdit({ kind: 'settings', unit: unit.id, settings })];
        }}
      />
      <AnswerOptions what={what} options={[[words.allCopied, { kind: 'all-copied', unit: unit.id }]]} />
    </>
  );
};

const circuitsOf = ({ boat }: BoatIndex) =>
  boat.supply.panels.flatMap(({ id, circuits }) =>
    circuits.map((circuit) => [`${id}.${circuit.id}`, `${circuit.name ?? circuit.id}, ${circuit.ratingA} A`] as const),
  );

/** The supply port of a unit that no circuit feeds yet. */
const unfedPort = (index: BoatIndex, unit: string): string | undefined => {
  const fed = new Set(index.boat.supply.panels.flatMap(({ circuits }) => circuits.flatMap(({ feeds }) => feeds)));
  return index.sheetOf
    .get(unit)
    ?.ports.filter(({ protocol, role }) => protocol === 'dc' && role !== 'talk')
    .map(({ id }) => `${unit}.${id}`)
    .find((port) => !fed.has(port));
};

/** What takes the answer to a question about a unit. */
export const UnitAnswer = ({ index, question: { kind, about }, what }: AnswerProps): ReactNode => {
  const unit = index.kit.get(about);
  const sheet = index.sheetOf.get(about);
  if (unit === undefined || sheet === undefined) return null;
  switch (kind) {
    case 'photos':
      return <PhotoField boat={index.boat} unit={about} name={unit.name} />;
    case 'serial':
      return <Serial unit={unit} what={what} />;
    case 'plugs':
      return <Plugs unit={unit} sheet={sheet} what={what} />;
    case 'wire-colours':
      return <WireColours unit={unit} sheet={sheet} what={what} />;
    case 'settings':
      return <Settings unit={unit} sheet={sheet} what={what} />;
    case 'terminator':
      return <AnswerOptions what={what} options={yesNo((has) => ({ kind, unit: about, has }))} />;
    case 'breaker': {
      const port = unfedPort(index, about);
      return port === undefined ? null : (
        <AnswerPick
          what={what}
          picks={circuitsOf(index)}
          editsOf={(circuit) => [answerEdit({ kind, port, circuit })]}
        />
      );
    }
    default:
      return null;
  }
};
