/*
 * Loaded before a program: the language's engine as another one might be, whose elementary functions differ in the last digit, up or
 * down as their arguments and the seed in this module's address have it. Products, quotients and square roots are the standard's, and stay.
 */
const seed = Number(new URL(import.meta.url).searchParams.get('seed'));
const word = new DataView(new ArrayBuffer(8));

const mixed = (hash, x) => {
  word.setFloat64(0, Math.abs(x)); // even functions stay even, odd ones odd
  for (const half of [word.getUint32(0), word.getUint32(4)]) {
    hash = Math.imul(hash ^ half, 0x9e3779b1);
    hash ^= hash >>> 15;
  }
  return hash;
};

/** The next double away from zero, or toward it; whole numbers, such as powers of ten, are exact in every engine. */
const moved = (value, steps) => {
  if (Number.isInteger(value) || !Number.isFinite(value)) return value;
  word.setFloat64(0, value);
  word.setBigInt64(0, word.getBigInt64(0) + BigInt(steps));
  return word.getFloat64(0);
};

for (const name of [
  ...[
    'sin',
    'cos',
    'tan',
    'asin',
    'acos',
    'atan',
    'atan2',
    'sinh',
    'cosh',
    'tanh',
    'asinh',
    'acosh',
    'atanh',
  ],
  ...['exp', 'expm1', 'log', 'log1p', 'log2', 'log10', 'hypot', 'pow', 'cbrt'],
]) {
  const exact = Math[name];
  Math[name] = (...args) => {
    const hash = args.reduce(mixed, seed);
    return moved(exact(...args), ((hash >>> 0) % 3) - 1);
  };
}
