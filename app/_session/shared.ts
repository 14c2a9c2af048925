/** True where the registry is opened to others, and somebody has to sign in; the start command says so. */
export function isShared(): boolean {
  return process.env.KINROW_SHARED === "yes";
}

/** The address that others are told, "NAME:PORT"; null where it is not opened to others. */
export function addressToTell(): string | null {
  return isShared() ? (process.env.KINROW_ADDRESS ?? null) : null;
}

const alone = ["127.0.0.1", "localhost", "[::1]"];

/**
 * True where the address that a browser asked for is one of ours. A page of somebody else's whose name was made to lead here would otherwise
 * be taken for ours by the browser (DNS rebinding).
 */
export function isOurHost(host: string | null): boolean {
  const ours = process.env.KINROW_HOSTS?.split(" ").filter(Boolean) ?? alone;
  const name = (host ?? "").toLowerCase().replace(/:\d+$/, "");
  return ours.includes(name);
}
