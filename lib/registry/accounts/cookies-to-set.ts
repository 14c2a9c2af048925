import { parseSetCookieHeader, toCookieOptions } from "better-auth/cookies";

/** What the browser is to keep from now on. */
export interface CookiesToSet {
  readonly cookies: readonly CookieToSet[];
}

export interface CookieToSet {
  readonly name: string;
  readonly value: string;
  readonly options: ReturnType<typeof toCookieOptions>;
}

/** The cookies that an answer of the sign-in library sets. */
export function cookiesOf(headers: Headers): CookiesToSet {
  const cookies = headers
    .getSetCookie()
    .flatMap((line) => [...parseSetCookieHeader(line)])
    .map(([name, attributes]) => ({ name, value: attributes.value, options: toCookieOptions(attributes) }));
  return { cookies };
}
