import { USUAL_SEED, USUAL_TOP } from '../../src/base/search-limits.js';
import { USUAL_BUDGET } from '../../src/prepare/budget.js';
import { MOST_LISTED_SHOTS } from '../../src/records/log/shot-list.js';
import { MOST_LISTED_BOWLERS } from '../../src/records/read/bowler-list.js';
import { MOST_EXPORTED_MB } from '../../src/records/read/packed-core.js';
import { BUNDLE_FILE, JSON_FILE, LIST_FILE, STL_FILE } from '../../src/records/read/read-file.js';
import { USUAL_PRACTICE_WEIGHT } from '../../src/records/shared/beliefs.js';
import { USUAL_READING_ERRORS } from '../../src/records/shared/reading-errors.js';
import { loadPractice } from '../../src/records/shared/shared-data.js';
import { ARRIVES_ALIKE } from '../../src/search/scoring/world-statistics.js';
import { HIGH_BOARD, POCKET_BOARD, THIN_BOARD } from '../../src/simulate/pocket.js';
import { HIGH_SURFACE, LOW_SURFACE } from '../../src/simulate/worlds/assumed-surface.js';

/* Figures of README.md and DEVELOPERS.md that the program has: `<!--=worlds-->128<!--=-->` in the text. npm run reference. */

const percent = (share: number): string => String(Math.round(share * 100));
const grouped = (count: number): string => count.toLocaleString('en');
const { laydownBoard, launchDeg } = loadPractice().line;

/** What stands for each name. */
export const PAGE_FIGURES: Readonly<Record<string, string>> = {
  worlds: String(USUAL_BUDGET.worlds),
  cores: String(USUAL_BUDGET.cores),
  seed: String(USUAL_SEED),
  top: String(USUAL_TOP),
  practice: percent(USUAL_PRACTICE_WEIGHT),
  arrives: percent(ARRIVES_ALIKE),
  burn: `${percent(LOW_SURFACE.burnPerGame)} to ${percent(HIGH_SURFACE.burnPerGame)}`,
  carry: percent(HIGH_SURFACE.carriedDown),
  laydown: String(laydownBoard.farthest),
  launch: String(launchDeg.farthest),
  pocket: String(POCKET_BOARD),
  'pocket-boards': `${THIN_BOARD} to ${HIGH_BOARD}`,
  'error-arrows': String(USUAL_READING_ERRORS.arrowsAgainstTargetBoards),
  'error-breakpoint': String(USUAL_READING_ERRORS.breakpointBoards),
  'error-pins': String(USUAL_READING_ERRORS.pinsBoards),
  'record-mb': String(JSON_FILE.mostMb),
  'bundle-mb': String(BUNDLE_FILE.mostMb),
  'list-mb': String(LIST_FILE.mostMb),
  'stl-mb': String(STL_FILE.mostMb),
  'export-mb': String(MOST_EXPORTED_MB),
  'list-rows': grouped(MOST_LISTED_BOWLERS),
  'shot-rows': grouped(MOST_LISTED_SHOTS),
};

const FIGURE = /<!--=([\w-]+)-->[^<]*<!--=-->/g;

/** A page with its figures as they are now. @throws {Error} for a name that has none */
export const withFigures = (page: string): string =>
  page.replace(FIGURE, (_, name: string) => {
    const figure = PAGE_FIGURES[name];
    if (figure === undefined) throw new Error(`no figure is called ${name}`);
    return `<!--=${name}-->${figure}<!--=-->`;
  });

/** The names of a page's figures. */
export const figuresIn = (page: string): readonly string[] =>
  [...page.matchAll(FIGURE)].map(([, name]) => name as string);
