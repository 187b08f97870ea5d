import type { MmShape } from '../../core/fits-shape.ts';
import { xmlText } from '../xml-text.ts';
import type { Template } from './template.ts';
import { templateExtent } from './template-extent.ts';

/** White round it, with room below for a line of words. */
const roundMm = 12;

/** Colours in which cutters usually tell what to do. */
const layers = { cut: '#ff0000', engrave: '#0000ff', drill: '#008000', 'not-for-cutting': '#888888' } as const;

/** Millimetres to a thousandth, without needless noughts. */
const mm = (value: number): string => String(Math.round(value * 1000) / 1000 + 0);

const ring = (xMm: number, yMm: number, radiusMm: number): string =>
  `<circle cx="${mm(xMm)}" cy="${mm(-yMm)}" r="${mm(radiusMm)}"/>`;

/** One outline; y points down on the page. */
const outline = ({ shape, xMm, yMm, widthMm, heightMm, cornerMm = 0, outlineMm }: MmShape): string => {
  if (shape === 'round') return ring(xMm, yMm, widthMm / 2);
  if (outlineMm !== undefined)
    return `<polygon points="${outlineMm.map(([x, y]) => `${mm(xMm + x)},${mm(-yMm - y)}`).join(' ')}"/>`;
  const corner = cornerMm === 0 ? '' : ` rx="${mm(cornerMm)}"`;
  return `<rect x="${mm(xMm - widthMm / 2)}" y="${mm(-yMm - heightMm / 2)}" width="${mm(widthMm)}" height="${mm(heightMm)}"${corner}/>`;
};

const group = (id: keyof typeof layers, lines: readonly string[]): string[] => [
  `  <g id="${id}" fill="none" stroke="${layers[id]}" stroke-width="0.2">`,
  ...lines.map((line) => `    ${line}`),
  '  </g>',
];

/**
 * A template as an SVG file in millimetres, a group for what is cut, what is engraved and what is drilled; where nothing may be cut
 * by it, one group that says so.
 */
export const templateSvg = (template: Template): string => {
  const { leftMm, rightMm, aboveMm, belowMm } = templateExtent(template);
  const [widthMm, heightMm] = [rightMm - leftMm + 2 * roundMm, aboveMm - belowMm + 2 * roundMm];
  const cut = template.cut.map(({ shape }) => outline(shape));
  const engrave = template.mark.map(({ shape }) => outline(shape));
  const drill = template.drill.map(({ xMm, yMm, holeMm }) => ring(xMm, yMm, holeMm / 2));
  const isRefused = template.notForCutting.length > 0;
  const says = isRefused ? `NOT FOR CUTTING: ${template.notForCutting.join('; ')}` : template.title;
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(widthMm)}mm" height="${mm(heightMm)}mm" viewBox="${mm(leftMm - roundMm)} ${mm(-aboveMm - roundMm)} ${mm(widthMm)} ${mm(heightMm)}">`,
    `  <title>${xmlText(says)}</title>`,
    ...(isRefused
      ? group('not-for-cutting', [...cut, ...engrave, ...drill])
      : [...group('cut', cut), ...group('engrave', engrave), ...group('drill', drill)]),
    `  <text x="${mm(leftMm)}" y="${mm(-belowMm + 8)}" font-family="sans-serif" font-size="4">${xmlText(says)}</text>`,
    '</svg>',
    '',
  ].join('\n');
};
