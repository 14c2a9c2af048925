import { headers } from "next/headers";
import { EmptyState } from "@/components/empty";
import { ButtonLink } from "@/components/ui";
import { whoMay } from "@/lib/access/permissions";
import { actionOfPath } from "@/lib/access/routes";
import { pathHeader } from "./_session/way-back";

/** What somebody finds where their part in the registry does not reach: one sentence that says whose it does. */
export default async function Forbidden() {
  const path = (await headers()).get(pathHeader);
  const action = path === null ? null : actionOfPath(path);
  const who = action === null ? "the owner may" : whoMay(action);
  return (
    <div className="sheet">
      <h1 className="heard">Not yours to do</h1>
      <EmptyState noun="search" action={<ButtonLink href="/">To the season</ButtonLink>}>
        This is not yours to do here: {who}.
      </EmptyState>
    </div>
  );
}
