// The server: Next's request handler, on this machine alone by plain HTTP, or opened to others by HTTPS (KINROW_SHARED). It is started by
// start.mjs, tells it how the registry opened, and opens the outer door only when it is told to.
import { channel } from "node:diagnostics_channel";
import http from "node:http";
import https from "node:https";
import net from "node:net";
import path from "node:path";
import next from "next";
import { carryHeaders } from "./answer-headers.mjs";
import { certificateFor, inAddress, namesOfMachine, nameToTell } from "./certificates.mjs";
import { largeBodies } from "./large-bodies.mjs";

const root = path.resolve(import.meta.dirname, "..");
const shared = process.env.KINROW_SHARED === "yes";
const port = Number(process.env.PORT || 4707);
const names = shared ? namesOfMachine() : ["127.0.0.1", "localhost", "[::1]"];
process.env.KINROW_HOSTS = names.map(inAddress).join(" ");
// The address that others are told, for the page that shows it.
if (shared) process.env.KINROW_ADDRESS = `${inAddress(nameToTell(names))}:${port}`;

// Nothing stands before this server, so what says where a request came from is only believed when it is written here.
const notFromOutside = [
  "x-forwarded-for",
  "x-forwarded-host",
  "x-forwarded-proto",
  "x-forwarded-port",
  "forwarded",
  "x-real-ip",
  "x-kinrow-path",
];

/** What was asked and what it is answered with, for the log (lib/log/server-log.ts). */
const asked = channel("kinrow.asked");

const app = next({ dev: false, dir: root, hostname: "127.0.0.1", port });
const handle = app.getRequestHandler();

/** Where an action leads on to another page, Next asks itself for that page: by this door, which only this machine reaches. */
const inner = await listening(
  http.createServer((request, response) => handle(request, response)),
  0,
  "127.0.0.1",
);
process.env.__NEXT_PRIVATE_ORIGIN = `http://127.0.0.1:${inner.address().port}`;
await app.prepare();

const opened = await fetch(`${process.env.__NEXT_PRIVATE_ORIGIN}/ready`, { headers: { host: "localhost" } });
process.send?.({ kind: "ready", status: opened.status, text: await opened.text() });
// Who started it may be ended in a way that sends no word: then it ends as well.
process.on("disconnect", () => process.exit(0));
if (shared && process.send) process.on("message", (message) => message === "open" && open());
else await open();

async function open() {
  const door = shared ? await sharedDoor() : kept(http.createServer(answer));
  door.on("error", (error) => {
    process.send?.({ kind: "refused", code: error.code });
    process.exit(1);
  });
  if (shared) door.listen(port, () => process.send?.({ kind: "open" }));
  else door.listen(port, "127.0.0.1", () => process.send?.({ kind: "open" }));
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) {
    process.on(signal, () => {
      door.close(() => process.exit(0));
      // Who still loads a page gets it; a connection that is only kept open does not hold the end up.
      setTimeout(() => process.exit(0), 2000).unref();
    });
  }
}

/**
 * A browser takes up an open connection again when the next page is asked for. Where the server closes it after five seconds, as Node does unless told,
 * both may happen at once, and a style or a script is missing from the page. Below the minute that Node gives a request's headers.
 */
function kept(server) {
  server.keepAliveTimeout = 55_000;
  return server;
}

const mayComeIn = largeBodies();

function answer(request, response) {
  asked.publish({ request, response });
  carryHeaders(response);
  if (!mayComeIn(request, response)) return;
  for (const name of notFromOutside) delete request.headers[name];
  request.headers["x-forwarded-for"] = request.socket.remoteAddress ?? "";
  request.headers["x-forwarded-host"] = request.headers.host ?? "";
  handle(request, response);
}

/**
 * One port, two languages: who speaks TLS gets the app, who speaks plain HTTP the page that explains the certificate and nothing else, since
 * a phone can only trust it after it has come from somewhere. The first byte tells them apart (22 is a TLS handshake, RFC 8446).
 */
async function sharedDoor() {
  const { key, cert } = await certificateFor(process.env.KINROW_DATA, names);
  const secure = kept(https.createServer({ key, cert, minVersion: "TLSv1.2" }, answer));
  const plain = http.createServer((request, response) => {
    const address = request.url ?? "/";
    const pathname = URL.canParse(address, "http://kinrow") ? new URL(address, "http://kinrow").pathname : "/";
    const looks = request.method === "GET" || request.method === "HEAD";
    if (looks && beforeTrust.some((place) => pathname === place || pathname.startsWith(`${place}/`)))
      return answer(request, response);
    asked.publish({ request, response });
    carryHeaders(response);
    response.writeHead(307, { location: "/certificate", "cache-control": "no-store" }).end();
  });
  return net.createServer((socket) => {
    socket.setTimeout(10_000, () => socket.destroy());
    socket.on("error", () => socket.destroy());
    socket.once("readable", () => {
      const first = socket.read(1);
      if (first === null) return socket.destroy();
      socket.unshift(first);
      socket.setTimeout(0);
      (first[0] === 22 ? secure : plain).emit("connection", socket);
    });
  });
}

const beforeTrust = ["/certificate", "/_next/static", "/icon.svg"];

function listening(server, at, host) {
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(at, host, () => resolve(server));
  });
}
