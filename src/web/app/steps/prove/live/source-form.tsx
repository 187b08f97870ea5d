import { type ReactNode, useCallback, useEffect, useState } from 'react';
import { ChoiceField, NumberField, TextField } from '../../../forms/fields.tsx';
import { live, type WishedSource } from './live-store.ts';
import { words } from './words.ts';

type Kind = WishedSource['kind'];

const usualPort = 10_110;
/** no id of a boat */
const anyWire = '*';
const kinds: readonly (readonly [Kind, string])[] = [
  ['udp', words.kinds.udp],
  ['tcp', words.kinds.tcp],
  ['serial', words.kinds.serial],
];
const bauds = [
  ['find', words.bauds.find],
  ['4800', words.bauds[4800]],
  ['38400', words.bauds[38400]],
  ['115200', words.bauds[115200]],
] as const;

const SerialFields = ({
  path,
  baud,
  onPath,
  onBaud,
}: {
  path: string;
  baud: string;
  onPath: (path: string) => void;
  onBaud: (baud: (typeof bauds)[number][0]) => void;
}): ReactNode => {
  const [ports, setPorts] = useState<readonly string[] | undefined>(undefined);
  const look = useCallback(() => void live.ports().then(setPorts), []);
  useEffect(look, [look]);
  return (
    <>
      {ports !== undefined && ports.length > 0 ? (
        <ChoiceField
          label={words.serialPort}
          value={ports.includes(path) ? path : undefined}
          choices={ports.map((one) => [one, one] as const)}
          onValue={onPath}
        />
      ) : (
        <p className="quiet wide" role="status">
          {ports === undefined ? '' : words.noPorts}
        </p>
      )}
      <ChoiceField
        label={words.baud}
        value={bauds.find(([one]) => one === baud)?.[0]}
        choices={bauds}
        onValue={onBaud}
      />
      <button type="button" className="press-link wide" onClick={look}>
        {words.lookAgain}
      </button>
    </>
  );
};

/** Where to listen is chosen here, and listening begun. */
export const SourceForm = ({ wires }: { wires: readonly (readonly [id: string, words: string])[] }): ReactNode => {
  const [kind, setKind] = useState<Kind>('udp');
  const [port, setPort] = useState<number | undefined>(usualPort);
  const [host, setHost] = useState('');
  const [path, setPath] = useState('');
  const [baud, setBaud] = useState<(typeof bauds)[number][0]>('find');
  const [on, setOn] = useState(anyWire);
  const [record, setRecord] = useState(false);

  const wished = (): WishedSource | undefined => {
    if (kind === 'serial')
      return path === '' ? undefined : { kind, path, ...(baud === 'find' ? {} : { baud: Number(baud) }) };
    if (port === undefined || !Number.isInteger(port) || port < 1 || port > 65_535) return undefined;
    if (kind === 'udp') return { kind, port };
    return host.trim() === '' ? undefined : { kind, host: host.trim(), port };
  };
  const wish = wished();
  return (
    <form
      className="part-form"
      onSubmit={(event) => {
        event.preventDefault();
        if (wish !== undefined) void live.begin({ source: wish, record, ...(on === anyWire ? {} : { on }) });
      }}
    >
      <div className="form-fields">
        <div className="wide">
          <ChoiceField label={words.source} value={kind} choices={kinds} onValue={setKind} />
        </div>
        {kind === 'tcp' ? (
          <TextField label={words.host} value={host} hint={words.hostHint} longest={253} onValue={setHost} />
        ) : null}
        {kind === 'serial' ? (
          <SerialFields path={path} baud={baud} onPath={setPath} onBaud={setBaud} />
        ) : (
          <NumberField label={words.port} value={port} onValue={setPort} step={1} least={1} />
        )}
        <div className="wide">
          <ChoiceField label={words.wire} value={on} choices={[[anyWire, words.anyWire], ...wires]} onValue={setOn} />
        </div>
      </div>
      <label className="live-record">
        <input type="checkbox" checked={record} onChange={({ target }) => setRecord(target.checked)} />
        {words.record}
      </label>
      <button type="submit" className="press-link" disabled={wish === undefined}>
        {words.begin}
      </button>
    </form>
  );
};
