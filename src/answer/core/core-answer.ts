import { solidReach } from '../../ball/solid/solid-reach.js';
import { from, GRAM_PER_CC, INCH, OUNCE, POUND, to } from '../../base/units.js';
import { cautionsFor } from '../../explain/cautions.js';
import { norm } from '../../math/vec3.js';
import { examineCore, type OwnBall } from '../../prepare/own-core.js';
import type { CoreAnswer } from '../../records/answers/answer.js';
import type { Assumption } from '../../records/answers/statements/assumptions.js';
import { Refusal } from '../../records/refusals/refusal.js';
import type { Ball, OwnCoreBall } from '../../records/schemas/ball.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import type { CorePart } from '../../records/schemas/core.js';
import { VERSION } from '../../records/shared/version.js';
import { formatLayout, type LayoutNumbers } from '../../records/text/layout-text.js';
import { coreSection } from './core-section.js';
import { holeShadows } from './hole-shadows.js';

/** Whose holes are drawn into a core. */
interface DrilledFor {
  readonly bowler: Bowler;
  readonly layout: LayoutNumbers;
}

/**
 * Checks, weighs and cuts a core. One that makes no ball is cut all the same, since a picture shows a slip at once; why it makes none
 * comes with it.
 *
 * @param ball    around the core to be looked at
 * @param record  the ball's record, of which the numbers are compared; null where none was named
 * @throws {Refusal} as `readStl` does; as `holeShadows` does
 */
export function coreAnswer(
  ball: OwnCoreBall,
  record: Ball | null,
  drilledFor: DrilledFor | null,
): { readonly answer: CoreAnswer; readonly refusal: Refusal | null } {
  const { core } = ball.coreFile;
  const { radius, coverThickness, solids, made: result } = examineCore(ball, 'right');
  const refusal = result instanceof Refusal ? result : null;
  const made = result instanceof Refusal ? null : result;
  const holes = made && drilledFor ? holeShadows(ball, drilledFor.bowler, drilledFor.layout) : [];
  const cut = { radius, solids, made, holes };
  const answer: CoreAnswer = {
    schema: 'flarewise/core-check/1',
    version: VERSION,
    core: core.name,
    note: core.note ?? null,
    ball: record?.name ?? null,
    weightLb: ball.weightLb,
    unit: core.unit,
    radiusIn: to(radius, INCH),
    cover: { thicknessIn: to(coverThickness, INCH), densityGcc: core.cover.densityGcc },
    parts: core.parts.map((part, i) => partAnswer(part, i, made)),
    reachIn: to(Math.max(...solids.map(solidReach)), INCH),
    numbers: made && numbersOf(made),
    published: record && publishedOf(record),
    refused: refusal?.statements.map(({ code }) => code) ?? [],
    sections: [coreSection('pin-marker', cut), coreSection('equator', cut)],
    layout: holes.length > 0 && drilledFor ? formatLayout(drilledFor.layout) : null,
    known: made ? [...made.known, ...oldHolesOf(ball)] : [],
    doubts: made ? [...made.warnings] : [],
    cautions: made ? cautionsFor({ warnings: [] }) : [],
  };
  return { answer, refusal };
}

const oldHolesOf = ({ drilledBefore = [] }: OwnCoreBall): Assumption[] =>
  drilledBefore.length > 0 ? [{ code: 'old-holes-left-out', params: {} }] : [];

/** A letter for each of up to sixty parts; o stands for a hole. */
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnpqrstuvwxyz123456789';

function partAnswer(part: CorePart, i: number, made: OwnBall | null): CoreAnswer['parts'][number] {
  const { densityGcc, shape } = part;
  return {
    sign: LETTERS[i],
    name: part.name ?? `part ${i + 1}`,
    shape,
    densityGcc,
    weightLb: made && to(from(densityGcc, GRAM_PER_CC) * made.volumes[i], POUND),
    share: made ? made.shares[i] : null,
  };
}

const numbersOf = ({ numbers, p_BoBcm_C, body }: OwnBall): NonNullable<CoreAnswer['numbers']> => ({
  rgIn: to(numbers.lowRg, INCH),
  differentialIn: to(numbers.differential, INCH),
  intermediateDifferentialIn: to(numbers.intermediateDifferential, INCH),
  pinToCgIn: to(numbers.pinToCg * numbers.radius, INCH),
  topWeightOz: to(numbers.topMoment / numbers.radius, OUNCE),
  cgOffsetIn: to(norm(p_BoBcm_C), INCH),
  fillerGcc: to(body.fillerDensity, GRAM_PER_CC),
});

function publishedOf(record: Ball): NonNullable<CoreAnswer['published']> {
  const { rgIn, differentialIn, intermediateDifferentialIn, pinToCgIn, topWeightOz } = record;
  return {
    rgIn: rgIn ?? null,
    differentialIn: differentialIn ?? null,
    intermediateDifferentialIn: intermediateDifferentialIn ?? null,
    pinToCgIn: pinToCgIn ?? null,
    topWeightOz: topWeightOz ?? null,
  };
}
