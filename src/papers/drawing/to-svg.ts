import { allowedInXml, xmlText } from '../xml-text.ts';
import { figure } from './path-data.ts';
import type { CircleShape, Drawing, GroupShape, Ink, PathShape, Shape, Stroke, TextShape } from './shapes.ts';
import { textWidthMm } from './text-width.ts';
import { type ThemeName, themes } from './themes.ts';

type Colours = Readonly<Record<Ink, string>>;
type Attributes = readonly (readonly [name: string, value: string] | undefined)[];

const attributesText = (attributes: Attributes): string =>
  attributes.map((pair) => (pair === undefined ? '' : ` ${pair[0]}="${xmlText(pair[1])}"`)).join('');

const aboutAttribute = (shape: Shape): Attributes =>
  shape.about === undefined || shape.about.length === 0 ? [] : [['data-about', shape.about.join(' ')]];

const strokeAttributes = (stroke: Stroke | undefined, colours: Colours): Attributes =>
  stroke === undefined
    ? []
    : [
        ['stroke', colours[stroke.ink]],
        ['stroke-width', figure(stroke.widthMm)],
        stroke.dashMm === undefined ? undefined : ['stroke-dasharray', stroke.dashMm.map(figure).join(' ')],
      ];

const fillAttribute = (fill: Ink | undefined, colours: Colours): Attributes => [['fill', colours[fill ?? 'none']]];

const pathText = (shape: PathShape, colours: Colours): string =>
  `<path${attributesText([
    ...aboutAttribute(shape),
    ...fillAttribute(shape.fill, colours),
    ...strokeAttributes(shape.stroke, colours),
    ['d', shape.d],
  ])}/>`;

const circleText = (shape: CircleShape, colours: Colours): string =>
  `<circle${attributesText([
    ...aboutAttribute(shape),
    ['cx', figure(shape.xMm)],
    ['cy', figure(shape.yMm)],
    ['r', figure(shape.radiusMm)],
    ...fillAttribute(shape.fill, colours),
    ...strokeAttributes(shape.stroke, colours),
  ])}/>`;

const families = { words: "'Source Sans 3', sans-serif", figures: "'B612 Mono', monospace" } as const;

/** `textLength` holds every text to the width it was placed for, also where the reader has other fonts. */
const textText = (shape: TextShape, colours: Colours): string => {
  const attributes = attributesText([
    ...aboutAttribute(shape),
    ['x', figure(shape.xMm)],
    ['y', figure(shape.yMm)],
    ['fill', colours[shape.ink]],
    ['font-family', families[shape.face]],
    ['font-size', figure(shape.sizeMm)],
    shape.weight === 'semibold' ? ['font-weight', '600'] : undefined,
    shape.anchor === undefined || shape.anchor === 'start' ? undefined : ['text-anchor', shape.anchor],
    ['textLength', figure(textWidthMm(allowedInXml(shape.text), shape))],
    ['lengthAdjust', 'spacingAndGlyphs'],
  ]);
  return `<text${attributes}>${xmlText(shape.text)}</text>`;
};

const groupLines = (shape: GroupShape, colours: Colours): string[] => [
  `<g${attributesText([
    ...aboutAttribute(shape),
    shape.label === undefined ? undefined : ['role', 'group'],
    shape.label === undefined ? undefined : ['aria-label', shape.label],
    shape.focusable === true ? ['tabindex', '0'] : undefined,
  ])}>`,
  ...shape.shapes.flatMap((child) => shapeLines(child, colours)).map((line) => `  ${line}`),
  '</g>',
];

const shapeLines = (shape: Shape, colours: Colours): string[] => {
  switch (shape.kind) {
    case 'path':
      return [pathText(shape, colours)];
    case 'circle':
      return [circleText(shape, colours)];
    case 'text':
      return [textText(shape, colours)];
    case 'group':
      return groupLines(shape, colours);
  }
};

/**
 * A drawing as an SVG file: one element a line, sizes in millimetres, the colours of one theme written in.
 * Equal drawings give equal bytes.
 */
export const toSvg = (drawing: Drawing, theme: ThemeName): string => {
  const colours: Colours = themes[theme];
  const width = figure(drawing.widthMm);
  const height = figure(drawing.heightMm);
  const root = attributesText([
    ['xmlns', 'http://www.w3.org/2000/svg'],
    ['width', `${width}mm`],
    ['height', `${height}mm`],
    ['viewBox', `0 0 ${width} ${height}`],
    ['role', 'img'],
    drawing.title === undefined ? undefined : ['aria-label', drawing.title],
  ]);
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg${root}>`,
    ...(drawing.title === undefined ? [] : [`  <title>${xmlText(drawing.title)}</title>`]),
    `  <rect width="${width}" height="${height}" fill="${colours.paper}"/>`,
    ...drawing.shapes.flatMap((shape) => shapeLines(shape, colours)).map((line) => `  ${line}`),
    '</svg>',
    '',
  ].join('\n');
};
