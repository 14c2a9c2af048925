import type { Line } from "./lines";

/** Lines as they are scribbled: short words, fractions, several events without a comma, British and American ways. All of our own invention. */
export const IN_SHORT: readonly Line[] = [
  [
    "'94 ca. 30 pl., 8 kept, rest et by deer",
    "grow-out",
    ["year 1994", "plants ~30", "seed-parents 8"],
    ["rest et by deer"],
  ],
  [
    "1994 - 40 plants fr. Aunt's jar, kept fr. 12",
    "grow-out",
    ["year 1994", "plants 40", "received from Aunt's jar", "seed-parents 12"],
  ],
  // what was done has its own date: the number before it is no year
  ["40 sown 3rd May 2026", "grow-out", ["sown-on 5-3", "year 2026"], ["40"]],
  ["94 sown May 1994", "grow-out", ["year 1994", "sown-on 5-?", "year 1994"]],
  ["94 sown 1991 seed", "grow-out", ["year 1994", "sown-from 1991"]],
  ["95 - 22 plts, svd seed from 6", "grow-out", ["year 1995", "plants 22", "seed-parents 6"]],
  [
    "1994 ~40 pl; rog. 3; kept 12; 300g",
    "grow-out",
    ["year 1994", "plants ~40", "rogued 3", "seed-parents 12", "?amount 300 g"],
  ],
  ["2022 Rcvd 20 seeds Wend", "received", ["year 2022", "received 20 seeds from Wend (given)"]],
  ["1998 bulked '96 & '97", "blend", ["year 1998", "blend 1996 + 1997"]],
  ["1999 mixed '96, '97 and '98 seed", "blend", ["year 1999", "blend 1996 + 1997 + 1998"]],
  ["2018 30 up 12 kept 4 rogued", "grow-out", ["year 2018", "emerged 30", "seed-parents 12", "rogued 4"]],
  ["2018 sown 50 / up 38 / kept 12", "grow-out", ["year 2018", "seeds-sown 50", "emerged 38", "seed-parents 12"]],
  ["2018 50 seeds > 31 plants", "grow-out", ["year 2018", "?amount 50 seeds", "plants 31"]],
  [
    "2008 sowed 50, 42 up, 40 planted out, 36 flowered, 30 seeded",
    "grow-out",
    ["year 2008", "seeds-sown 50", "emerged 42", "plants 40 planted", "plants 36", "seed-parents 30"],
  ],
  ["2015 75 planted, 10 died", "grow-out", ["year 2015", "?plants 75 planted", "lost 10"]],

  // fractions: of a measure they are one number, "kept 1/2" is no count of plants
  ["2005: 1/2 lb to Wend, 1/4 lb to Osk", "given", ["year 2005", "given 0.5 lb to Wend", "given 0.25 lb to Osk"]],
  ["2018 2 1/2 lb from 40 plants", "grow-out", ["year 2018", "?amount 2.5 lb", "seed-parents 40"]],
  ["1996 gave 1/2 to Osk, kept 1/2", "given", ["year 1996", 'given "1/2" to Osk'], ["kept 1/2"]],
  ["2002 1/2 mile from Wend's corn", "grow-out", ["year 2002", "neighbour 804.672 m"]],
  ["2006 20' from neighbor's squash", "grow-out", ["year 2006", "neighbour 6.096 m"]],
  ["2001 isolated 1/4 mile, 30 plants", "grow-out", ["year 2001", "isolation unsaid", "plants 30"]],

  // losses: all but some is not all
  ["2001 sown late, frosted, lost all but 3", "grow-out", ["year 2001", "grown", "plants 3 survived"], ["frosted"]],
  [
    "2002 lost all but 5 plants to slugs, saved seed from those",
    "grow-out",
    ["year 2002", "plants 5 survived", "seed-parents unsaid"],
  ],
  ["2003 - voles ate all but four", "grow-out", ["year 2003", "plants 4 survived"]],
  ["2003 lost all but one row", "note", ["year 2003"], ["lost all but one row"]],
  ["2019 deer ate everything except 6 plants", "grow-out", ["year 2019", "plants 6 survived"]],
  ["2019 all died except two", "grow-out", ["year 2019", "plants 2 survived"]],
  ["2017 half died of rust, 30 left", "grow-out", ["year 2017", "lost unsaid rust", "plants 30 left"]],
  ["2016 30 plants, lost a third to wilt", "grow-out", ["year 2016", "plants 30", "lost unsaid wilt"]],
  ["2022 no crop - drought", "failed", ["year 2022", "failed drought"]],
  ["2019 nothing left but 12 seeds", "note", ["year 2019", "on-hand 12 seeds"]],
  ["2023 mice got in the jar", "note", ["year 2023"], ["mice got in the jar"]],
  ["2024 jar down to 35 g", "note", ["year 2024", "on-hand 35 g"]],

  // plants, seed parents, rogues
  [
    "2014 culled 6 off types, 54 left, saved all",
    "grow-out",
    ["year 2014", "rogued 6", "plants 54 left", "seed-parents all"],
  ],
  ["2016 pulled 2 bolters", "grow-out", ["year 2016", "rogued 2"]],
  ["2015 seed kept from 12", "grow-out", ["year 2015", "seed-parents 12"]],
  ["2006 15 earliest plants saved", "grow-out", ["year 2006", "seed-parents 15"]],
  ["2013, picked best 10 cobs of 200", "grow-out", ["year 2013", "?seed-parents 10 ears"]],
  ["2012: 12 roots selected out of 60", "grow-out", ["year 2012", "plants 12 planted"]],
  ["2000 30 mother roots stored, 19 flowered", "grow-out", ["year 2000", "plants 19"], ["30 mother roots stored"]],
  [
    "2025 12 seeds from neighbor, 9 came up, 7 survived to flower",
    "grow-out",
    ["year 2025", "received 12 seeds from neighbor (given)", "emerged 9", "plants 7 survived"],
  ],
  ["2019: 20 grown, 13 for seed", "grow-out", ["year 2019", "plants 20", "seed-parents 13"]],
  [
    "2007 selected 15 of 80, equal amounts from each plant",
    "grow-out",
    ["year 2007", "seed-parents 15 of 80", "shares equal"],
  ],
  ["1998 25 plants, 5 of them from Osk's seed", "grow-out", ["year 1998", "plants 25"], ["5 of them from Osk's seed"]],
  ["1990 12 pl from Wend's '88 seed", "grow-out", ["year 1990", "plants 12", "received from Wend's '88 seed"]],
  ["2000, crossed 1998 x 1997, 6 pods", "note", ["year 2000", "?amount 6 pods"], ["crossed 1998 x 1997"]],

  // years and days
  ["5/94 sown, 9/94 harvested 400g", "grow-out", ["?year 1994-05", "?year 1994-09", "harvested 400 g"], ["sown"]],
  ["1994: planted May 3 / harvested Sep 28 / 14 oz", "grow-out", ["year 1994", "sown-on 5-3", "harvested 14 oz"]],
  ["June 3 1995: planted 60", "grow-out", ["year 1995-06-03", "?plants 60 planted"]],
  ["'92-'95 not grown", "gap", ["year 1992/1995", "gap"]],
  ["92/3 12 plants", "grow-out", ["year 1992/1993", "plants 12"]],
  ["1983(?) 12 plants", "grow-out", ["year 1983?", "plants 12"]],
  ["2024 seeds from seed swap, 12 seeds", "received", ["year 2024", "received from seed swap", "?amount 12 seeds"]],
  ["2024 - 35g on hand, germ 60%", "test", ["year 2024", "on-hand 35 g", "germination 60 % tested"]],

  // gifts
  ["2006 gave away 3 pkts at the swap", "given", ["year 2006", "given 3 pkts to the swap"]],
  ["2023 -> Wend 30 g", "given", ["year 2023", "given 30 g to Wend"]],
  ["2017 lent the 2015 jar to Osk", "given", ["year 2017", "given of 2015 to Osk (loan)"]],
  ["2018 loaned 50 g to Osk", "given", ["year 2018", "given 50 g to Osk (loan)"]],
  ["2022 returned 60 g to the library", "given", ["year 2022", "given 60 g to the library (return)"]],
  ["2004 got from Osk 20 seeds", "received", ["year 2004", "received 20 seeds from Osk (given)"]],

  // tests and weights
  ["2009 tested 20 on damp paper, 17 sprouted by day 7", "test", ["year 2009", "germination 17/20 day 7 tested"]],
  ["2025 25 seeds tested, 22 germ'd", "test", ["year 2025", "germination 22/25 tested"]],
  ["2025 germ test 3/15: 22 of 25", "test", ["year 2025", "germination 22/25 tested"]],
  ["2019 germination down to 40%", "test", ["year 2019", "germination 40 % tested"]],
  ["2009 some yellow kernels, about 2%", "note", ["year 2009"], ["some yellow kernels", "about 2%"]],
  ["1995 roguing: 5%", "note", ["year 1995"], ["roguing: 5%"]],
  ["2020 tgw 42 g", "note", ["year 2020", "seed-weight 1000 = 42 g"]],
  [
    "2019 harvest 2.3kg from 48 plants, TSW 310",
    "grow-out",
    ["year 2019", "harvested 2.3 kg", "seed-parents 48", "seed-weight 1000 = 310 g"],
  ],
  ["2022 seed weighed 45g per 1000", "note", ["year 2022", "seed-weight 1000 = 45 g"]],
  ["2024 100 = 4.4 g", "note", ["year 2024", "seed-weight 100 = 4.4 g"]],

  // a year is no count, and a count in the place of a year none
  [
    "2026 plants 40, mothers 12, yield 300 g",
    "grow-out",
    ["year 2026", "plants 40", "seed-parents 12", "harvested 300 g"],
  ],
  ["2026 plants: 40; seed parents: 12", "grow-out", ["year 2026", "plants 40", "seed-parents 12"]],
  ["2017 planted 2016 seed, 50 plants", "grow-out", ["year 2017", "sown-from 2016", "plants 50"]],
  ["seed from 2003, came from Tarn", "received", ["year 2003", "received from Tarn"], ["seed from"]],
  ["2026 60/80 plants saved", "grow-out", ["year 2026", "seed-parents 60 of 80"]],
  ["2012 80 plts/ 20 saved/ 1.2 kg", "grow-out", ["year 2012", "plants 80", "seed-parents 20", "?amount 1.2 kg"]],
  ["1998 saved from 4 of hers and 6 of mine", "grow-out", ["year 1998", "seed-parents 10"]],
  ["1997 10 + 10 plants", "note", ["year 1997"], ["10 + 10 plants"]],
  ["2002 from that one plant 30 seeds", "note", ["year 2002"], ["from that one plant 30 seeds"]],
  ["2018 bees got in the cage, 30 plants", "grow-out", ["year 2018", "plants 30"], ["bees got in the cage"]],
  ["2020 50 seeds from the bank", "received", ["year 2020", "received 50 seeds from the bank (given)"]],
];
