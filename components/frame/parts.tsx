import Link from "next/link";

/** Leads through a list that is shown in parts; nothing where there is only one. `of`: what is shown, heard by those who do not see it. */
export function Parts({
  part,
  parts,
  of,
  href,
  words = { before: "Part before", next: "Next part" },
}: {
  part: number;
  parts: number;
  of: string;
  href: (part: number) => string;
  words?: { readonly before: string; readonly next: string };
}) {
  if (parts <= 1) return null;
  return (
    <nav className="row not-on-paper" aria-label={`Parts of ${of}`}>
      {part > 1 ? <Link href={href(part - 1)}>{words.before}</Link> : null}
      <span className="counts">
        part {part} of {parts}
      </span>
      {part < parts ? <Link href={href(part + 1)}>{words.next}</Link> : null}
    </nav>
  );
}

/** The part that an address asks for, of a list of so many, and where it begins and ends; the first where it asks for none that is there. */
export function partOf(asked: string | undefined, count: number, most: number) {
  const parts = Math.max(1, Math.ceil(count / most));
  const number = /^\d{1,6}$/.test(asked ?? "") ? Number(asked) : 1;
  const part = Math.min(Math.max(1, number), parts);
  return { part, parts, from: (part - 1) * most, to: Math.min(count, part * most) };
}
