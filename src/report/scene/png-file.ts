import { neededPackage } from '../../base/needed-package.js';
import type { Typeface } from '../font/typeface.js';
import { PAPER, type Scene } from './scene.js';
import { toSvg } from './to-svg.js';

/** Dots per inch of a printed page that is looked at on a screen. */
const USUAL_DPI = 200;

/**
 * A scene as a PNG on white, set in the typeface's own files: no font of the machine is used.
 *
 * The library that draws it is loaded only here and only now: it is built for each kind of machine, and no
 * other kind of file needs it.
 *
 * @throws {InputError} `missing-package` without that library
 */
export async function pngFile(scene: Scene, typeface: Typeface, dpi = USUAL_DPI): Promise<Buffer> {
  const { Resvg } = await neededPackage(
    '@resvg/resvg-js',
    () => import('@resvg/resvg-js'),
    'A PNG file',
    'Name a .pdf, .svg or .html file instead, or install flarewise again.',
  );
  const svg = toSvg(scene, { palette: PAPER, fontFamily: typeface.family });
  const renderer = new Resvg(svg, {
    background: PAPER.paper,
    fitTo: { mode: 'zoom', value: dpi / 72 },
    font: {
      loadSystemFonts: false,
      fontFiles: Object.values(typeface.files),
      defaultFontFamily: typeface.family,
    },
  });
  return renderer.render().asPng();
}
