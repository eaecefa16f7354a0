/** Loaded before a command (`node --import`): its clock stands at noon of the day in FETTLEBOOK_TEST_DAY and goes on from there. */

const day = process.env['FETTLEBOOK_TEST_DAY'];
if (day !== undefined) {
  const RealDate = Date;
  const offset = new RealDate(`${day}T12:00:00`).getTime() - RealDate.now();
  const now = (): number => RealDate.now() + offset;
  globalThis.Date = new Proxy(RealDate, {
    construct: (target, args: unknown[]) => Reflect.construct(target, args.length === 0 ? [now()] : args),
    get: (target, key) => (key === 'now' ? now : Reflect.get(target, key)),
  });
}
