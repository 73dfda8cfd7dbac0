import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { Resvg } from '@resvg/resvg-js';
import { FONT } from './paper.ts';

const fonts = join(dirname(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/package.json')), 'ttf');

/** A drawing as PNG at twice its size, for a chat; with the font that comes along, so that it looks the same on a machine without any. */
export const png = (svg: string): Uint8Array =>
  new Resvg(svg, {
    fitTo: { mode: 'zoom', value: 2 },
    font: { loadSystemFonts: false, fontFiles: [join(fonts, 'DejaVuSans.ttf'), join(fonts, 'DejaVuSans-Bold.ttf')], defaultFontFamily: FONT },
  }).render().asPng();
