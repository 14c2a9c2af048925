import "./globals.css";
import type { Metadata, Viewport } from "next";
import { cookies } from "next/headers";
import type { ReactNode } from "react";
import { KeptSubmission } from "@/components/drafts/kept-submission";
import { Frame, groundCookie, groundOf } from "@/components/frame";
import { Button } from "@/components/ui";
import { Offering } from "@/components/ui/offered";
import { closedTo } from "@/lib/access/closed-to";
import { demonstrationCookie } from "./_session/current";
import { endDemonstration } from "./_session/demonstration";
import { isShared } from "./_session/shared";
import { signedIn } from "./_session/signed-in";
import { Zone } from "./_session/zone";
import { faces } from "./fonts/faces";

export const metadata: Metadata = {
  title: { default: "Kinrow", template: "%s · Kinrow" },
  description: "A registry that keeps open-pollinated varieties true, vigorous and alive.",
};

export const viewport: Viewport = { width: "device-width", initialScale: 1, colorScheme: "light dark" };

export default async function Layout({ children }: { children: ReactNode }) {
  const jar = await cookies();
  const member = await signedIn();
  const outside = isShared() && !member;
  const ground = groundOf(jar.get(groundCookie)?.value);
  const ends =
    jar.get(demonstrationCookie)?.value === "yes" && !outside && (!member || member.actor.role === "owner") ? (
      <form action={endDemonstration}>
        <Button type="submit">End it, and remove it</Button>
      </form>
    ) : undefined;
  return (
    <html lang="en" data-ground={ground} className={faces}>
      <body>
        <Zone />
        <KeptSubmission />
        <Offering closed={closedTo(member?.actor.role ?? (outside ? "public" : "owner"))}>
          <Frame ground={ground} demonstration={ends} outside={outside} person={member?.actor.name}>
            {children}
          </Frame>
        </Offering>
      </body>
    </html>
  );
}
