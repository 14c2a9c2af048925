import { useEffect } from "react";
import { isMeant, type Tap } from "@/lib/field/tap-filter";

/**
 * Holds back taps that no finger meant, before any button hears of them. Keys and what reads a page aloud tap without a place: theirs are always
 * meant. Fields to type in are left alone.
 */
export function useTapGuard(): void {
  useEffect(() => {
    let down: Tap | null = null;
    let last: Tap | null = null;
    const touched = ({ timeStamp, clientX, clientY, isPrimary }: PointerEvent) => {
      down = { at: timeStamp, x: clientX, y: clientY, first: isPrimary };
    };
    const tapped = (event: MouseEvent) => {
      const button = event.target instanceof Element ? event.target.closest("button") : null;
      const tap = down;
      down = null;
      if (button === null || event.detail === 0 || tap === null) return;
      if (isMeant(tap, last, button.dataset.step !== undefined)) {
        last = tap;
        return;
      }
      event.preventDefault();
      event.stopImmediatePropagation();
    };
    document.addEventListener("pointerdown", touched, true);
    document.addEventListener("click", tapped, true);
    return () => {
      document.removeEventListener("pointerdown", touched, true);
      document.removeEventListener("click", tapped, true);
    };
  }, []);
}
