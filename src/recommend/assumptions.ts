import type { OunceConvention } from '../ball/static-weights.js';
import { type Ball, USUAL_CIRCUMFERENCE_IN, USUAL_GRIT } from '../records/ball.js';
import type { Bowler } from '../records/bowler.js';
import { familiesOf } from './published-numbers.js';
import type { RecommendInputs } from './setting.js';
import { SCATTER_BY_SKILL } from './world.js';

/** What was assumed about a ball and its holes, because nobody said otherwise. */
export function drillingAssumptions(ball: Ball, bowler: Bowler, ounce: OunceConvention): string[] {
  const lines: string[] = [];
  if (!ball.coreShape)
    lines.push(
      familiesOf(ball).length === 1
        ? 'The core is taken as asymmetric, since a mass bias is published.'
        : 'Nobody said whether the core is a plain body of revolution or has side features, and its numbers do not tell: half the cores tried are plain, half lobed. Their drilled numbers can differ by 0.007 in; set coreShape to "plain" or "lobed" to narrow the bands.',
    );
  if (!ball.circumferenceIn) lines.push(`Circumference ${USUAL_CIRCUMFERENCE_IN} in.`);
  if (!bowler.grip)
    lines.push(
      `Usual fingertip grip: inserts in 31/32 in bores${bowler.thumbHole ? ', a slug in a 1 1/4 in thumb bore' : ', no thumb hole'}, drill-point hole ends.`,
    );
  lines.push(
    'The core is not known; cores of its family that share the published numbers stand for it, and the bands show how far they differ.',
  );
  lines.push('RG is about the drilled ball’s centre of mass.');
  lines.push(
    ounce === 'moment'
      ? 'An ounce of static weight is moment divided by radius; a scale that compares halves would read 8/3 as much.'
      : 'An ounce of static weight is the difference between two halves of the ball.',
  );
  return lines;
}

/** What was assumed about lane and cover for a simulated shot. */
export function shotAssumptions(ball: Ball): string[] {
  const lines = [
    'Fresh surface: each turn’s oil ring carries 5 to 30 % of the lane’s film in a band 0.15 to 0.4 in wide, and where a later turn meets it the ball grips less. This is an assumption of this project; no published model is known, and what flare does to the path rests on it.',
    'Friction falls from dry to oiled exponentially with the film (dry ±15 %).',
  ];
  if (!ball.surfaceGrit) lines.push(`Cover finish ${USUAL_GRIT} grit.`);
  return lines;
}

/** What was assumed about how shots and markings differ from one another. */
export function worldAssumptions(bowler: Bowler): string[] {
  const lines = ['Layouts are marked to 1/16 in and 2° (one standard deviation).'];
  if (!bowler.scatter) {
    const skill = bowler.skill ?? 'league';
    const s = SCATTER_BY_SKILL[skill];
    lines.push(
      `Shots repeat as assumed for the skill “${skill}”: ±${s.speedMph} mph, ±${s.revRateRpm} rpm, ±${s.axisTiltDeg}° tilt, ±${s.axisRotationDeg}° rotation, ±${s.launchAngleDeg}° of direction (one standard deviation).`,
    );
  }
  return lines;
}

const LINE_ASSUMPTION =
  'All layouts are compared on one line: the one on which the usual middle layout reaches board 17.5, with its breakpoint near the pattern length less 31.';

const NO_WISH_ASSUMPTION =
  'No wish was given: layouts are ranked by how near the entry angle comes to 4 to 6 degrees.';

/** Everything a ranking of layouts rests on. */
export const allAssumptions = ({ bowler, ball, want }: RecommendInputs): string[] => [
  ...drillingAssumptions(ball, bowler, 'moment'),
  ...shotAssumptions(ball),
  ...worldAssumptions(bowler),
  LINE_ASSUMPTION,
  ...(Object.values(want).every((step) => step === undefined) ? [NO_WISH_ASSUMPTION] : []),
];
