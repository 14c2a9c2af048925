import { useLayoutEffect } from "react";

/** What is asked in the place of a longer screen begins at its head, wherever the hand was in that one. */
export function useFromTheTop(): void {
  useLayoutEffect(() => window.scrollTo(0, 0), []);
}
