import type { Point } from '../../../src/report/scene/shapes.js';

/** A drawn thing read back from an SVG's text: the named parts it stands in, and its points on the page. */
export interface Drawn {
  readonly parts: readonly string[];
  /** End points of a path's pieces, or where a text stands. */
  readonly points: readonly Point[];
  readonly text: string | null;
}

/** Everything an SVG of ours draws, with its moves added up. Knows the few elements a scene uses, and throws at others. */
export function readSvg(svg: string): Drawn[] {
  const drawn: Drawn[] = [];
  const groups: { part: string | null; at: Point }[] = [];
  const body = svg.replace(/<(title|desc|style)>[\s\S]*?<\/\1>/g, '');
  for (const [, close, name, attributes, inner] of body.matchAll(/<(\/?)(\w+)([^>]*?)\/?>([^<]*)/g)) {
    if (name === 'svg') continue;
    if (name === 'g' && close) groups.pop();
    else if (name === 'g') {
      const [, dx = '0', dy = '0'] = /translate\((\S+) (\S+)\)/.exec(attributes!) ?? [];
      const [x, y] = groups.at(-1)?.at ?? [0, 0];
      groups.push({ part: attribute(attributes!, 'data-part'), at: [x + Number(dx), y + Number(dy)] });
    } else if (name === 'path' || name === 'text') {
      if (close) continue;
      const [x, y] = groups.at(-1)?.at ?? [0, 0];
      const points =
        name === 'path'
          ? endPoints(attribute(attributes!, 'd') ?? '')
          : [[Number(attribute(attributes!, 'x')), Number(attribute(attributes!, 'y'))] as Point];
      drawn.push({
        parts: groups.flatMap(({ part }) => part ?? []),
        points: points.map(([px, py]): Point => [px + x, py + y]),
        text: name === 'text' ? plain(inner!) : null,
      });
    } else throw new Error(`an element that no scene has: ${name}`);
  }
  return drawn;
}

const attribute = (attributes: string, name: string): string | null => {
  const found = new RegExp(`(?:^| )${name}="([^"]*)"`).exec(attributes);
  return found ? plain(found[1]!) : null;
};

const plain = (text: string): string =>
  text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&');

/** Where the pieces of a path begin and end: moves, lines and arcs. */
function endPoints(d: string): Point[] {
  const points: Point[] = [];
  for (const [, command, numbers] of d.matchAll(/([MLAZ])([^MLAZ]*)/g)) {
    const values = numbers!.split(/[ ,]+/).filter(Boolean).map(Number);
    const each = command === 'A' ? 7 : 2;
    for (let i = each; i <= values.length; i += each) points.push([values[i - 2]!, values[i - 1]!]);
  }
  return points;
}

/** Middle of the points of an outline, each counted once. */
export function middleOf(points: readonly Point[]): Point {
  const distinct = [...new Map(points.map((point) => [point.join(), point])).values()];
  const mean = (i: 0 | 1): number => distinct.reduce((sum, point) => sum + point[i], 0) / distinct.length;
  return [mean(0), mean(1)];
}
