/**
 * What a page may load and run (Content Security Policy, level 3). A script runs where it carries the nonce of this one answer, or was loaded by
 * one that does; neither its address nor that it stands in the page is enough. The framework puts the nonce on its own scripts, which it
 * reads from this policy in the headers of the request.
 *
 * Styles come from our own files. `style` on an element is allowed, since the server draws charts, bars and formulas with it: such a style can
 * neither choose other elements nor load from elsewhere. Pictures may be drawn on the device (blob, data), all else comes from this address.
 */
export function contentPolicy(nonce: string): string {
  return [
    "default-src 'none'",
    `script-src 'nonce-${nonce}' 'strict-dynamic'`,
    "script-src-attr 'none'",
    "style-src 'self'",
    "style-src-attr 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "font-src 'self'",
    "media-src 'self' blob:",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
    "object-src 'none'",
    "frame-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join("; ");
}

/** The header by which a request tells the framework its policy, and an answer the browser. */
export const policyHeader = "content-security-policy";

/** 128 bits that nobody can foresee, anew for each answer. */
export function newNonce(): string {
  return Buffer.from(crypto.getRandomValues(new Uint8Array(16))).toString("base64");
}
