import { readFileSync } from 'node:fs';
import { Resvg } from '@resvg/resvg-js';
import type { Plugin } from 'vite';

/** The part of a picture that no system cuts off, as a share of its side. */
const safe = 0.72;

/** The sign of the program on a ground that reaches to the edges, for systems that cut icons to a shape of their own. */
const toTheEdges = (sign: string, ground: string): string => {
  const margin = (32 * (1 - safe)) / 2;
  const inner = sign.replace(/^<svg[^>]*>/, '').replace(/<\/svg>\s*$/, '');
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><rect width="32" height="32" fill="${ground}"/><g transform="translate(${margin} ${margin}) scale(${safe})">${inner}</g></svg>`;
};

const png = (svg: string, px: number): Uint8Array =>
  new Resvg(svg, { fitTo: { mode: 'width', value: px } }).render().asPng();

/** The icons of the installed app by their names, all from the one sign of the program. */
export const iconSizes = {
  'icon-192.png': 192,
  'icon-512.png': 512,
  'icon-edges-512.png': 512,
  'icon-touch-180.png': 180,
};

/** Draws the icons of the installed app from the sign of the program. */
export const icons = ({ sign, ground }: { sign: string; ground: string }): Plugin => ({
  name: 'fairlead-icons',
  apply: 'build',
  generateBundle() {
    const svg = readFileSync(sign, 'utf8');
    for (const [fileName, px] of Object.entries(iconSizes)) {
      const isWhole = /edges|touch/.test(fileName);
      this.emitFile({ type: 'asset', fileName, source: png(isWhole ? toTheEdges(svg, ground) : svg, px) });
    }
  },
});
