import type { Instrumentation } from "next";
import type { ServerLog } from "@/lib/log/server-log";

// The server's own log; the same one wherever the framework takes this file in.
const shelf = globalThis as typeof globalThis & { kinrowLog?: ServerLog };

/** Called once when the server starts. */
export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME !== "nodejs") return;
  const [{ serverLog }, { dataFolder }] = await Promise.all([
    import("@/lib/log/server-log"),
    import("@/lib/db/location"),
  ]);
  const log = serverLog(dataFolder(), process.cwd());
  shelf.kinrowLog ??= log;
  process.on("uncaughtExceptionMonitor", (error) => log.fault(error, "", "none"));
}

/** Called with what a page, an answer or an action threw. */
export const onRequestError: Instrumentation.onRequestError = (error, request, context) => {
  shelf.kinrowLog?.fault(error, request.method, context.routePath);
};
