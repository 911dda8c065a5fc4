import type { Mesh } from './mesh.js';

/**
 * A mesh with boxes around its triangles, boxes around those, and so on up to one around all.
 *
 * Flat, in depth-first order: behind a node stands its first child, and `skip` is the next node when
 * its box is missed, so that walking the tree needs neither a stack nor memory. Plain arrays: survives a
 * structured clone. Its `triangles` are the mesh's, in the order of the leaves.
 */
export interface MeshTree extends Mesh {
  /** Least x, y, z and greatest x, y, z of every node, m. */
  readonly boxes: Float64Array;
  /** The node that follows when a node's box is missed. */
  readonly skip: Uint32Array;
  /** First triangle below each node. */
  readonly start: Uint32Array;
  /** How many triangles a leaf has; 0 marks an inner node. */
  readonly leafSize: Uint8Array;
}

/**
 * Builds the tree of a mesh: every node is cut in the middle of the longest side of its triangles' centres.
 *
 * A cut at the least expected work (surface-area heuristic) was tried: three times the time to build for
 * lines that are at most an eighth faster.
 */
export function meshTree(mesh: Mesh): MeshTree {
  return new TreeBuilder(mesh).build();
}

/** Most triangles of a leaf: opening a node costs a line about as much as trying two triangles. */
const LEAF = 4;

class TreeBuilder {
  private readonly order: Uint32Array; // of the triangles
  private readonly bounds: Float64Array; // six a triangle
  private readonly boxes: Float64Array;
  private readonly skip: Uint32Array;
  private readonly start: Uint32Array;
  private readonly leafSize: Uint8Array;
  private nodes = 0;

  constructor(private readonly mesh: Mesh) {
    const count = mesh.triangles.length / 3;
    this.order = new Uint32Array(count).map((_, i) => i);
    this.bounds = triangleBounds(mesh);
    this.boxes = new Float64Array(12 * count);
    this.skip = new Uint32Array(2 * count);
    this.start = new Uint32Array(2 * count);
    this.leafSize = new Uint8Array(2 * count);
  }

  build(): MeshTree {
    if (this.order.length > 0) this.addNode(0, this.order.length);
    const { triangles } = this.mesh;
    const sorted = new Uint32Array(triangles.length);
    this.order.forEach((from, to) => {
      for (let k = 0; k < 3; k++) sorted[3 * to + k] = triangles[3 * from + k];
    });
    return {
      ...this.mesh,
      triangles: sorted,
      boxes: this.boxes.slice(0, 6 * this.nodes),
      skip: this.skip.slice(0, this.nodes),
      start: this.start.slice(0, this.nodes),
      leafSize: this.leafSize.slice(0, this.nodes),
    };
  }

  /** Writes the node of the triangles `from` to `to` (exclusive) of the order, and all below it; returns its number. */
  private addNode(from: number, to: number): number {
    const { boxes } = this;
    const node = this.nodes++;
    this.start[node] = from;
    empty(boxes, node);
    if (to - from <= LEAF) {
      this.leafSize[node] = to - from;
      for (let i = from; i < to; i++) grow(boxes, node, this.bounds, this.order[i]);
    } else {
      const middle = this.cut(from, to);
      grow(boxes, node, boxes, this.addNode(from, middle));
      grow(boxes, node, boxes, this.addNode(middle, to));
    }
    this.skip[node] = this.nodes;
    return node;
  }

  /** Puts the triangles on the near side of the cut first; returns where the far side begins. Neither side is empty. */
  private cut(from: number, to: number): number {
    const { order, bounds } = this;
    let axis = 0;
    let low = 0;
    let width = 0;
    for (let k = 0; k < 3; k++) {
      let least = Number.POSITIVE_INFINITY;
      let most = Number.NEGATIVE_INFINITY;
      for (let i = from; i < to; i++) {
        const centre = twiceCentre(bounds, order[i], k);
        if (centre < least) least = centre;
        if (centre > most) most = centre;
      }
      if (most - least > width) [axis, low, width] = [k, least, most - least];
    }
    if (width === 0) return (from + to) >> 1;
    let middle = from;
    for (let i = from; i < to; i++) {
      const triangle = order[i];
      if (twiceCentre(bounds, triangle, axis) - low > width / 2) continue;
      order[i] = order[middle];
      order[middle++] = triangle;
    }
    return middle;
  }
}

const twiceCentre = (bounds: Float64Array, triangle: number, k: number): number =>
  bounds[6 * triangle + k] + bounds[6 * triangle + 3 + k];

function empty(boxes: Float64Array, i: number): void {
  boxes.fill(Number.POSITIVE_INFINITY, 6 * i, 6 * i + 3);
  boxes.fill(Number.NEGATIVE_INFINITY, 6 * i + 3, 6 * i + 6);
}

/** Makes box `i` large enough for box `j` of another list. */
function grow(boxes: Float64Array, i: number, others: Float64Array, j: number): void {
  for (let k = 0; k < 3; k++) {
    if (others[6 * j + k] < boxes[6 * i + k]) boxes[6 * i + k] = others[6 * j + k];
    if (others[6 * j + 3 + k] > boxes[6 * i + 3 + k]) boxes[6 * i + 3 + k] = others[6 * j + 3 + k];
  }
}

function triangleBounds({ positions, triangles }: Mesh): Float64Array {
  const bounds = new Float64Array(2 * triangles.length);
  for (let i = 0; i < triangles.length; i += 3) {
    for (let k = 0; k < 3; k++) {
      const a = positions[3 * triangles[i] + k];
      const b = positions[3 * triangles[i + 1] + k];
      const c = positions[3 * triangles[i + 2] + k];
      bounds[2 * i + k] = Math.min(a, b, c);
      bounds[2 * i + 3 + k] = Math.max(a, b, c);
    }
  }
  return bounds;
}
