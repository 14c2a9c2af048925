/** The value of an accepted outcome; throws the refusals otherwise. Needs no test runner, so that a server's data can be made with it. */
export function grantedHere<T>(
  outcome: { ok: true; value: T } | { ok: false; refusals: readonly { sentence: string }[] },
): T {
  if (outcome.ok) return outcome.value;
  throw new Error(outcome.refusals.map((each) => each.sentence).join("\n"));
}
