import { existsSync } from "node:fs";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";

const installed = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
];

/** The browser for tests: one named by the environment, an installed one, or on Linux the one that comes as a package. */
async function browserFile(): Promise<string> {
  const named = process.env.KINROW_BROWSER;
  if (named) return named;
  const found = installed.find((file) => existsSync(file));
  if (found) return found;
  if (process.platform === "linux" && process.arch === "x64") {
    const { default: packaged } = await import("@sparticuz/chromium");
    return packaged.executablePath();
  }
  throw new Error("No browser was found for the tests; install Chromium or Chrome, or name one in KINROW_BROWSER.");
}

/** Starts the browser; where it will not, the sentence says what to install. `more` are further switches of it. */
export async function startBrowser(more: readonly string[] = []): Promise<Browser> {
  const file = await browserFile();
  const browser = await launched(file, more).catch((error: Error) => {
    const why = error.message.split("\n").find((line) => /error while loading|cannot open/.test(line)) ?? error.message;
    throw new Error(
      `The browser ${file} did not start (${why.trim()}); install Chromium, or the libraries it names, or name another browser in KINROW_BROWSER.`,
    );
  });
  return patient(browser);
}

/** In milliseconds. */
const longEnough = 120_000;

/** Every page of the browser waits long enough for a slow machine before it says that something never came. */
function patient(browser: Browser): Browser {
  const made = browser.newContext.bind(browser);
  browser.newContext = async (...options) => {
    const context = await made(...options);
    context.setDefaultTimeout(longEnough);
    return context;
  };
  return browser;
}

const args = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  // the packaged build has no zygote and runs where /dev/shm is small
  "--no-zygote",
  "--disable-dev-shm-usage",
];

function launched(executablePath: string, more: readonly string[]): Promise<Browser> {
  return chromium.launch({ executablePath, args: [...args, ...more] });
}

/** A phone: a browser whose memory lies in a folder and outlives it, at the size of a small one. */
export async function startPhone(folder: string): Promise<BrowserContext> {
  const executablePath = await browserFile();
  const viewport = { width: 360, height: 740 };
  const context = await chromium.launchPersistentContext(folder, { executablePath, args, viewport, hasTouch: true });
  context.setDefaultTimeout(longEnough);
  return context;
}

/** Errors that a page throws or prints; a test that ends with any of them has failed. */
export function watchErrors(page: Page): string[] {
  const errors: string[] = [];
  page.on("pageerror", (error) => errors.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error") errors.push(message.text());
  });
  return errors;
}
