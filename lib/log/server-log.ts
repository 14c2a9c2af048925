import { subscribe, unsubscribe } from "node:diagnostics_channel";
import type { IncomingMessage, ServerResponse } from "node:http";
import path from "node:path";
import pino from "pino";
import { routeOfPath } from "@/lib/access/routes";
import { boundedFile } from "./bounded-file";
import { faultInLines } from "./fault-in-lines";

/** The server says on this channel what was asked of it and what it answers with (scripts/serve.mjs). */
export const askedChannel = "kinrow.asked";

/** The folder of the log within the data folder. */
export const logFolder = (dataFolder: string) => path.join(dataFolder, "logs");

/** What the server writes down of its own work. */
export interface ServerLog {
  fault(error: unknown, method: string, route: string): void;
  /** listens no more */
  end(): void;
}

/**
 * Writes one line of JSON for each answer and each fault into `logs/server.log` of the data folder: the pattern of the address, never the address itself, since
 * that may hold what somebody searched for, an invitation's code or the number of a record; no name, no cookie, no address of a device.
 */
export function serverLog(dataFolder: string, programFolder: string): ServerLog {
  const log = pino(
    { base: undefined, timestamp: pino.stdTimeFunctions.isoTime, formatters: { level: (level) => ({ level }) } },
    boundedFile(logFolder(dataFolder), "server"),
  );
  const heard = (told: unknown) => {
    const { request, response } = told as { request: IncomingMessage; response: ServerResponse };
    const began = performance.now();
    const method = request.method ?? "";
    const route = patternOf(request.url ?? "");
    response.once("close", () => {
      const status = response.statusCode;
      if (route === built && status < 400) return;
      const line = { method, route, status, ms: Math.round(performance.now() - began) };
      const whole = response.writableFinished ? line : { ...line, brokenOff: true };
      if (status >= 500) log.error(whole, "answer");
      else log.info(whole, "answer");
    });
  };
  subscribe(askedChannel, heard);
  log.info("opened");
  return {
    fault: (error, method, route) => log.error({ method, route, fault: faultInLines(error, programFolder) }, "fault"),
    end: () => unsubscribe(askedChannel, heard),
  };
}

const built = "/_next/static";

/** The pattern of an address: "/lots/[id]". What is no address of ours is only said to be none. */
function patternOf(address: string): string {
  const asked = address.split("?")[0] ?? "";
  if (asked.startsWith(`${built}/`)) return built;
  return routeOfPath(asked) ?? "none";
}
