"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";
import { isOffered, useClosed } from "@/components/ui/offered";
import styles from "./frame.module.css";
import { isWithin, type Place } from "./places";

/** Links to places, the current one marked by a seed lying on the row. `current` overrides the address. */
export function PlaceLinks({ places, current }: { places: readonly Place[]; current?: string }) {
  const closed = useClosed();
  const path = usePathname();
  const here = current ?? path ?? "";
  return (
    <ul className={styles.places}>
      {places
        .filter((place) => isOffered(place.href, closed))
        .map((place) => (
          <li key={place.href}>
            <Link href={place.href} className={styles.place} aria-current={isWithin(here, place) ? "page" : undefined}>
              {place.name}
            </Link>
          </li>
        ))}
    </ul>
  );
}
