import Link from "next/link";
import type { ReactNode } from "react";
import { DoubtKey } from "@/components/doubt/doubt-key";
import { Icon } from "@/components/icons/icon";
import styles from "./frame.module.css";
import type { Ground } from "./ground";
import { GroundSwitch } from "./ground-switch";
import { NameMark } from "./name-mark";
import { PlaceLinks } from "./place-links";
import { registryPlaces, searchPlace, workPlaces } from "./places";

/**
 * What stands around every page: the way to the content, the name, the places, the light, and the key to doubt.
 * `demonstration` (any element: the one action that ends it) puts the line at the head that says what this is;
 * `current` marks a place other than the address says; `beforeFirst` leaves out the places while a registry is empty, `outside` for who
 * has not signed in. `person` is who has, with the way to their own account.
 */
export function Frame({
  children,
  ground,
  demonstration,
  current,
  beforeFirst = false,
  outside = false,
  person,
}: {
  children: ReactNode;
  ground: Ground;
  demonstration?: ReactNode;
  current?: string;
  beforeFirst?: boolean;
  outside?: boolean;
  person?: string;
}) {
  const noPlaces = beforeFirst || outside;
  return (
    <>
      <a className={styles.skip} href="#content">
        To the content
      </a>
      {demonstration ? (
        <aside className={styles.demonstration} aria-label="Demonstration">
          <p>This is the demonstration: an invented circle, kept apart from your own records.</p>
          {demonstration}
        </aside>
      ) : null}
      <header className={styles.head}>
        <Link className={styles.name} href="/" prefetch={outside ? false : null}>
          <NameMark />
          Kinrow
        </Link>
        {noPlaces ? null : (
          <nav className={styles.work} aria-label="Places">
            <PlaceLinks places={workPlaces} current={current} />
          </nav>
        )}
        <div className={styles.side}>
          {noPlaces ? null : (
            <search className={styles.search}>
              <form action={searchPlace.href}>
                <label className="heard" htmlFor="head-search">
                  Search everything
                </label>
                <input id="head-search" name="q" type="search" placeholder="Search" autoComplete="off" />
              </form>
              <Link className={styles.searchLink} href={searchPlace.href} aria-label="Search">
                <Icon name="search" />
              </Link>
            </search>
          )}
          <button className={styles.opener} type="button" popoverTarget="registry-places">
            {outside ? "Light" : "Registry"}
          </button>
          <div className={styles.drawer} id="registry-places" popover="auto">
            {outside ? null : (
              <nav aria-label="Registry">
                <PlaceLinks places={registryPlaces} current={current} />
                {person ? <PlaceLinks places={[{ name: `${person}: your way in`, href: "/your-way-in" }]} /> : null}
              </nav>
            )}
            <GroundSwitch ground={ground} />
          </div>
        </div>
      </header>
      <main id="content" tabIndex={-1}>
        {children}
      </main>
      <footer className={styles.foot}>
        <DoubtKey />
      </footer>
    </>
  );
}
