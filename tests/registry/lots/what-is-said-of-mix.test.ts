import { describe, expect, it } from "vitest";
import { type SaidOfLot, whatIsSaidOfMix } from "@/lib/registry/lots/what-is-said-of-mix";
import { parseDate } from "@/lib/science/dates/parse-date";
import { granted } from "../../setup/registry";

const on = granted(parseDate("2026-03-01"));

function part(number: string, more: Partial<SaidOfLot> = {}): SaidOfLot {
  return {
    ...{ number, varietyId: "v", strainId: "s", status: null, statusReason: null, treatment: "none" },
    ...{ isolationGrade: "isolated", identityGrade: "told by a keeper" },
    ...{ year: "2020", yearFirst: "2020-01-01", yearLast: "2020-12-31", yearWords: null },
    ...more,
  };
}

const mixOf = (...more: Partial<SaidOfLot>[]) =>
  whatIsSaidOfMix([part("1"), ...more.map((each, i) => part(`${i + 2}`, each))], on);

describe("of a mix is said", () => {
  it("what is said of all its parts", () => {
    expect(mixOf({})).toMatchObject({
      ...{
        varietyId: "v",
        strainId: "s",
        treatment: "none",
        isolationGrade: "isolated",
        identityGrade: "told by a keeper",
      },
      ...{ year: "2020", yearFirst: "2020-01-01", yearLast: "2020-12-31", yearWords: null, status: null },
    });
  });

  it("the worst of isolation, identity and treatment; what of one part is not said is not said of the mix", () => {
    expect(mixOf({ isolationGrade: "open", identityGrade: "guessed from seed", treatment: "hot water" })).toMatchObject(
      {
        ...{ isolationGrade: "open", identityGrade: "guessed from seed", treatment: "hot water" },
      },
    );
    expect(mixOf({ isolationGrade: null, identityGrade: null, treatment: null })).toMatchObject({
      ...{ isolationGrade: null, identityGrade: null, treatment: null },
    });
    expect(
      mixOf({ isolationGrade: "unknown", treatment: "unknown" }, { isolationGrade: null, treatment: null }),
    ).toMatchObject({
      ...{ isolationGrade: "unknown", treatment: "unknown" },
    });
  });

  it("no strain where there are two; on hold where one is, in quarantine before that", () => {
    expect(mixOf({ strainId: null }).strainId).toBeNull();
    expect(mixOf({ status: "hold" }, { status: "quarantine", statusReason: "beetles" })).toMatchObject({
      ...{ status: "quarantine", statusReason: "lot 3 in it stands so: beetles" },
    });
    expect(mixOf({ status: "share freely" }).status).toBeNull();
  });

  it("the years from the oldest harvest to the youngest, and none where one is not known", () => {
    const old = { year: "199X", yearFirst: "1990-01-01", yearLast: "1999-12-31" };
    expect(mixOf(old)).toMatchObject({ year: "1990/2020", yearFirst: "1990-01-01", yearLast: "2020-12-31" });
    const untold = { year: null, yearFirst: null, yearLast: null };
    expect(mixOf(untold)).toMatchObject({
      ...{ year: null, yearFirst: null, yearWords: "harvests of 2020, a year not known, mixed 2026-03-01" },
    });
  });
});
