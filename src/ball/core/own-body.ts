import { type BallBody, shellMoments, sphereMoments } from '../drill/ball-body.js';
import { addMoments, type Moments, NO_MOMENTS } from '../mass/mass-properties.js';
import { type Layer, type Solid, solidMoments } from '../solid/layered-core.js';
import type { Part } from '../solid/part.js';
import { sharedMatter } from './shared-matter.js';

/** A solid with its own density, kg/m³. */
export type DenseSolid = Solid & { readonly density: number };

/** A core as its designer knows it, in C: cover and solids. Where solids share space, the later one counts. SI. */
export interface OwnCore {
  readonly coverThickness: number;
  readonly coverDensity: number;
  readonly solids: readonly DenseSolid[];
}

/** The ball around a core of known densities. */
export interface OwnBody {
  /** The filler's density follows from the weight; the caller checks whether such a filler is made. */
  readonly body: BallBody;
  /** Volume of each solid that no later one covers, m³. */
  readonly volumes: readonly number[];
}

/**
 * The ball that a core makes at a given weight.
 *
 * Solids that keep clear of one another have their moments in closed form; where they share space, `sharedMatter` measures what a later
 * one hides of an earlier one.
 *
 * @param radius  the ball's, m
 * @param mass    the ball's, kg
 */
export function ownBody(
  { coverThickness, coverDensity, solids }: OwnCore,
  radius: number,
  mass: number,
): OwnBody {
  const { hidden } = sharedMatter(solids);
  const seen = solids.map((solid, i) => addMoments(solidMoments(solid), hidden[i], -1));
  const cover = shellMoments({ radius, coverThickness, coverDensity, fillerDensity: 0 }).mass;
  const core = solids.reduce((sum, { density }, i) => sum + density * seen[i].mass, 0);
  const room = sphereMoments(radius - coverThickness, 1).mass - seen.reduce((sum, m) => sum + m.mass, 0);
  const fillerDensity = (mass - cover - core) / room;

  const layers = solids.map(
    ({ density, ...solid }): Layer => ({ ...solid, excess: density - fillerDensity }),
  );
  const excess = layers.map((layer) => layer.excess);
  const shell = { radius, coverThickness, coverDensity, fillerDensity };
  return {
    body: hidden.every((m, i) => m.mass <= TOUCH * seen[i].mass)
      ? apart(shell, layers)
      : { ...shell, core: [], layers: { layers, moments: total(seen, excess) } },
    volumes: seen.map((m) => m.mass),
  };
}

/** Share of its volume that a solid may seem to share with another by rounding, where their faces lie in one plane. */
const TOUCH = 1e-9;

/** Parts that keep clear of one another take the fast way; meshes stay layers. */
function apart(shell: Omit<BallBody, 'core' | 'layers' | 'fillings'>, layers: readonly Layer[]): BallBody {
  const meshes = layers.filter((layer) => 'mesh' in layer);
  const core = layers.filter((layer): layer is Part => !('mesh' in layer));
  if (meshes.length === 0) return { ...shell, core };
  const moments = total(
    meshes.map(solidMoments),
    meshes.map((layer) => layer.excess),
  );
  return { ...shell, core, layers: { layers: meshes, moments } };
}

const total = (each: readonly Moments[], densities: readonly number[]): Moments =>
  each.reduce((sum, m, i) => addMoments(sum, m, densities[i]), NO_MOMENTS);
