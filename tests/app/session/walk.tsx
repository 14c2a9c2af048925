import { type ReactElement, Suspense } from "react";
import { prerenderToNodeStream } from "react-dom/static";

/** What stops a page: nobody may (403), nothing there (404), or somewhere else (307). */
export class Interrupt extends Error {
  constructor(
    readonly status: number,
    readonly location: string | null = null,
  ) {
    super(`interrupted with ${status}`);
  }
}

/** What somebody got: the status, and everything that stands in it. */
export interface Got {
  readonly status: number;
  readonly body: string;
}

interface PageModule {
  readonly default: (props: unknown) => ReactElement | Promise<ReactElement>;
  readonly generateMetadata?: (props: unknown) => Promise<unknown>;
}

/** A page as it is drawn for whoever acts now, with its title. */
export async function pageGot(module: PageModule, params: object, search: object = {}): Promise<Got> {
  const props = { params: Promise.resolve(params), searchParams: Promise.resolve(search) };
  return got(async () => {
    const Page = module.default;
    const title = module.generateMetadata ? JSON.stringify(await module.generateMetadata(props)) : "";
    let inside: unknown = null;
    const { prelude } = await prerenderToNodeStream(
      <Suspense>
        <Page {...(props as object)} />
      </Suspense>,
      {
        onError: (error) => {
          inside ??= error;
        },
      },
    );
    let html = "";
    for await (const piece of prelude) html += piece;
    if (inside) throw inside;
    return { status: 200, body: title + html };
  });
}

type Answer = (request: Request, context: { params: Promise<object> }) => Promise<Response>;

/** An answer to a request. */
export async function answerGot(get: Answer, address: string, params: object): Promise<Got> {
  return got(async () => {
    const response = await get(new Request(`http://localhost${address}`), { params: Promise.resolve(params) });
    return { status: response.status, body: JSON.stringify([...response.headers]) + (await response.text()) };
  });
}

async function got(ask: () => Promise<Got>): Promise<Got> {
  try {
    return await ask();
  } catch (error) {
    if (error instanceof Interrupt) return { status: error.status, body: error.location ?? "" };
    throw error;
  }
}
