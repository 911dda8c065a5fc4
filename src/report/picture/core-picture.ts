import type { CoreAnswer, CoreSection } from '../../records/answers/answer.js';
import { word } from '../scene/draw.js';
import type { Scene, SceneNode } from '../scene/scene.js';
import type { Point } from '../scene/shapes.js';
import type { Units } from '../text/display-units.js';
import { coreKey, type KeyRow, SWATCH } from './core-key.js';
import { sectionNodes } from './section-picture.js';

const WIDTH = 684;
/** Radius of what is drawn of a section, pt, and where its middles lie. */
const RADIUS = 106;
const MIDDLES = [170, 520] as const;
const MIDDLE = 152;
const KEY = MIDDLE + RADIUS + 42;
const ROW = 19;
const COLUMNS = 2;

const SECTION_TITLES: Readonly<Record<CoreSection['plane'], string>> = {
  'pin-marker': 'Through pin and marker',
  equator: 'Equator, seen from the pin',
};

/** Both sections of a core side by side, at one scale, and the key of its parts. */
export function corePicture(answer: CoreAnswer, units: Units): Scene {
  const { core, sections, radiusIn, reachIn, parts } = answer;
  const ptPerInch = RADIUS / Math.max(radiusIn, reachIn);
  const rows = coreKey(answer);
  const half = Math.ceil(rows.length / COLUMNS);
  return {
    width: WIDTH,
    height: KEY + ROW * half + 8,
    title: `${core}: two sections`,
    description:
      `The core cut through pin and marker, and through the equator. Parts: ` +
      `${parts.map(({ sign, name, densityGcc }) => `${sign} ${name}, ${densityGcc} g/cc`).join('; ')}.`,
    nodes: [
      ...sections.flatMap((section, i): SceneNode[] => [
        word(SECTION_TITLES[section.plane], [MIDDLES[i], 14], { weight: 'bold', anchor: 'middle' }),
        ...sectionNodes(section, answer, [MIDDLES[i], MIDDLE], ptPerInch),
      ]),
      ...scaleBar(ptPerInch, [WIDTH / 2, MIDDLE + RADIUS + 16], units),
      ...rows.map((row, i) =>
        keyRow(row, 10 + (WIDTH / COLUMNS) * Math.floor(i / half), KEY + ROW * (i % half)),
      ),
    ],
  };
}

/** A core's pictures for a page that sets them side by side or below one another: a section each, and the key. */
export const corePictures = (answer: CoreAnswer, units: Units): readonly Scene[] => [
  ...answer.sections.map((section) => {
    const title = SECTION_TITLES[section.plane];
    const ptPerInch = RADIUS / Math.max(answer.radiusIn, answer.reachIn);
    const middle = [ALONE / 2, RADIUS + 24] as const;
    return {
      width: ALONE,
      height: 2 * RADIUS + 66,
      title,
      description: `${title}, to scale: parts, cover, centre of gravity and principal axes.`,
      nodes: [
        ...sectionNodes(section, answer, middle, ptPerInch),
        ...scaleBar(ptPerInch, [ALONE - 40, 2 * RADIUS + 46], units),
      ],
    };
  }),
  {
    width: ALONE,
    height: ROW * coreKey(answer).length + 4,
    title: 'Key',
    description: 'Parts with their densities, and the signs of the sections.',
    nodes: coreKey(answer).map((row, i) => keyRow(row, 4, ROW * i + 2)),
  },
];

/** Width of a section that stands alone, pt. */
const ALONE = 336;

const keyRow = ({ swatch, said }: KeyRow, dx: number, dy: number): SceneNode => ({
  kind: 'group',
  dx,
  dy,
  nodes: [...swatch, word(said, [SWATCH[0] + 7, SWATCH[1] - 2])],
});

/** An inch, or the length of one in the reader's unit, to measure by. */
function scaleBar(ptPerInch: number, [middle, y]: Point, { tape }: Units): SceneNode[] {
  const x = middle - ptPerInch / 2;
  return [
    {
      kind: 'path',
      d: `M${x},${y - 3}V${y + 3}M${x},${y}H${x + ptPerInch}M${x + ptPerInch},${y - 3}V${y + 3}`,
      stroke: { ink: 'ink', width: 0.8 },
    },
    word(`${tape.show(1)} ${tape.name}`, [middle, y + 12], { anchor: 'middle' }),
  ];
}
