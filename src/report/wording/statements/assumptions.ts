import type { Assumptions } from '../../../records/answers/statements/assumptions.js';
import { unsureNumbers } from '../../../records/schemas/ball-uncertainty.js';
import { ballDeviations } from '../../text/ball-numbers.js';
import { given, givenWithUnit, type Units, withUnit } from '../../text/display-units.js';
import { decimals, finePercent, percent } from '../../text/figures.js';
import { lengthInFile } from './lengths.js';
import type { Wording } from './wording.js';

/** What an answer rests on, as sentences. */
export const ASSUMPTIONS: Wording<Assumptions> = {
  'own-core': ({ name, parts }) =>
    `The core is the ball’s own: ${name}, ${parts === 1 ? 'one part' : `${parts} parts`}. Nothing is fitted, so the drilled numbers have no bands.`,
  'own-core-cover': ({ thickness, unit, coverGcc, fillerGcc, weightLb }, units) =>
    `Cover ${lengthInFile(thickness, unit, units)} thick at ${coverGcc} g/cc, as the core file says; the filler’s ${fillerGcc.toFixed(2)} g/cc follows from the weight of ${givenWithUnit(weightLb, units.weight)}.`,
  'old-holes-left-out': () =>
    'The ball was drilled before. Its numbers here are those it had new, and its old holes are not drawn; `flarewise drilled` counts them.',
  'own-core-marks': ({ topWeightOz, pinToCgIn }, { ounce, arc }) =>
    `${
      topWeightOz === 0
        ? 'The core leaves the ball without top weight: its CG is at its centre'
        : `The core gives ${withUnit(topWeightOz, ounce)} of top weight and a CG ${withUnit(pinToCgIn, arc)} from the pin`
    }; the marker lies a quarter of the ball from the pin.`,

  'asymmetric-by-mass-bias': () => 'The core is taken as asymmetric, since a mass bias is published.',
  'plain-or-lobed': ({ apartIn }, { gyration }) =>
    `Whether the core is a plain body of revolution or has side features is not given, and its numbers do not say: half of the cores tried are plain, half lobed. Their drilled numbers can differ by ${withUnit(apartIn, gyration)}; set coreShape to "plain" or "lobed" to narrow the bands.`,
  'lobes-usual': ({ lobes }) =>
    `A lobed core is assumed to have ${lobes} noses; set lobes if it has a different number.`,
  'lobes-toward-mark': ({ lobes, isCountGiven }) =>
    `A lobed core is assumed to have ${lobes} noses, one of them toward the CG mark. Turned by half their spacing, drilled numbers of drilling angles ${180 / lobes}° apart${lobes === 4 ? ', such as 25° and 70°,' : ''} would be swapped: see how the maker shows the noses, and set ${isCountGiven ? '' : 'lobes and '}lobeFromMarkDeg.`,
  'lobes-any-way': ({ lobes }) =>
    `A lobed core is assumed to have ${lobes} noses. How they are turned about the pin cannot be seen, so the cores are tried turned every way.`,
  'no-mark': () =>
    'The CG lies on the pin, so there is no mark to aim at and no drilling angle: the layout is pin-to-PAP and VAL angle (or pin buffer) alone.',
  'core-under-cg': () =>
    'With so little differential the low-RG axis means nothing: the cores are placed under the CG mark, not under the pin.',
  'many-cores': ({ byTopWeightIn }, { gyration }) =>
    `The real core is not known, so many cores with the published numbers stand in for it: drilled numbers are medians, and the bands hold 9 of 10 cores.${byTopWeightIn === null ? '' : ` The top weight gives these cores ${withUnit(byTopWeightIn, gyration)} of intermediate differential.`}`,
  'usual-circumference': ({ circumferenceIn }, { arc }) =>
    `Circumference ${givenWithUnit(circumferenceIn, arc)}.`,

  'usual-grip': ({ fingerBoreIn, thumbBoreIn, wallIn, meetAtIn }, { bore, fineTape }) =>
    `Usual fingertip grip: inserts in ${withUnit(fingerBoreIn, bore)} bores${thumbBoreIn === null ? ', no thumb hole' : `, a slug in a ${withUnit(thumbBoreIn, bore)} thumb bore`}, drill-point hole ends. The two finger bores are then ${withUnit(wallIn, fineTape)} apart at the surface${meetAtIn === null ? '' : ` and run into each other ${withUnit(meetAtIn, fineTape)} below it`}.`,
  'usual-slug': ({ densityGcc }) => `Thumb slug of ${densityGcc} g/cc.`,
  'usual-inserts': ({ densityGcc }) => `Finger inserts of ${densityGcc} g/cc.`,
  'drilled-before': () =>
    'The ball was drilled before. The old slugs and inserts count as drilled out and the old holes as filled completely, down to the tips; open old holes are not supported.',
  'usual-plugs': ({ densityGcc }) => `Plugs of ${densityGcc} g/cc.`,
  'usual-old-grip': () => 'No sizes of the old grip are given, so the usual fingertip sizes are assumed.',
  'rg-about-drilled-centre': () => 'RG is taken about the drilled ball’s centre of mass.',
  'ounce-is-moment': ({ leastTakenOz, mostTakenOz }, { ounce }) =>
    `${ounce.name === 'oz' ? 'An ounce of static weight' : 'Static weight'} is moment over radius: a fingertip drilling takes ${given(leastTakenOz, ounce, 2)} to ${givenWithUnit(mostTakenOz, ounce, 2)} of top weight off, as common practice says, before a slug and inserts put some back. The difference between the two halves is 8/3 times as great.`,
  'ounce-is-difference': (_, { ounce }) =>
    `${ounce.name === 'oz' ? 'An ounce of static weight' : 'Static weight'} is the difference between two halves of the ball.`,

  'oil-on-ball': ({ carriedShare, bandWidthIn, mostWornPerPass }, { arc }) =>
    `Oil on the ball: a ring carries ${percent(carriedShare.least)} to ${percent(carriedShare.most)} % of the lane’s film, ${given(bandWidthIn.least, arc)} to ${givenWithUnit(bandWidthIn.most, arc)} wide; a turn that meets it grips less and takes up to ${percent(mostWornPerPass)} % off. This is an assumption, since no model is published; what flare does to the path depends on it.`,
  friction: ({ dry, oiled, grit, finishOnDry }) =>
    `Friction ${frictions(dry)} dry, ${frictions(oiled)} on heavy oil (8 of 10 simulated tries, at ${grit} grit), falling exponentially with the oil film: not measured, but fitted to the lines that bowlers play. A rougher cover grips more on oil and, by ${percent(finishOnDry.least)} to ${percent(finishOnDry.most)} % of that, on dry boards: an assumption.`,
  'wear-of-oil': ({ games, side, goneShare, burnPerGame, burnRange, carriedDown, carriedRange }) =>
    `Wear: ${games} games, most of them on the ${side}, have taken ${finePercent(goneShare)} % of the film in the middle of the track (${finePercent(burnPerGame)} % a game, ${finePercent(burnRange.least)} to ${finePercent(burnRange.most)}), and ${finePercent(carriedDown)} % of it (${finePercent(carriedRange.least)} to ${finePercent(carriedRange.most)}) lies past the pattern’s end. This is an assumption; no measured law is published.`,
  'usual-finish': ({ grit }) => `Cover finish ${grit} grit.`,

  'marking-and-making': (
    { markingIn, markingDeg, rgIn, differentialShare, topWeightOz, pinToCgIn },
    { markTape, gyration, ounce },
  ) =>
    `Layouts are marked to ${withUnit(markingIn, markTape)} and ${markingDeg}° (one standard deviation); balls are made to ${withUnit(rgIn, gyration)} of RG, ${percent(differentialShare)} % of differential, ${givenWithUnit(topWeightOz, ounce)} and ${withUnit(pinToCgIn, markTape)} of pin-to-CG.`,
  'usual-scatter': (
    { skill, speedMph, revRateRpm, axisTiltDeg, axisRotationDeg, launchAngleDeg },
    { speed },
  ) =>
    `Shots are assumed to vary as is usual for the skill “${skill}”: ±${givenWithUnit(speedMph, speed)}, ±${revRateRpm} rpm, ±${axisTiltDeg}° tilt, ±${axisRotationDeg}° rotation, ±${launchAngleDeg}° of direction (one standard deviation).`,
  'uncertain-release': (params, units) =>
    `These numbers of the bowler were measured or guessed, and may be off by (one standard deviation): ${UNCERTAIN.flatMap(
      ({ key, name, show }) => {
        const off = params[key];
        return off === undefined ? [] : [`${name} ${show(off, units)}`];
      },
    ).join(', ')}.`,
  'uncertain-ball': (params, units) =>
    `These numbers of the ball were guessed, and may be off by (one standard deviation): ${ballDeviations(unsureNumbers(params), params, units)}.`,
  'launch-of-centre': () =>
    'The bowler directs the ball’s centre of mass. How far the ball is turned about its axis at release differs from shot to shot: simulated tries take every turn, and a single shot is the mean of two that are half a turn apart.',
  'own-lines': ({ mostLaydownBoard, mostAngleDeg, feetPerArrows, pocketBoard }) =>
    `Every layout is rolled on its own line: the laydown board whose line, with the usual middle layout, comes closest to what bowlers play on such a pattern (laydown on board ${mostLaydownBoard} at most, directed at most ${mostAngleDeg}° out; on worn oil from the fresh line, ${feetPerArrows === 2 ? 'two' : feetPerArrows} boards with the feet for each at the arrows), and the direction in which the layout itself reaches board ${pocketBoard}. Every simulated try plays the line of the undisturbed shot.`,
  'no-wish': ({ entryDeg }) =>
    `No preference was given: layouts are ranked by how near the entry angle comes to ${entryDeg.least} to ${entryDeg.most} degrees.`,
  'nominal-shot': ({ pocketBoard }) =>
    `The shot is the bowler’s average one, on the line that brings this layout to board ${pocketBoard}.`,
};

const UNCERTAIN: readonly {
  readonly key: keyof Assumptions['uncertain-release'];
  readonly name: string;
  readonly show: (off: number, units: Units) => string;
}[] = [
  { key: 'speedMph', name: 'ball speed', show: (off, { speed }) => givenWithUnit(off, speed) },
  { key: 'revRateRpm', name: 'rev rate', show: (off) => `${off} rpm` },
  { key: 'axisTiltDeg', name: 'axis tilt', show: (off) => `${off} degrees` },
  { key: 'axisRotationDeg', name: 'axis rotation', show: (off) => `${off} degrees` },
  { key: 'papOverIn', name: 'PAP over', show: (off, { arc }) => givenWithUnit(off, arc) },
  { key: 'papUpIn', name: 'PAP up', show: (off, { arc }) => givenWithUnit(off, arc) },
];

const frictions = ({ least, most }: { readonly least: number; readonly most: number }): string =>
  `${decimals(least, 3)} to ${decimals(most, 3)}`;
