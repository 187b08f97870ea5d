import { type ReactNode, useEffect, useMemo, useReducer, useState } from 'react';
import { codePath, labelCode } from '../../../papers/labels/label-code.ts';
import { words } from './words.ts';

/** Squares of light that a reader of codes wants around them (ISO/IEC 18004). */
const marginSquares = 4;

/** An address as squares, dark on light in every light of the screen, for a reader wants it that way round. */
const CodeSquares = ({ address }: { address: string }): ReactNode => {
  const { squares, path } = useMemo(() => {
    const code = labelCode(address);
    const place = { leftMm: marginSquares, topMm: marginSquares, squareMm: 1 };
    return { squares: code.squares + 2 * marginSquares, path: codePath(code, place) };
  }, [address]);
  const label = words.squares(address.split('#')[0] ?? '');
  return (
    <svg className="phones-squares" viewBox={`0 0 ${squares} ${squares}`} role="img" aria-label={label}>
      <rect className="phones-light" width={squares} height={squares} />
      <path className="phones-dark" d={path} shapeRendering="crispEdges" />
    </svg>
  );
};

/** The seconds until a moment of this page’s clock, drawn again as each passes. */
const useSecondsTo = (untilMs: number): number => {
  const [, draw] = useReducer((times: number) => times + 1, 0);
  useEffect(() => {
    const timer = setInterval(draw, 1000);
    return () => clearInterval(timer);
  }, []);
  return Math.max(0, Math.ceil((untilMs - performance.now()) / 1000));
};

const Address = ({ address }: { address: string }): ReactNode => <code className="phones-address">{address}</code>;

/** The code that pairs the next phone: in figures, and in squares with the address at which it is asked for. */
export const PairingCode = ({
  code,
  untilMs,
  addresses,
}: {
  code: string;
  untilMs: number;
  addresses: readonly string[];
}): ReactNode => {
  const [picked, setPicked] = useState('');
  const seconds = useSecondsTo(untilMs);
  const address = addresses.includes(picked) ? picked : addresses[0];
  if (seconds === 0) return null;
  const others = addresses.filter((one) => one !== address);
  return (
    <div className="phones-pairing">
      {address === undefined ? null : <CodeSquares address={`${address}/#pair=${code}`} />}
      <div>
        {address === undefined ? null : (
          <p>
            {words.openAt} <Address address={address} />
          </p>
        )}
        <p className="phones-code">
          <span className="unseen">{words.code} </span>
          <span className="figure">
            {code.slice(0, 3)} {code.slice(3)}
          </span>
        </p>
        <p className="quiet">{words.left(seconds)}</p>
        <p className="quiet">{words.scan}</p>
        {others.length === 0 ? null : <p className="quiet">{words.otherNetworks}</p>}
        {others.map((one) => (
          <button
            key={one}
            type="button"
            className="press-link"
            aria-label={words.show(one)}
            onClick={() => setPicked(one)}
          >
            <Address address={one} />
          </button>
        ))}
      </div>
    </div>
  );
};
