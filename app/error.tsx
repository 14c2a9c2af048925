"use client";

import { PageHead } from "@/components/frame/page-head";
import { Button } from "@/components/ui/button";
import { ButtonLink } from "@/components/ui/button-link";

/** What stands in place of a page that could not be made. Nothing that was stored is lost by it. */
export default function PageFault({ error, reset }: { error: Error & { digest?: string }; reset: () => void }) {
  return (
    <div className="sheet stack">
      <PageHead title="This page could not be made">
        <p className="measure" role="alert">
          What is stored is safe. Try once more; if it happens again, the line below helps whoever looks into it.
        </p>
        <p className="counts">{error.digest ? `mark ${error.digest}` : error.message}</p>
      </PageHead>
      <div className="row">
        <Button kind="chief" onClick={reset}>
          Try once more
        </Button>
        <ButtonLink href="/season">To the season</ButtonLink>
      </div>
    </div>
  );
}
