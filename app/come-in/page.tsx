import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { PageHead } from "@/components/frame";
import { Button, TextField } from "@/components/ui";
import { isShared } from "../_session/shared";

export const metadata: Metadata = { title: "Come in" };

/** For whoever has an invitation's code on paper or by word of mouth. */
export default async function ComeIn({ searchParams }: { searchParams: Promise<{ code?: string }> }) {
  if (!isShared()) redirect("/");
  const plain = (await searchParams).code?.toUpperCase().replace(/[^0-9A-Z]/g, "");
  if (plain) redirect(`/come-in/${plain}`);
  return (
    <div className="sheet stack">
      <PageHead title="Come in">
        <p className="measure">
          The owner of this registry gave you a link, a code to scan, or twenty signs to type. Each opens one account,
          once.
        </p>
      </PageHead>
      <form action="/come-in" className="stack measure" data-not-kept>
        <TextField
          name="code"
          label="Code"
          hint="In groups of five; hyphens and small letters do not matter"
          required
        />
        <Button type="submit" kind="chief">
          Go on
        </Button>
      </form>
    </div>
  );
}
