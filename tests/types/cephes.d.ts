/** The part of cephes that the tests use; the package's own types are not reachable through its exports. */
export const compiled: Promise<void>;
/** Jacobi's elliptic functions of argument u and parameter m = k². */
export function ellpj(
  u: number,
  m: number,
): readonly [number, { sn: number; cn: number; dn: number; ph: number }];
/** The chance that a standard normal number is less. */
export function ndtr(x: number): number;
/** The chance that chi-square with so many degrees of freedom is greater. */
export function chdtrc(freedom: number, x: number): number;
