import { readAuthority } from "@/lib/registry/accounts/authority";

/** The authority's certificate as a file that phones and desktops know how to take in. It is no secret. */
export async function GET(): Promise<Response> {
  const authority = await readAuthority();
  if (!authority)
    return new Response("This registry is not opened to others and has no certificate.\n", { status: 404 });
  return new Response(authority.file, {
    headers: {
      "content-type": "application/x-x509-ca-cert",
      "content-disposition": 'attachment; filename="kinrow-authority.crt"',
      "cache-control": "no-store",
    },
  });
}

export const dynamic = "force-dynamic";
