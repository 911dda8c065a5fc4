import type { Cautions } from '../../../records/answers/statements/cautions.js';
import { given, givenWithUnit, type Quantity, withUnit } from '../../text/display-units.js';
import { lengthInFile } from './lengths.js';
import type { Wording } from './wording.js';

/** What to be careful about, as sentences. */
export const CAUTIONS: Wording<Cautions> = {
  'few-cores': ({ found }) =>
    `Only ${found === 1 ? 'one core was' : `${found} cores were`} found with this ball’s numbers, too few to say how uncertain the drilled numbers are. Check the numbers for a typing mistake before anything is drilled.`,
  'unusual-build': ({ thinCoverIn, coverGcc }, { roughTape }) =>
    `This ball is at the edge of what is usually built: most of the cores with its numbers need an uncommon cover (under ${withUnit(thinCoverIn, roughTape)} thick, lighter than ${coverGcc.least} or heavier than ${coverGcc.most} g/cc) or a lighter filler than is common.`,

  'unlikely-unit': ({ field, unit, cover, reach, usualWith }, units) => {
    const what = [
      ...(cover === null ? [] : [`the cover is ${lengthInFile(cover, unit, units)} thick`]),
      ...(reach === null ? [] : [`the core reaches ${lengthInFile(reach, unit, units)} from the centre`]),
    ].join(' and ');
    const usual = usualWith.map((each) => `"${each}"`).join(' or ');
    return `With the unit "${unit}" in the core file (${field}) ${what}. With ${usual} it would be a usual core. Is that the unit you meant?`;
  },
  'part-turned-over': ({ part }) => `All triangles of ${part} faced inward; they were flipped.`,
  'part-hidden': ({ part, by }) =>
    `${part} lies inside ${by ?? 'parts that come later'} and has no effect: where parts share space, the later one fills it. If ${part} belongs inside, list it after ${by ?? 'them'} in the file.`,
  'part-apart': ({ part }) =>
    `${part} touches no other part of the core. If it should, check its centre, or its shift for a mesh.`,
  'core-upside-down': ({ pinToCgIn }, { arc }) =>
    `The CG lies ${withUnit(pinToCgIn, arc)} from the pin, on the far side of the ball. On real balls the pin and the CG are on the same side (common practice, no source): is the core upside down? Then turn the file's pin around, such as from [0, 0, 1] to [0, 0, -1].`,
  'marker-turned': ({ offPinIn }, { arc }) =>
    `The CG lies ${withUnit(offPinIn, arc)} from the pin, on the side away from the marker, although the marker of a symmetric core shows where its CG lies. Turn the file's marker around, such as from [1, 0, 0] to [-1, 0, 0].`,
  'core-top-heavy': ({ topWeightOz, usualOz }, { ounce }) =>
    `The core gives ${withUnit(topWeightOz, ounce)} of top weight; ${given(usualOz.least, ounce)} to ${givenWithUnit(usualOz.most, ounce)} is usual (common practice, no source). Check first how high its parts stand in the ball (centre, shift).`,
  'core-light': ({ densestGcc, fillerGcc, usualGcc }) =>
    `The core is hardly denser than the filler around it: its densest part has ${densestGcc} g/cc, the filler ${fillerGcc.toFixed(2)} g/cc. Such a core does next to nothing, and its CG and axes can lie anywhere. Check the densities of the parts first: those of cores are usually ${usualGcc.least} to ${usualGcc.most} g/cc (common practice, no source).`,
  'part-too-dense': ({ part, densityGcc, mostGcc }) =>
    `${part} of the core has ${densityGcc} g/cc, outside the sport's component rule, which allows up to ${mostGcc.toFixed(2)} g/cc.`,
  'axis-off-mark': ({ axis, offIn, mostIn, along, marked }, { arc }) => {
    const [name, mark] = axis === 'low-rg' ? ['low-RG', 'pin'] : ['high-RG', 'marker'];
    return `Before drilling the core's ${name} axis lies ${withUnit(offIn, arc)} from the ${mark}; the sport's marking rule allows ${withUnit(mostIn, arc)}. In the file's directions the axis is [${along.join(', ')}], and the ${mark} is [${marked.join(', ')}].`;
  },
  'cg-beside-line': ({ asideIn }, { arc }) =>
    `The CG lies ${withUnit(asideIn, arc)} off the line from pin to marker. Drilling angles are measured to the marker, not to the CG.`,
  'rg-not-as-made': ({ rgIn, allowedIn }, { gyration }) =>
    `The core gives the undrilled ball an RG of ${withUnit(rgIn, gyration)}; new balls must have ${gyration.show(allowedIn.least)} to ${withUnit(allowedIn.most, gyration)}.`,
  'differential-not-as-made': ({ differentialIn, mostIn }, { gyration }) =>
    `The core gives the undrilled ball a differential of ${withUnit(differentialIn, gyration)}; new balls may have up to ${withUnit(mostIn, gyration)}.`,
  'core-against-file': ({ number, ofCore, inFile }, units) => {
    const { name, quantity } = BESIDE_CORE[number];
    const [core, file] = quantity
      ? [withUnit(ofCore, units[quantity]), givenWithUnit(inFile, units[quantity])]
      : [`${ofCore.toFixed(2)} g/cc`, `${inFile} g/cc`];
    return `The core gives ${name} of ${core}, and the file says ${file}. The core is used.`;
  },

  'thin-bore-walls': ({ leastIn, walls }, { bore, fineTape }) =>
    `Less than ${withUnit(leastIn, bore)} of ball is left between bores and may crack: ${walls
      .map(({ hole, other, widthIn }) => `${withUnit(widthIn, fineTape)} between ${hole} and ${other}`)
      .join(', ')}.`,
  'thin-lips': ({ leastIn, lips }, { bore, fineTape }) =>
    `Less than ${withUnit(leastIn, bore)} of ball is left over a slanted bore, just behind its edge, and may chip: ${lips
      .map(({ hole, widthIn }) => `${withUnit(widthIn, fineTape)} over the ${hole}`)
      .join(', ')}. Move its mouth away from the hole or let it meet the hole deeper.`,
  'bores-meet-below': ({ hole, other, depthIn, sleevesToIn }, { fineTape }) =>
    `The bores of ${hole} and ${other} meet ${withUnit(depthIn, fineTape)} below the surface, since both lean toward the middle of the ball: usual with a narrow bridge (common practice, no source). ${
      sleevesToIn !== null && sleevesToIn > depthIn
        ? `Their inserts go down to ${withUnit(sleevesToIn, fineTape)} and will touch: shorten them, or have the fitter widen the bridge or pitch the fingers apart.`
        : 'Drill no deeper than the fit needs, and fasten nothing to the wall between them; or have the fitter widen the bridge or pitch the fingers apart.'
    }`,

  'trained-people-only': () =>
    'A hole cannot be undone. Leave drilling to trained people: guarded machine, ball clamped, eye, ear and breathing protection, no gloves at the drill.',
  'dust-and-resin': () =>
    'Keep dust and resin off skin and out of lungs: plugging compounds can contain isocyanates.',
  'qualified-fitter': () =>
    'Fit, span and pitch belong to a qualified fitter. If thumb, finger or wrist hurts or goes numb, stop and see a clinician; a ball that strains them may be too heavy.',
  'local-rules': () => 'The rules of your local body decide what is legal in competition.',

  'sanding-by-trained-people': () =>
    'Never sand or polish a ball on a running machine untrained: fingers, sleeves, hair and gloves get caught. Leave it to trained people, or sand by hand, with a mask, eye protection and water against dust.',
  'finish-in-competition': () =>
    'Local rules may forbid changing the finish during competition: ask before you do.',
};

type BesideCore = Cautions['core-against-file']['number'];

/** What each number beside a core is called, and how it is shown; a density in g/cc. */
const BESIDE_CORE: Readonly<
  Record<BesideCore, { readonly name: string; readonly quantity: Quantity | null }>
> = {
  rgIn: { name: 'an RG', quantity: 'gyration' },
  differentialIn: { name: 'a differential', quantity: 'gyration' },
  intermediateDifferentialIn: { name: 'an intermediate differential', quantity: 'gyration' },
  pinToCgIn: { name: 'a pin-to-CG', quantity: 'arc' },
  topWeightOz: { name: 'a top weight', quantity: 'ounce' },
  fillerDensityGcc: { name: 'a filler', quantity: null },
};
