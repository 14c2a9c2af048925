import { passkey } from "@better-auth/passkey";
import { betterAuth } from "better-auth";
import { prismaAdapter } from "better-auth/adapters/prisma";
import { username } from "better-auth/plugins/username";
import { uuidv7 } from "uuidv7";
import type { Client, Database } from "@/lib/db";
import { foldSignInName, longestPassphrase, shortestPassphrase } from "@/lib/schemas/accounts/account-fields";
import { hashPassphrase, isPassphrase } from "./passphrase";
import { secretOf } from "./secret";
import { passkeyName, type Site } from "./site";

/** How long a device stays signed in: a growing season. */
export const signedInDays = 90;

const mostOrigins = 100;

const made = new WeakMap<Client, Map<string, Auth>>();

type Auth = ReturnType<typeof make>;

/** The sign-in library over a registry, for one address: cookies and passkeys belong to the address. */
export function authOf(db: Database, site: Site): Auth {
  const own = made.get(db.write) ?? new Map<string, Auth>();
  made.set(db.write, own);
  const auth = own.get(site.origin) ?? make(db, site);
  // A machine has few names; who asks under ever new ports must not fill its memory.
  if (own.size >= mostOrigins) own.clear();
  own.set(site.origin, auth);
  return auth;
}

/** Nobody signs up: accounts are made by invitation (come-in.ts) or at the machine (set-owner.ts). Tries are counted in tries.ts, by name as well as by device. */
function make(db: Database, site: Site) {
  return betterAuth({
    appName: "Kinrow",
    baseURL: site.origin,
    secret: secretOf(db.location.folder),
    database: prismaAdapter(db.write, { provider: db.engine }),
    emailAndPassword: {
      enabled: true,
      disableSignUp: true,
      minPasswordLength: shortestPassphrase,
      maxPasswordLength: 2 * longestPassphrase,
      password: { hash: hashPassphrase, verify: ({ hash, password }) => isPassphrase(password, hash) },
    },
    // No copy of a session in a cookie: one that is ended elsewhere is out at its next request.
    session: { expiresIn: signedInDays * 86_400, disableSessionRefresh: true, cookieCache: { enabled: false } },
    rateLimit: { enabled: false },
    telemetry: { enabled: false },
    logger: { disabled: true },
    advanced: {
      // A cookie of this name is taken by a browser only from this very host, by HTTPS, for every path (RFC 6265bis, 4.1.3.2).
      cookiePrefix: "__Host-kinrow",
      useSecureCookies: false,
      defaultCookieAttributes: { httpOnly: true, secure: true, sameSite: "lax", path: "/" },
      ipAddress: { disableIpTracking: true },
      database: { generateId: () => uuidv7() },
    },
    plugins: [
      username({
        minUsernameLength: 1,
        maxUsernameLength: 200,
        usernameValidator: () => true,
        usernameNormalization: foldSignInName,
      }),
      passkey({ rpID: passkeyName(site) ?? "localhost", rpName: "Kinrow", origin: site.origin }),
    ],
  });
}
