import type { Vec3 } from '../../math/vec3.js';

/** What keeps a mesh from being the surface of a solid inside the ball. Places and lengths in C, m. */
export type MeshFault =
  /** Edges with a triangle on one side only. */
  | { readonly kind: 'open'; readonly edges: number; readonly at: Vec3 }
  /** Edges where more than two triangles meet. */
  | { readonly kind: 'crowded'; readonly edges: number; readonly at: Vec3 }
  /** Edges between a triangle that faces outward and one that faces inward. */
  | { readonly kind: 'mixed-sides'; readonly edges: number; readonly at: Vec3 }
  /** Two triangles cut one another, or cover one another facing the same way. */
  | { readonly kind: 'cuts-itself'; readonly at: Vec3 }
  /** A closed part within another, both facing outward: what is inside would count twice. */
  | { readonly kind: 'counted-twice'; readonly at: Vec3 }
  /** Some closed parts face outward, others inward. */
  | { readonly kind: 'mixed-parts'; readonly at: Vec3 }
  /** Closed, but flat. */
  | { readonly kind: 'no-volume'; readonly at: Vec3 }
  /** A vertex farther from Bo than there is room. */
  | { readonly kind: 'sticks-out'; readonly reach: number; readonly room: number; readonly at: Vec3 };
