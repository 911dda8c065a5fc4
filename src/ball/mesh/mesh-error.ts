import { type Fault, InputError } from '../../base/errors.js';
import type { Vec3 } from '../../math/vec3.js';
import { coreToFile, type MeshPose } from './mesh.js';
import type { MeshFault } from './mesh-fault.js';

/** What a person needs to find a place of a mesh again: where it lies in the file, and the file's unit. */
export interface MeshView {
  readonly pose: MeshPose;
  /** Name of the file's unit, such as `mm`. */
  readonly unitName: string;
  /** What the person called the file. */
  readonly source?: string;
}

/** All faults of a mesh as one error, `bad-mesh`; places as they stand in the file. */
export function meshError(faults: readonly MeshFault[], view: MeshView): InputError {
  return new InputError(
    'bad-mesh',
    faults.map((fault) => ({ field: 'mesh', ...wordMeshFault(fault, view) })),
    view.source,
  );
}

type Words = Omit<Fault, 'field'>;

function wordMeshFault(fault: MeshFault, view: MeshView): Words {
  const there = placeIn(view, fault.at);
  switch (fault.kind) {
    case 'open':
      return {
        rule: 'must be closed, with two triangles at every edge',
        got: `${edges(fault.edges)} with one triangle only, the first at ${there}`,
        hint: 'Close the holes in the program that made the mesh.',
      };
    case 'crowded':
      return {
        rule: 'must have two triangles at every edge',
        got: `${edges(fault.edges)} with more than two, the first at ${there}`,
        hint: 'Join bodies that share an edge or a face into one, or give each as a file of its own.',
      };
    case 'mixed-sides':
      return {
        rule: 'must have all triangles facing the same way',
        got: `${edges(fault.edges)} between one that faces outward and one that faces inward, the first at ${there}`,
        hint: 'Let the program that made the mesh unify its normals.',
      };
    case 'cuts-itself':
      return {
        rule: 'must not cut or cover itself',
        got: `a surface that does, first at ${there}`,
        hint: 'Join bodies that overlap into one, or give each as a file of its own.',
      };
    case 'counted-twice':
      return {
        rule: 'must enclose each place once',
        got: `a body within a body, both facing outward, near ${there}`,
        hint: 'If the inner one is a hollow, turn it to face inward; else give it as a file of its own.',
      };
    case 'mixed-parts':
      return {
        rule: 'must have all its bodies facing outward',
        got: `one that faces inward among others, near ${there}`,
        hint: 'Let the program that made the mesh turn it over.',
      };
    case 'no-volume':
      return { rule: 'must enclose some matter', got: 'a flat one', hint: 'Was a solid body exported?' };
    case 'sticks-out':
      return {
        rule: `must lie within ${length(view, fault.room)} of the ball's centre, inside the cover`,
        got: `a point ${length(view, fault.reach)} from it, at ${there}`,
        hint: 'Check the unit of the file and where its origin lies in the ball.',
      };
  }
}

const edges = (count: number): string => (count === 1 ? '1 edge' : `${count} edges`);

const short = (x: number): string => String(Number(x.toPrecision(4)) + 0);

const length = ({ pose, unitName }: MeshView, m: number): string => `${short(m / pose.unit)} ${unitName}`;

const placeIn = ({ pose, unitName }: MeshView, p_C: Vec3): string =>
  `(${coreToFile(pose, p_C).map(short).join(', ')}) ${unitName}`;
