import { appendFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { sharedFits } from '../../src/prepare/shared-fits.js';
import type { Twist } from './blind-logs.js';
import { blindBowler, blindChoices, LOGS, ranks } from './learning.js';
import { learningPage } from './learning-page.js';
import { narrowedBy } from './more-readings.js';
import { nightToNight } from './night-to-night.js';
import { blindOtherLane } from './other-lanes.js';
import { blindReadAim } from './read-aims.js';

/*
 * Writes LEARNING.md: some hours on a core of its own. What was worked out is kept in the folder named, so that a run that was stopped goes on
 * where it was. Empty the folder when the engine has changed.
 */

const [folder = 'flarewise-learning'] = process.argv.slice(2);
mkdirSync(folder, { recursive: true });
const fitter = sharedFits();

/** What was worked out of so many places, one after the other. */
function kept<T>(name: string, count: number, work: (place: number) => T): readonly T[] {
  const file = join(folder, `${name}.jsonl`);
  const lines = existsSync(file) ? readFileSync(file, 'utf8').split('\n').slice(0, -1) : [];
  for (let place = lines.length; place < count; place++) {
    const line = JSON.stringify(work(place));
    appendFileSync(file, `${line}\n`);
    lines.push(line);
    process.stderr.write(`${name} ${place + 1}/${count}\n`);
  }
  return lines.slice(0, count).map((line) => JSON.parse(line) as T);
}

/** Of so many bowlers some play no line that most shots stay on: they are left out. */
const COUNTS = {
  bowlers: 340,
  twisted: 30,
  ranked: 420,
  choosing: 60,
  lanes: 70,
  reading: 70,
  more: 40,
  nights: 60,
};

const TWISTS: Readonly<Record<string, Twist>> = {
  'a hyperbola as friction law': { otherLaw: 'hyperbola' },
  'a stretched friction law': { otherLaw: 'stretched' },
  'the pattern 3 ft longer': { longerFt: 3 },
  'the arrows read 1 board too high': { bias: { arrowsBoard: 1 } },
  'the breakpoint read 1 board too high': { bias: { breakpointBoard: 1 } },
  'the breakpoint read 1 ft too far': { bias: { breakpointFt: 1 } },
  'the 50 ft read 1 board too high': { bias: { boardAt50Ft: 1 } },
  'the pins read 1 board too high': { bias: { pinsBoard: 1 } },
};

/** How bowlers misread the aim of a night to come. */
const READERS: Readonly<Record<string, Twist>> = {
  'as usual': {},
  'the arrows read 1 board too high': { bias: { arrowsBoard: 1 } },
};

const LAST = LOGS.slice(-1);
const nameOf = (text: string): string => text.replaceAll(' ', '-');

/** The page is written after each round, a share of all, so that one that is stopped has something of everything. */
for (const share of [0.1, 0.2, 0.4, 0.6, 0.8, 1]) {
  const of = (count: number): number => Math.ceil(share * count);
  const ranked = kept('ranks', of(COUNTS.ranked), (place) => ranks(place, fitter));
  const bowlers = kept('bowlers', of(COUNTS.bowlers), (place) => blindBowler(place, LOGS, {}, fitter));
  const twisted = Object.entries(TWISTS).map(([name, twist]) => ({
    name,
    found: kept(nameOf(name), of(COUNTS.twisted), (place) => blindBowler(place, LAST, twist, fitter)),
  }));
  const choosing = kept('choices', of(COUNTS.choosing), (place) => blindChoices(place, fitter));
  const lanes = kept('lanes', of(COUNTS.lanes), (place) => blindOtherLane(place, fitter));
  const readers = Object.entries(READERS).map(([name, twist]) => ({
    name,
    found: kept(`aim-${nameOf(name)}`, of(COUNTS.reading), (place) => blindReadAim(place, twist, fitter)),
  }));
  const more = kept('more-readings', of(COUNTS.more), (place) => narrowedBy(place, fitter));
  const nights = kept('nights', of(COUNTS.nights), (place) => nightToNight(place, fitter));
  writeFileSync(
    new URL('LEARNING.md', import.meta.url),
    learningPage({ bowlers, twisted, ranked, choosing, lanes, readers, more, nights }),
  );
}
