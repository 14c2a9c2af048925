// The certificate of a registry that is opened to others: a small authority of its own, trusted once on each phone, and under it a
// certificate for the names and addresses that this machine has today. All of it lies in the data folder, for its owner alone.
import { createPrivateKey, X509Certificate } from "node:crypto";
import { chmodSync, existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import net from "node:net";
import os from "node:os";
import path from "node:path";

const day = 86_400_000;
const authorityDays = 3650;
// Phones refuse a certificate for a server that is made for longer than 825 days, some for longer than 398.
const serverDays = 397;
const renewedBefore = 30;

/** The names and addresses under which others may find this machine; those that the environment names come first. */
export function namesOfMachine(named = process.env.KINROW_NAMES ?? "") {
  const given = named.split(/[\s,]+/).filter(Boolean);
  const host = os.hostname().toLowerCase();
  const bare = host.replace(/\.local$/, "");
  const addresses = Object.values(os.networkInterfaces())
    .flat()
    .filter((each) => each && !each.internal && !each.address.startsWith("fe80"))
    .map((each) => each.address)
    .sort((left, right) => net.isIP(left) - net.isIP(right));
  return [
    ...new Set(
      [...given, ...addresses, `${bare}.local`, host, "localhost", "127.0.0.1"].map((name) => name.toLowerCase()),
    ),
  ];
}

/** The address to tell others: the first name that was given, else the first address of the network, else this machine alone. */
export function nameToTell(names) {
  return names[0] ?? "localhost";
}

/** An address as it stands in a link: IPv6 in brackets. */
export function inAddress(name) {
  return net.isIPv6(name) ? `[${name}]` : name;
}

/** The certificate for these names, made or renewed where it must be. `authorityIsNew`: every phone has to trust it (anew). */
export async function certificateFor(folder, names, now = new Date()) {
  const place = path.join(folder, "sharing");
  mkdirSync(place, { recursive: true, mode: 0o700 });
  chmodSync(place, 0o700);
  const authority = readPair(place, "authority");
  const authorityIsNew = !authority || daysLeft(authority.cert, now) < serverDays + renewedBefore;
  const above = authorityIsNew ? await makeAuthority(place, now) : authority;
  const server = readPair(place, "server");
  const stands = server && isUnder(server.cert, above.cert) && daysLeft(server.cert, now) >= renewedBefore;
  const own = stands && sameNames(server.cert, names) ? server : await makeServer(place, above, names, now);
  return { key: own.key, cert: `${own.cert}\n${above.cert}`, authorityIsNew };
}

async function makeAuthority(place, now) {
  const made = await generate([{ name: "commonName", value: `Kinrow at ${os.hostname()}` }], {
    notAfterDate: new Date(now.getTime() + authorityDays * day),
    notBeforeDate: new Date(now.getTime() - day),
    extensions: [
      { name: "basicConstraints", cA: true, pathLenConstraint: 0, critical: true },
      { name: "keyUsage", keyCertSign: true, cRLSign: true, critical: true },
    ],
  });
  return writePair(place, "authority", made);
}

async function makeServer(place, authority, names, now) {
  const altNames = names.map((name) => (net.isIP(name) ? { type: 7, ip: name } : { type: 2, value: name }));
  const made = await generate([{ name: "commonName", value: "Kinrow" }], {
    notAfterDate: new Date(now.getTime() + serverDays * day),
    notBeforeDate: new Date(now.getTime() - day),
    ca: { key: authority.key, cert: authority.cert },
    extensions: [
      { name: "basicConstraints", cA: false, critical: true },
      { name: "keyUsage", digitalSignature: true, critical: true },
      { name: "extKeyUsage", serverAuth: true },
      { name: "subjectAltName", altNames },
    ],
  });
  return writePair(place, "server", made);
}

async function generate(names, options) {
  const { generate: make } = await import("selfsigned");
  const made = await make(names, { keyType: "ec", curve: "P-256", algorithm: "sha256", ...options });
  return { key: made.private, cert: made.cert };
}

function readPair(place, name) {
  const [key, cert] = [path.join(place, `${name}.key`), path.join(place, `${name}.crt`)];
  if (!existsSync(key) || !existsSync(cert)) return null;
  for (const file of [key, cert]) chmodSync(file, 0o600);
  const pair = { key: readFileSync(key, "utf8"), cert: readFileSync(cert, "utf8") };
  try {
    // A power cut between the two files leaves a key without its certificate: then both are made anew.
    return new X509Certificate(pair.cert).checkPrivateKey(createPrivateKey(pair.key)) ? pair : null;
  } catch {
    return null;
  }
}

/** Written beside and swapped in, so that a power cut leaves the old pair or the new one, never half a file. */
function writePair(place, name, pair) {
  for (const [ending, text] of [
    ["key", pair.key],
    ["crt", pair.cert],
  ]) {
    const file = path.join(place, `${name}.${ending}`);
    writeFileSync(`${file}.new`, text, { mode: 0o600 });
    renameSync(`${file}.new`, file);
  }
  return pair;
}

function daysLeft(cert, now) {
  return (Date.parse(new X509Certificate(cert).validTo) - now.getTime()) / day;
}

function isUnder(cert, authority) {
  const above = new X509Certificate(authority);
  return new X509Certificate(cert).verify(above.publicKey);
}

function sameNames(cert, names) {
  const stand = (new X509Certificate(cert).subjectAltName ?? "")
    .split(", ")
    .map((each) => each.replace(/^\w[\w ]*:/, ""));
  const plain = (list) =>
    list
      .map((name) => (net.isIPv6(name) ? new net.SocketAddress({ address: name, family: "ipv6" }).address : name))
      .sort()
      .join(" ");
  return plain(stand.map((each) => each.toLowerCase())) === plain(names);
}
