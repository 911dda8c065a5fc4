import { escapeXml } from './escape-xml.js';
import type { Palette, Scene, SceneNode, Stroke, TextNode } from './scene.js';
import { trim } from './shapes.js';

/**
 * A scene as an SVG element.
 *
 * @param palette     a CSS colour for each ink
 * @param fontFamily  as CSS names it
 * @param attributes  additional ones for the root: size, class
 * @param style       CSS to carry along, such as an embedded font; none for a picture inside a page
 */
export function toSvg(
  scene: Scene,
  {
    palette,
    fontFamily,
    attributes = '',
    style = '',
  }: { palette: Palette; fontFamily: string; attributes?: string; style?: string },
): string {
  const { width, height, title, description, nodes } = scene;
  const body = nodes.map((node) => nodeText(node, palette)).join('\n');
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${trim(width)} ${trim(height)}"${attributes && ` ${attributes}`}` +
    ` role="img" aria-label="${escapeXml(title)}" font-family="${escapeXml(fontFamily)}" font-kerning="none" font-variant-ligatures="none">\n` +
    `<title>${escapeXml(title)}</title>\n<desc>${escapeXml(description)}</desc>\n` +
    (style && `<style>${style}</style>\n`) +
    `${body}\n</svg>\n`
  );
}

function nodeText(node: SceneNode, palette: Palette): string {
  switch (node.kind) {
    case 'group': {
      const { name, dx = 0, dy = 0, nodes } = node;
      const moved = dx !== 0 || dy !== 0 ? ` transform="translate(${trim(dx)} ${trim(dy)})"` : '';
      const named = name ? ` data-part="${escapeXml(name)}"` : '';
      return `<g${named}${moved}>\n${nodes.map((each) => nodeText(each, palette)).join('\n')}\n</g>`;
    }
    case 'path':
      return `<path d="${node.d}" fill="${node.fill ? palette[node.fill] : 'none'}"${strokeText(node.stroke, palette)}/>`;
    case 'text':
      return textElement(node, palette);
  }
}

const strokeText = (stroke: Stroke | undefined, palette: Palette): string =>
  stroke
    ? ` stroke="${palette[stroke.ink]}" stroke-width="${trim(stroke.width)}" stroke-linejoin="round"` +
      (stroke.dash ? ` stroke-dasharray="${stroke.dash.map(trim).join(' ')}"` : '')
    : '';

function textElement({ x, y, text, size, weight, anchor, ink = 'ink' }: TextNode, palette: Palette): string {
  const bold = weight === 'bold' ? ' font-weight="700"' : '';
  const aligned = anchor && anchor !== 'start' ? ` text-anchor="${anchor}"` : '';
  return (
    `<text x="${trim(x)}" y="${trim(y)}" font-size="${trim(size)}"${bold}${aligned} fill="${palette[ink]}">` +
    `${escapeXml(text)}</text>`
  );
}
