import { cube, fifth } from '../../math/power.js';
import { cos, sin } from '../../math/sin-cos.js';
import type { Vec3 } from '../../math/vec3.js';
import { hasMassBias } from '../../records/schemas/core-families.js';
import { coreLean, type PublishedNumbers, wantedMoments } from './published.js';

/** A ball's cover: thickness in m, density in kg/m³. */
export interface Cover {
  readonly coverThickness: number;
  readonly coverDensity: number;
}

/**
 * What a core must have so that its ball has the published numbers: moments of its excess over the filler it displaces, in C or, where
 * the core leans (`coreLean`), in the frame that leans with it. SI.
 */
export interface WantedCore {
  readonly mass: number;
  /** Its centre of mass, from Bo. */
  readonly centre: Vec3;
  /** ∫x² dm, ∫y² dm, ∫z² dm about that centre; the products of different axes are zero. */
  readonly second: Vec3;
  /** Whether the ball's principal axes pass near enough to their marks. */
  readonly isAligned: boolean;
}

/**
 * Angle allowed between a principal axis and its mark, rad: 8°, 0.6 in on the surface. The sport allows 1 in to
 * the pin and 1.5 in to the mass-bias mark (USBC equipment news, in force 31 Jan 2012).
 */
const OFF_MARK = (8 * Math.PI) / 180;

/**
 * Prepares what the core must have, whatever its shape, once a filler is chosen: the mass is what cover and
 * filler leave, the centre follows from the top weight, the second moments from RG and differentials.
 *
 * In closed form: let S be the ball's second moments about its centre of mass, w the first moment and m the
 * core's mass, M the ball's. By parallel axes S = D + k w wᵀ, where k = 1/m − 1/M and D is diagonal: cover,
 * filler, and the core about its own centre. As w lies in the plane through pin and marker, y is a principal axis of
 * S, and along x and z trace and determinant are known from the two principal values.
 *
 * A symmetric core has equal second moments along x and y; its ball meets RG and differential, and w leaves it
 * a little intermediate differential (up to 0.001 in at 3 oz and 3 in).
 *
 * @returns filler density, kg/m³ ↦ what the core must have. Where no core can have it, its mass or a second moment is not above zero, or
 *   `isAligned` is false
 */
export function wantedCore(published: PublishedNumbers, cover: Cover): (fillerDensity: number) => WantedCore {
  const { mass: ballMass, radius, topMoment, pinToCg } = published;
  const inner = radius - cover.coverThickness;
  const coverMass = BALL_VOLUME * cover.coverDensity * (cube(radius) - cube(inner));
  const coverSecond = BALL_SECOND * cover.coverDensity * (fifth(radius) - fifth(inner));
  const toCg = pinToCg - coreLean(published); // from the core's axis
  const [wx, wz] = [topMoment * sin(toCg), topMoment * cos(toCg)];
  const diagonal = hasMassBias(published.family) ? unequal(published) : equalAcross(published);
  return (fillerDensity) => {
    const mass = ballMass - coverMass - BALL_VOLUME * cube(inner) * fillerDensity;
    const round = coverSecond + BALL_SECOND * fifth(inner) * fillerDensity;
    const k = 1 / mass - 1 / ballMass;
    const [x, y, z] = diagonal(k, wx, wz);
    // twice the angle from z to the low-RG axis has tangent across/along; NaN (no real x and z) is not aligned
    const along = z - x + k * (wz * wz - wx * wx);
    const across = 2 * k * wx * wz;
    return {
      mass,
      centre: [wx / mass, 0, wz / mass],
      second: [x - round, y - round, z - round],
      isAligned: across === 0 || along >= cos(2 * OFF_MARK) * Math.sqrt(along * along + across * across),
    };
  };
}

/** Volume, and second moment along an axis at density one, of a ball of radius one. */
const BALL_VOLUME = (4 / 3) * Math.PI;
const BALL_SECOND = (4 / 15) * Math.PI;

/** The diagonal of D from k and w. */
type Diagonal = (k: number, wx: number, wz: number) => Vec3;

/** D of a ball whose three moments of inertia are given: the low one about the pin's axis, the middle one about y. */
function unequal(published: PublishedNumbers): Diagonal {
  const [low, middle, high] = wantedMoments(published);
  const y = (low + high - middle) / 2;
  const trace = middle; // of S along x and z: the moment of inertia about y
  const determinant = ((middle + high - low) * (low + middle - high)) / 4;
  return (k, wx, wz) => {
    const sum = trace - k * (wx * wx + wz * wz); // x + z
    // x z + k (x wz² + z wx²) = determinant, with x = sum − z; z is the larger root
    const half = (sum + k * (wx * wx - wz * wz)) / 2;
    const z = half + Math.sqrt(half * half + k * sum * wz * wz - determinant);
    return [sum - z, y, z];
  };
}

/** D of a ball with x = y: the high moment of inertia is the one about y, since w adds to S along x and z only. */
function equalAcross(published: PublishedNumbers): Diagonal {
  const [low, , high] = wantedMoments(published);
  return (k, wx, wz) => {
    const sum = high - k * (wx * wx + wz * wz); // x + z
    if (wx === 0) return [low / 2, low / 2, sum - low / 2];
    // S along z and x has the values high − low + x and low − x; in their product x² cancels
    const x = (low * (high - low) - k * sum * wx * wx) / (high + sum - 2 * low + k * (wz * wz - wx * wx));
    return [x, x, sum - x];
  };
}
