/** A formula, and the exported function or constant that computes it. */
interface Formula {
  readonly says: string;
  readonly name: string;
}

const of = (formulas: Readonly<Record<string, string>>): readonly Formula[] =>
  Object.entries(formulas).map(([name, says]) => ({ name, says }));

/** Where each formula is, by part of the chain from a ball's numbers to a score; `npm run house` finds file and line. */
export const FORMULAS: Readonly<Record<string, readonly Formula[]>> = {
  'Mass of the ball': of({
    addMoments: 'moments of pieces add: m, Σ m r, Σ m r rᵀ about one point',
    fromMoments: 'moments about Bo into mass, Bcm and I_Bcm = tr(S) 1 − S, then parallel axes',
    partMoments: 'moments of an ellipsoid, cylinder, box or cone under an affine map',
    sphereMoments: 'uniform sphere: second moment 4πρR⁵/15 along each axis',
    meshMoments: 'moments of a closed mesh, tetrahedron by tetrahedron',
    wantedMoments: 'principal moments from RG, differential, intermediate differential: I = m·RG²',
    wantedCore: 'what the core must have, once cover and filler are chosen (closed form)',
    solveCore: 'stretches, density and shift that give a shape those moments',
    fitEnsemble: 'differing cores that all have the published numbers',
    sharedMatter: 'what overlapping solids share',
    asMade: 'a made ball against its published numbers',
  }),
  'Layout and drilling': of({
    pinBuffer: 'sin(buffer) = sin(pin-to-PAP) · sin(VAL angle)',
    markerToPap: 'cos(marker-to-PAP) from the spherical triangle pin, marker, PAP',
    toAngles: 'distances into angles, where such a layout exists',
    placeLayout: 'R_BC: how the layout turns the core in the ball',
    segmentDistance: 'least distance of two segments, for walls between bores',
    wallBetween: 'wall between two bores: distance of their axes less both radii',
    boreLips:
      'lip over a slanted bore: R (1 − sin γ / sin(α + γ)), from the triangle of edge, wall and centre',
    mouthEdge: 'edge of a slanted bore’s oval mouth',
    holeMarks: 'marks of holes to 1/64 in whose roundings do not add up',
    arcAngle: 'arc between two points: atan2(|u × v|, u · v)',
    otherLeg: 'right spherical triangle: cos h = cos a · cos b',
    crossingOf: 'where two arcs of a tape cross',
    placeGrip: 'bores from span, bridge and pitches',
    excavate: 'lines that stand for a hole, by Gauss’s rule over its disk',
    driller: 'core, filler and cover taken out along those lines',
    plugsOf: 'fillings of earlier holes',
    inertiaNumbers: 'RG = √(I/m) about Bcm, differential = high − low, intermediate = high − middle',
    flareStart: 'first turn of a free body: 2π |J⁻¹(J n × n)|, at most π (high − low)/middle',
    staticWeights: 'ounces of static weight: moment over radius, or the difference of two halves',
  }),
  'Motion on the lane': of({
    releaseAxis: 'axis at release from tilt and rotation',
    launchState: 'Bcm is sent down the line; v_Bo = v − ω × d',
    slidingRates: 'Newton–Euler with Coulomb friction at the contact',
    rollingRates: 'the same without slip, and the friction it needs',
    writeKinematics: 'rates of place and orientation: q̇ = ½ ω q',
    rungeKuttaStep: 'classical fourth order',
    layOil: 'oil film of a pattern over the lane',
    frictionUnder: 'oiled + (dry − oiled) exp(−film/scale), for the cover’s finish',
    wearOf: 'oil that games take and carry down',
    layPlace: 'oil that a contact leaves on the ball, place by place of a ring',
    meetNearRings:
      'oil of earlier rings that the contact meets again: (1 − o²)² at o band widths from the ring',
    rollShot: 'release to pins: RK4 between events',
  }),
  'Numbers of a shot': of({
    hookOf: 'hook start, sharpness',
    rollHeading:
      'heading in which a ball rolls on: square to J ω + m ρ×v_Bcm, its angular momentum about the contact',
    cornerOf: 'where the launch line meets the line into the pins',
    breakpointOf: 'farthest point toward the gutter',
    flareOf: 'tape distance from the first oil ring to the last',
    bowTie: 'where the rings cross',
    reactionNumbers: 'all of them',
    reAim: 'direction that brings a layout to the pocket',
  }),
  'Worlds, score, reasons': of({
    drawDeviations: 'release scatter, spin phase, marking, core, making, friction, ring oil',
    scrambledSobol: 'evenly spread points of the unit cube, scrambled by a seed',
    drawSurface: 'friction drawn jointly',
    asExponential: 'a film under a friction law of another shape',
    fitWithPrior: 'posterior of the unknowns from logged nights: Gauss–Newton with the prior',
    aboutTheMean: 'mean and scatter of readings over shots, by points √5 deviations off',
    fillGutters: 'means of nights with the shots that fell into the gutter',
    misfitOf: 'whether a log fits the model: chi-square, each reading and night left out',
    bayesFactor: 'how much likelier a log is if a belief holds',
    nextReadings: 'what one more reading would teach: fall of the expected variance',
    offUsual: 'how far a line is from those that bowlers play',
    targetsOf: 'wishes into targets: quantiles of what layouts attain',
    score: 'how near a shot comes to the targets',
    krige: 'scores smoothed over layouts',
    shapleyShares: 'share of each number of the layout in a difference: mean over all orders',
    splitCauses: 'a difference by centre of mass, flare and inertia; they sum to it',
    missRoom: 'how far one shot may miss',
    valueOfKnowing: 'value of knowing an unknown: mean of the best local means, less the best mean',
  }),
};
