import { everybody } from "./circle/people";
import { writePlots } from "./circle/plots";
import { writeStoreRooms } from "./circle/store-rooms";
import { histories } from "./history";
import { Book } from "./telling/book";
import { writeTraits } from "./telling/plants-scored";
import { Telling } from "./telling/telling";

/**
 * The demonstration circle as a notebook folder: file name to CSV text (UTF-8, CRLF, RFC 4180), the seven files and the further ones.
 * The same on every call: all chance in it is drawn from texts, and nothing looks at a clock.
 */
export function scenarioFolder(): ReadonlyMap<string, string> {
  const book = new Book();
  for (const { name, place, kind } of everybody) book.write("stewards.csv", { steward: name, place, kind });
  writePlots(book);
  writeTraits(book);
  const tellings = histories.map(({ variety, tell }) => {
    const telling = new Telling(book, variety);
    tell(telling);
    return telling;
  });
  writeStoreRooms(
    book,
    tellings.flatMap(({ jars }) => jars),
  );
  return book.texts();
}
