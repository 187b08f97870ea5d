import { endSquare, pathShape, teeSquare } from '../../drawing/marks.ts';
import type { Point } from '../../drawing/point.ts';
import { polyline } from '../../drawing/polyline.ts';
import type { Shape } from '../../drawing/shapes.ts';
import { textWidthMm } from '../../drawing/text-width.ts';
import { codeOf } from '../../sheet/line-code.ts';
import { sheetText } from '../sheet-text.ts';
import type { TrunkJoint, TrunkPass } from './place-facts.ts';
import { pictureText } from './place-text.ts';

const jointStepMm = ({ label, words }: TrunkJoint): number =>
  Math.max(6, textWidthMm(label, sheetText.label), textWidthMm(words, sheetText.small)) + 1.6;

const jointShapes = (joint: TrunkJoint, [xMm, yMm]: Point, bus: string): Shape[] => {
  const square =
    joint.kind === 'end'
      ? endSquare([xMm, yMm], { sideMm: 2.4, about: [bus] })
      : [teeSquare([xMm, yMm], { sideMm: 2.2, about: [bus] })];
  return [
    ...square,
    ...(joint.label === ''
      ? []
      : [pictureText(joint.label, [xMm, yMm - 2.2], { ...sheetText.label, anchor: 'middle', about: [bus] })]),
    pictureText(joint.words, [xMm, yMm + 4.3], { anchor: 'middle', about: [bus] }),
  ];
};

const trunkRowMm = 13;

/** Joints of a pass in rows that fit a width. */
const trunkRows = ({ joints }: TrunkPass, widthMm: number): TrunkJoint[][] => {
  const rows: TrunkJoint[][] = [];
  let usedMm = 0;
  for (const joint of joints) {
    const stepMm = jointStepMm(joint);
    const last = rows.at(-1);
    if (last === undefined || usedMm + stepMm > widthMm) {
      rows.push([joint]);
      usedMm = stepMm;
    } else {
      last.push(joint);
      usedMm += stepMm;
    }
  }
  return rows.length === 0 ? [[]] : rows;
};

/** Room beside the joints for the way by which a trunk comes and goes. */
const leadMmOf = ({ from = '', to = '' }: TrunkPass): number =>
  Math.max(6, textWidthMm(from, sheetText.small), textWidthMm(to, sheetText.small)) + 5;

/** One pass of a trunk: its name, then its joints from where it comes to where it goes. */
export const trunkShapes = (
  pass: TrunkPass,
  { leftMm, widthMm, topMm }: { leftMm: number; widthMm: number; topMm: number },
) => {
  const leadMm = leadMmOf(pass);
  const rows = trunkRows(pass, Math.max(12, widthMm - 2 * leadMm));
  const shapes = rows.flatMap((joints, row): Shape[] => {
    const yMm = topMm + row * trunkRowMm + 8;
    const isFirst = row === 0;
    const isLast = row === rows.length - 1;
    let xMm = leftMm + leadMm;
    const drawn = joints.flatMap((joint) => {
      const stepMm = jointStepMm(joint);
      const own = jointShapes(joint, [xMm + stepMm / 2, yMm], pass.bus);
      xMm += stepMm;
      return own;
    });
    const fromWords = isFirst ? pass.from : 'on';
    const toWords = isLast ? pass.to : 'on';
    const first = joints[0];
    const last = joints.at(-1);
    const fromMm =
      fromWords === undefined && first !== undefined ? leftMm + leadMm + jointStepMm(first) / 2 : leftMm + leadMm - 3;
    const toMm = toWords === undefined && last !== undefined ? xMm - jointStepMm(last) / 2 : xMm + 3;
    const { ink, widthMm: strokeMm } = codeOf('trunk');
    return [
      ...(isFirst ? [pictureText(`${pass.name}: trunk`, [leftMm, topMm + 2.4], { weight: 'semibold' })] : []),
      pathShape(
        polyline([
          [fromMm, yMm],
          [toMm, yMm],
        ]),
        { stroke: { ink, widthMm: strokeMm }, about: [pass.bus] },
      ),
      ...(fromWords === undefined ? [] : [pictureText(fromWords, [fromMm - 1, yMm + 0.8], { anchor: 'end' })]),
      ...(toWords === undefined ? [] : [pictureText(toWords, [toMm + 1, yMm + 0.8])]),
      ...drawn,
    ];
  });
  return { shapes, heightMm: rows.length * trunkRowMm + 1 };
};

/** Trunks that pass with no joint: "Navigation bus passes from b38 to b40". */
export const passingWords = (passes: readonly TrunkPass[]): string[] =>
  passes
    .filter(({ joints }) => joints.length === 0)
    .map(({ name, from = '', to = '' }) => `${name} passes, no joint, from ${from} to ${to}`);
