import { dayInWords, monthName } from "@/lib/display/dates";
import type { SeasonPlace } from "@/lib/registry/season/records";
import { jobsNow, jobsOf, placedInStrip } from "../_words/season-jobs";
import styles from "./season-strip.module.css";

const places: readonly { place: SeasonPlace; words: string }[] = [
  { place: "field", words: "Field" },
  { place: "shed", words: "Shed" },
  { place: "desk", words: "Desk" },
];

/**
 * The strip of the season: twelve months from the one before now, what the hand does in field, shed and at the desk, and a line where
 * today is. The rows lead to what waits there.
 */
export function SeasonStrip({
  today,
  hemisphere,
  waiting,
}: {
  today: string;
  hemisphere: "north" | "south";
  waiting: Readonly<Record<SeasonPlace, number>>;
}) {
  const month = Number(today.slice(5, 7));
  const first = month === 1 ? 12 : month - 1;
  const jobs = jobsOf(hemisphere);
  const months = Array.from({ length: 12 }, (_, index) => ((first - 1 + index) % 12) + 1);
  const through = (Number(today.slice(8, 10)) - 1) / 31;
  const now = jobsNow(jobs, month);
  return (
    <figure className={styles.strip}>
      <figcaption className="heard">
        The year from {monthName(first)}. Now, {dayInWords(today)}:{" "}
        {now.map((job) => `${job.place}: ${job.words}`).join("; ")}.
      </figcaption>
      <div className={styles.grid}>
        {months.map((each, index) => (
          <span
            key={each}
            className={styles.month}
            data-now={index === 1 || undefined}
            aria-hidden="true"
            style={{ gridColumn: index + 2 }}
          >
            {monthName(each).slice(0, 3)}
          </span>
        ))}
        {places.map(({ place, words }, row) => (
          <StripRow
            key={place}
            row={row + 2}
            place={place}
            words={words}
            waiting={waiting[place]}
            first={first}
            jobs={jobs}
          />
        ))}
        <span
          className={styles.today}
          aria-hidden="true"
          style={{ gridColumn: "3 / 4", insetInlineStart: `${through * 100}%` }}
        />
      </div>
      <ul className={styles.ways} aria-label="Places">
        {places.map(({ place, words }) => (
          <li key={place}>
            <a href={`#${place}`}>
              {words}
              <span className={styles.waits}>{waiting[place] === 0 ? "nothing waits" : `${waiting[place]} wait`}</span>
            </a>
            <span className={styles.now}>{now.find((job) => job.place === place)?.words ?? "it rests"}</span>
          </li>
        ))}
      </ul>
    </figure>
  );
}

function StripRow({
  row,
  place,
  words,
  waiting,
  first,
  jobs,
}: {
  row: number;
  place: SeasonPlace;
  words: string;
  waiting: number;
  first: number;
  jobs: ReturnType<typeof jobsOf>;
}) {
  const own = jobs.filter((job) => job.place === place);
  return (
    <>
      <a href={`#${place}`} className={styles.place} style={{ gridRow: row }}>
        {words}
        <span className={styles.waits}>
          {waiting > 0 ? waiting : ""}
          <span className="heard">{waiting === 0 ? "nothing waits" : " wait"}</span>
        </span>
      </a>
      {own.flatMap((job) =>
        placedInStrip(job, first).map(({ start, end }) => (
          <span
            key={`${job.words}:${start}`}
            className={styles.job}
            aria-hidden="true"
            data-now={(start <= 1 && end >= 1) || undefined}
            style={{ gridRow: row, gridColumn: `${start + 2} / ${end + 3}` }}
          >
            {end > start || start === 1 ? job.words : ""}
          </span>
        )),
      )}
    </>
  );
}
