import { type Mat3, mulVec, transpose } from '../../math/mat3.js';
import { add, scale, sub, type Vec3 } from '../../math/vec3.js';
import { weld } from './weld.js';

/** The surface of a solid as triangles, in the frame C of a core. */
export interface Mesh {
  /** x, y, z of every vertex, m. */
  readonly positions: Float64Array;
  /** Three vertices a triangle, counterclockwise seen from outside. */
  readonly triangles: Uint32Array;
  /** Distance that means nothing, m: about what is lost by writing coordinates as float32. */
  readonly grain: number;
}

/** Where the frame F of a mesh file lies in C, and how long the file's unit is. */
export interface MeshPose {
  /** m per unit of the file. */
  readonly unit: number;
  readonly R_CF: Mat3;
  /** From the ball's centre to the file's origin, m. */
  readonly p_BoFo_C: Vec3;
}

/** A mesh in its place, and how many triangles of the file had no area because two of their corners met. */
interface PlacedMesh {
  readonly mesh: Mesh;
  readonly dropped: number;
}

/**
 * The mesh that a file's triangles form once corners that meet are one vertex, in C.
 *
 * Triangles that lose a side that way are dropped: their other two sides are each other's opposite, so the
 * surface stays as closed as it was. Flat ones with three corners apart stay: their neighbours need them.
 *
 * @param corners  nine numbers a triangle, in the file's unit, as `readStl` gives them
 */
export function placeMesh(corners: Float32Array, pose: MeshPose): PlacedMesh {
  const { points, cornerPoints, grain } = weld(corners);
  const triangles = new Uint32Array(cornerPoints.length);
  let kept = 0;
  for (let i = 0; i < cornerPoints.length; i += 3) {
    const [a, b, c] = [cornerPoints[i], cornerPoints[i + 1], cornerPoints[i + 2]];
    if (a === b || b === c || c === a) continue;
    triangles.set([a, b, c], kept);
    kept += 3;
  }
  const positions = new Float64Array(points.length);
  for (let i = 0; i < points.length; i += 3)
    positions.set(fileToCore(pose, [points[i], points[i + 1], points[i + 2]]), i);
  return {
    mesh: { positions, triangles: triangles.slice(0, kept), grain: pose.unit * grain },
    dropped: (cornerPoints.length - kept) / 3,
  };
}

const fileToCore = ({ unit, R_CF, p_BoFo_C }: MeshPose, p_F: Vec3): Vec3 =>
  add(p_BoFo_C, mulVec(R_CF, scale(unit, p_F)));

/** A point of C (m) as it is in the mesh file, in the file's unit: where the person can look it up. */
export const coreToFile = ({ unit, R_CF, p_BoFo_C }: MeshPose, p_C: Vec3): Vec3 =>
  scale(1 / unit, mulVec(transpose(R_CF), sub(p_C, p_BoFo_C)));

export const vertexAt = ({ positions }: Mesh, vertex: number): Vec3 => [
  positions[3 * vertex],
  positions[3 * vertex + 1],
  positions[3 * vertex + 2],
];
