import type { Fault } from '../../../base/errors.js';
import type { MeshRefusals } from '../../../records/refusals/mesh-refusals.js';
import type { RefusalWords } from './refusal-words.js';

/** Meshes that bound no solid, in words. Places and lengths stand as in their file, where the person looks for them. */
export const MESH_WORDS: RefusalWords<MeshRefusals> = {
  'mesh-open': (mesh) => ({
    field: mesh.part,
    rule: 'must be closed, with two triangles at every edge',
    got: `${edges(mesh)} with one triangle only, the first at ${place(mesh)}`,
    hint: 'Close the holes in the program that made the mesh.',
  }),
  'mesh-crowded': (mesh) => ({
    field: mesh.part,
    rule: 'must have two triangles at every edge',
    got: `${edges(mesh)} with more than two, the first at ${place(mesh)}`,
    hint: 'Join bodies that share an edge or a face into one, or give each as a file of its own.',
  }),
  'mesh-mixed-sides': (mesh) => ({
    field: mesh.part,
    rule: 'must have all triangles facing the same way',
    got: `${edges(mesh)} between one that faces outward and one that faces inward, the first at ${place(mesh)}`,
    hint: 'Let the program that made the mesh unify its normals.',
  }),
  'mesh-cuts-itself': (mesh) => ({
    field: mesh.part,
    rule: 'must not cut or cover itself',
    got: `a surface that does, first at ${place(mesh)}`,
    hint: 'Join bodies that overlap into one, or give each as a file of its own.',
  }),
  'mesh-counted-twice': (mesh) => ({
    field: mesh.part,
    rule: 'must enclose each place once',
    got: `a body within a body, both facing outward, near ${place(mesh)}`,
    hint: 'If the inner one is a hollow, turn it to face inward; else give it as a file of its own.',
  }),
  'mesh-mixed-parts': (mesh) => ({
    field: mesh.part,
    rule: 'must have all its bodies facing outward',
    got: `one that faces inward among others, near ${place(mesh)}`,
    hint: 'Let the program that made the mesh turn it over.',
  }),
  'mesh-no-volume': ({ part }): Fault => ({
    field: part,
    rule: 'must enclose some matter',
    got: 'a flat one',
    hint: 'Was a solid body exported?',
  }),
  'mesh-sticks-out': (mesh) => ({
    field: mesh.part,
    rule: `must lie within ${short(mesh.room)} ${mesh.unit} of the ball's centre, inside the cover`,
    got: `a point ${short(mesh.reach)} ${mesh.unit} from it, at ${place(mesh)}`,
    hint: 'Check the unit of the file and where its origin lies in the ball.',
  }),
};

const edges = ({ edges: count }: MeshRefusals['mesh-open']): string =>
  count === 1 ? '1 edge' : `${count} edges`;

const place = ({ at, unit }: MeshRefusals['mesh-cuts-itself']): string =>
  `(${at.map(short).join(', ')}) ${unit}`;

const short = (x: number): string => String(Number(x.toPrecision(4)) + 0);
