"use client";

import { Button } from "@/components/ui";

/** Sends the page to the printer. */
export function PrintButton() {
  return (
    <Button kind="chief" onClick={() => window.print()}>
      Print it
    </Button>
  );
}
