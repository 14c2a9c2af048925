// What every answer carries, whoever makes it: pages, files, refusals and what the server says before the app is asked.

/** Powers of the browser that no page of ours uses; the camera reads the codes on jars and plants. */
const powers = [
  "accelerometer=()",
  "autoplay=()",
  "camera=(self)",
  "display-capture=()",
  "geolocation=()",
  "gyroscope=()",
  "magnetometer=()",
  "microphone=()",
  "midi=()",
  "payment=()",
  "serial=()",
  "usb=()",
];

/**
 * No page may be put into another's frame, read from another's page, or be told to another whence somebody came; nothing is guessed to be
 * another kind of file than it says. The policy is the one of answers that are no page: they run nothing and fetch nothing. What the app
 * answers gets the policy of pages in its place (app/_session/content-policy.ts).
 *
 * No Strict-Transport-Security: it would hold for every port of the machine's name, and where the machine gets a new authority nobody could
 * come to the page that explains it, which is the one thing that plain HTTP answers here.
 */
const answerHeaders = {
  "content-security-policy":
    "default-src 'none'; script-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
  "permissions-policy": powers.join(", "),
  "referrer-policy": "same-origin",
  "x-content-type-options": "nosniff",
};

/** Puts them on an answer. What it says is about somebody's seed: nothing keeps a copy of it unless the answer itself says for how long. */
export function carryHeaders(response) {
  for (const [name, value] of Object.entries(answerHeaders)) response.setHeader(name, value);
  const writeHead = response.writeHead;
  response.writeHead = (...told) => {
    if (!response.hasHeader("cache-control")) response.setHeader("cache-control", "no-store");
    return writeHead.apply(response, told);
  };
}
