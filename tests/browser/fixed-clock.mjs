/**
 * Loaded into the server of a test before anything else: its clock begins at the moment of TEST_CLOCK and runs on from there, so that
 * what a page says of days does not hang on the day on which the tests run.
 */
const begun = Date.now();
const moment = Date.parse(process.env.TEST_CLOCK ?? "");

if (!Number.isNaN(moment)) {
  const now = () => moment + (RealDate.now() - begun);
  const RealDate = Date;
  const clock = new Proxy(RealDate, {
    construct: (target, given) => (given.length === 0 ? new target(now()) : new target(...given)),
    apply: () => new RealDate(now()).toString(),
    get: (target, key) => (key === "now" ? now : Reflect.get(target, key)),
  });
  RealDate.prototype.constructor = clock;
  globalThis.Date = clock;
}
