import type { Typeface, Weight } from '../font/typeface.js';
import { PAPER, type Scene, textsOf } from './scene.js';
import { trim } from './shapes.js';
import { toSvg } from './to-svg.js';

/** Name of the embedded font, unlike that of any font on the reader's machine. */
const EMBEDDED = 'flarewise text';

/** A scene as an SVG file that needs nothing else: text is text, its font is inside, sizes are those of paper. */
export async function svgFile(scene: Scene, typeface: Typeface): Promise<string> {
  const size = `width="${trim(scene.width / 72)}in" height="${trim(scene.height / 72)}in"`;
  return toSvg(scene, {
    palette: PAPER,
    fontFamily: `'${EMBEDDED}', '${typeface.family}', sans-serif`,
    attributes: size,
    style: await embeddedFont(scene, typeface),
  });
}

/** CSS that brings along the letters a scene uses. */
export async function embeddedFont(scene: Scene, typeface: Typeface, family = EMBEDDED): Promise<string> {
  const texts = textsOf(scene.nodes);
  const face = async (weight: Weight, css: number): Promise<string> => {
    const used = texts.filter((node) => (node.weight ?? 'regular') === weight).map(({ text }) => text);
    if (used.length === 0) return '';
    const data = (await typeface.cut(used.join(''), weight)).toString('base64');
    return `@font-face{font-family:'${family}';font-weight:${css};src:url(data:font/ttf;base64,${data}) format('truetype')}`;
  };
  return (await face('regular', 400)) + (await face('bold', 700));
}
