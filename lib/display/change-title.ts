import { dateInWords } from "./dates";
import { wholeNumber } from "./numbers";

const day = String.raw`\d{4}-\d{2}(?:-\d{2})?[~?%]?`;
/** A day or month where a title puts one: after a comma or "on", at its end or before the next part. Names of lots stand elsewhere. */
const dates = new RegExp(`(?<=, | on )(?:${day}|\\[${day}\\.\\.${day}\\])(?=$|[,:;])`, "g");
/** A count of four figures and more before what is counted; years stand before no such word. */
const counts =
  /(?<![\d.,-])\d{4,}(?=(?:\.\d+)? (?:g|kg|seeds?|plants?|ears?|packets?|lines?|lots?|entries|tests|counts|records)\b)/g;

/** The title of a change set as it is read: it is stored with dates and numbers as they were entered. */
export function changeTitle(title: string): string {
  return title.replace(dates, dateInWords).replace(counts, (count) => wholeNumber(Number(count)));
}
