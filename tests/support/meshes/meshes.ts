import { type Mesh, placeMesh } from '../../../src/ball/mesh/mesh.js';
import { type MeshTree, meshTree } from '../../../src/ball/mesh/mesh-tree.js';
import { IDENTITY } from '../../../src/math/mat3.js';
import type { Facet } from './make-stl.js';

/** The mesh of loose triangles whose unit is the metre, unmoved. Coordinates are rounded to float32, as in a file. */
export const meshOf = (facets: readonly Facet[]): Mesh =>
  placeMesh(Float32Array.from(facets.flat(2)), { unit: 1, R_CF: IDENTITY, p_BoFo_C: [0, 0, 0] }).mesh;

export const treeOf = (facets: readonly Facet[]): MeshTree => meshTree(meshOf(facets));
