import { fieldWorker } from "./field-worker";

/** The worker that keeps the field's one document for times without a signal. Its address at the root lets it look after /field. */
export function GET(): Response {
  return new Response(fieldWorker, {
    headers: { "content-type": "text/javascript; charset=utf-8", "cache-control": "no-cache" },
  });
}
