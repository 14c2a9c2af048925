/** What anybody may ask for before signing in, each with what lies under it. Everything else leads to the sign-in page. */
export const openRoutes = ["/ready", "/sign-in", "/come-in", "/certificate", "/api/auth", "/icon.svg"] as const;

/** True where a path needs no sign-in. */
export function isOpenRoute(path: string): boolean {
  return openRoutes.some((open) => path === open || path.startsWith(`${open}/`));
}
