/* Loaded before a program: the machine's clock is off by the days in this module's address. */
const by = 24 * 3600 * 1000 * Number(new URL(import.meta.url).searchParams.get('days'));
const Right = Date;

globalThis.Date = class extends Right {
  constructor(...given) {
    super(...(given.length > 0 ? given : [Right.now() + by]));
  }
  static now() {
    return Right.now() + by;
  }
};
