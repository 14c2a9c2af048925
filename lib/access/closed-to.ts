import type { Role } from "./actor";
import { type Action, permissions, roleMay } from "./permissions";
import { routes } from "./routes";

/** What a role is not offered: the addresses that would refuse it, and the deeds. Nothing for the owner. */
export function closedTo(role: Role): { readonly addresses: readonly string[]; readonly deeds: readonly string[] } {
  return {
    addresses: Object.entries(routes).flatMap(([route, action]) => (roleMay(role, action) ? [] : [route])),
    deeds: Object.keys(permissions).filter((action) => !roleMay(role, action as Action)),
  };
}
