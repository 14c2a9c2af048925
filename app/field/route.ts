import { fieldDocument, nonceOf } from "./_components/field-document";
import { fieldFiles } from "./_components/field-files";

/** The field's one document: light, of nobody, and kept by phones as it is. */
export async function GET(request: Request): Promise<Response> {
  const files = await fieldFiles();
  if (files === null) {
    const words = "The field's page was not built. Start Kinrow with npm start, which builds it.\n";
    return new Response(words, { status: 503, headers: { "content-type": "text/plain; charset=utf-8" } });
  }
  return new Response(fieldDocument(files, nonceOf(request.headers.get("content-security-policy"))), {
    headers: { "content-type": "text/html; charset=utf-8", "cache-control": "no-cache" },
  });
}
