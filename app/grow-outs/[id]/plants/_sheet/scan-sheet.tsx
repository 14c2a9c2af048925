"use client";

import { useRouter } from "next/navigation";
import { Scanner } from "@/components/scanner";
import { gridOfSheet, readSheetAddress } from "@/lib/schemas/plants/sheet-address";
import { shortCodeOfId } from "@/lib/science/codes/short-code-of-id";
import { refusal, refused } from "@/lib/science/outcome";

/** Scans the code in the head of a sheet and opens its rows; the sheet of another grow-out is refused. */
export function ScanSheet({ growOutId }: { growOutId: string }) {
  const router = useRouter();
  return (
    <Scanner
      what="the sheet’s code"
      read={(text) => {
        const page = readSheetAddress(text);
        if (!page.ok || page.value.growOut === shortCodeOfId(growOutId)) return page;
        const wrong = "is a sheet of another grow-out";
        return refused(refusal("other-grow-out", ["sheet"], page.value.rows, wrong, "type it in at that one"));
      }}
      onRead={(page) => router.push(gridOfSheet(growOutId, page))}
      typing={null}
    />
  );
}
