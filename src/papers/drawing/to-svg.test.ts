import { expect, test } from 'vitest';
import type { Drawing } from './shapes.ts';
import { toSvg } from './to-svg.ts';

const drawing: Drawing = {
  title: 'Tern & mate: <lines>',
  widthMm: 100,
  heightMm: 50,
  shapes: [
    {
      kind: 'group',
      label: '3, radar "old"',
      focusable: true,
      about: ['radar'],
      shapes: [
        { kind: 'path', d: 'M0 0L10 0', stroke: { ink: 'data', widthMm: 0.9, dashMm: [3, 1.333] } },
        { kind: 'circle', xMm: 5, yMm: 5, radiusMm: 2.6, fill: 'accent' },
        { kind: 'text', xMm: 5, yMm: 6, text: '3 < 4\u0007', sizeMm: 3, face: 'figures', anchor: 'middle', ink: 'ink' },
      ],
    },
  ],
};

test('a drawing becomes one SVG element a line, in millimetres, with its title', () => {
  expect(toSvg(drawing, 'day').split('\n')).toEqual([
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="50mm" viewBox="0 0 100 50" role="img" aria-label="Tern &amp; mate: &lt;lines&gt;">',
    '  <title>Tern &amp; mate: &lt;lines&gt;</title>',
    '  <rect width="100" height="50" fill="#FBF9F3"/>',
    '  <g data-about="radar" role="group" aria-label="3, radar &quot;old&quot;" tabindex="0">',
    '    <path fill="none" stroke="#1D4F7C" stroke-width="0.9" stroke-dasharray="3 1.33" d="M0 0L10 0"/>',
    '    <circle cx="5" cy="5" r="2.6" fill="#B63C08"/>',
    `    <text x="5" y="6" fill="#17232F" font-family="'B612 Mono', monospace" font-size="3" text-anchor="middle" textLength="9.75" lengthAdjust="spacingAndGlyphs">3 &lt; 4</text>`,
    '  </g>',
    '</svg>',
    '',
  ]);
});

test('each theme writes its own colours into the file', () => {
  expect(toSvg(drawing, 'paper')).toContain('fill="#FFFFFF"');
  expect(toSvg(drawing, 'night')).toContain('fill="#0E0504"');
  expect(toSvg(drawing, 'night')).not.toContain('#17232F');
});
