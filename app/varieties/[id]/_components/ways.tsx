import Link from "next/link";
import styles from "./ways.module.css";

/** The pages that tell a variety's long life, in the order in which one asks: where from, what is left, what could be, what helps. */
const ways = [
  { key: "lineage", name: "Lineage" },
  { key: "diversity", name: "Diversity kept" },
  { key: "grown-otherwise", name: "Grown otherwise" },
  { key: "restore", name: "Restoring it" },
  { key: "biography", name: "Biography" },
] as const;

export type Way = (typeof ways)[number]["key"];

/** One line that leads from each of these pages to the others; the one that is open is not a link. */
export function Ways({ varietyId, here }: { varietyId: string; here?: Way }) {
  return (
    <nav aria-label="The variety through the years" className={`${styles.ways} not-on-paper`}>
      {ways.map(({ key, name }) =>
        key === here ? (
          <span key={key} aria-current="page">
            {name}
          </span>
        ) : (
          <Link key={key} href={`/varieties/${varietyId}/${key}`}>
            {name}
          </Link>
        ),
      )}
    </nav>
  );
}
