"use client";

import { useFormStatus } from "react-dom";
import { Button } from "@/components/ui/button";

/** Sends its form, and says that the backup is being made until it is. */
export function BackUpButton() {
  const { pending } = useFormStatus();
  return (
    <Button type="submit" kind="chief" disabled={pending} aria-live="polite">
      {pending ? "Being made …" : "Make a backup now"}
    </Button>
  );
}
