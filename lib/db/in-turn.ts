import type { Connection, Connector } from "./narrowed";

type Deed = (...given: unknown[]) => Promise<unknown>;

/**
 * Sends the statements of a transaction one after the other, as they are asked for. A transaction has one connection, and Prisma asks for the parts of an `include` all at
 * once; the driver of PostgreSQL still puts them in a row itself, and says that its next version refuses them.
 */
export function inTurn(connector: Connector): Connector {
  const { provider, adapterName } = connector;
  return {
    provider,
    adapterName,
    connect: async () => {
      const connection = await connector.connect();
      return deedsAs(connection, (name, deed) =>
        name === "startTransaction" ? async (...given) => oneAtATime((await deed(...given)) as object) : deed,
      ) as Connection;
    },
  };
}

function oneAtATime(running: object): object {
  let last: Promise<unknown> = Promise.resolve();
  return deedsAs(running, (_name, deed) => (...given) => {
    const next = last.then(() => deed(...given));
    // What failed stops nobody who comes after it: the database itself says then that the transaction is broken off.
    last = next.catch(() => {});
    return next;
  });
}

/** The same with its deeds done in another way. */
function deedsAs<T extends object>(of: T, as: (name: string, deed: Deed) => Deed): T {
  return new Proxy(of, {
    get: (target, name) => {
      const value: unknown = Reflect.get(target, name);
      return typeof value === "function" ? as(String(name), value.bind(target) as Deed) : value;
    },
  });
}
