import type { AnchorHTMLAttributes } from "react";

/** A plain link in the place of the framework's, which is not in the field's bundle: it loads the page that it leads to anew. */
export default function PlainLink(link: AnchorHTMLAttributes<HTMLAnchorElement> & { href: string }) {
  return <a {...link} />;
}
