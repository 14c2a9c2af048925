import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { isEmptyRegistry } from "@/lib/registry/season/is-empty";
import { FirstPage } from "./_first-page/first-page";
import { current } from "./_session/current";

export const metadata: Metadata = { title: "Begin" };

/** The way in: three ways to begin while nothing is on record, then the season. */
export default async function Home() {
  const { db } = await current();
  if (!(await isEmptyRegistry(db))) redirect("/season");
  return <FirstPage />;
}
