import type { Book, Line } from "../telling/book";
import type { PersonName } from "./people";

interface StoryTold {
  readonly words: string;
  readonly teller: string;
  readonly writtenBy: PersonName;
  readonly told: string;
  readonly about?: string;
}

/** Stories of a variety as they were told, by its word. Two that contradict each other stand side by side. */
const stories: Readonly<Record<string, readonly StoryTold[]>> = {
  Quillet: [
    {
      words: "There was a war and there were peas. That is all my grandmother would say about it.",
      teller: "Edda Sallowby",
      writtenBy: "Thirza Orrick",
      told: "2003-01-18",
    },
  ],
  Pocket: [
    {
      words:
        "Two in the left pocket against cramp, three in the right against the toll-keeper. My uncle died with five.",
      teller: "Corvane Ashlock",
      writtenBy: "Ambrey Stallwood",
      told: "2005-10-02",
      about: "196X",
    },
  ],
  Bellrope: [
    {
      words: "It was the ringer's broken leg. Nobody rang for a summer, and by September the rope was in flower.",
      teller: "Thirza Orrick",
      writtenBy: "Edda Sallowby",
      told: "2002-05-30",
      about: "1958~",
    },
    {
      words: "There never was a rope that year, it had been stolen. They grew up the drainpipe like any bean.",
      teller: "a former chapel warden",
      writtenBy: "Edda Sallowby",
      told: "2010-06",
      about: "1958~",
    },
  ],
  Lamp: [
    {
      words: "My aunt never ate one before November. She said the sun starts a tomato and the lamp finishes it.",
      teller: "Corvane Ashlock",
      writtenBy: "Tamsel Vike",
      told: "2017-11-11",
    },
  ],
  Slipper: [
    {
      words: "You know who was last out of chapel by where it comes up in May.",
      teller: "Mirabeth Undercroft",
      writtenBy: "Mirabeth Undercroft",
      told: "1997-05-04",
    },
  ],
  Anvil: [
    {
      words: "The judge sat on the winner to prove the rind. He was a big man. That squash kept until Whitsun.",
      teller: "Jossa Pellinder",
      writtenBy: "Jossa Pellinder",
      told: "2001-11-20",
      about: "[1970..1975]",
    },
  ],
  Ledge: [
    {
      words: "A kale for people who do not own the land behind the wind.",
      teller: "a neighbour at Pothering",
      writtenBy: "Ambrey Stallwood",
      told: "2003-02",
    },
  ],
  Rust: [
    {
      words:
        "He would sell you the carrot but not the seed. When he gave up the stall he came by with the cone and said nothing at all.",
      teller: "Mirabeth Undercroft",
      writtenBy: "Hesk Dunnaby",
      told: "2002-09",
      about: "1995",
    },
  ],
  Heron: [
    {
      words: "They grew them in the sawdust heap behind the saw. White to the elbow.",
      teller: "an old sawyer of Kestonhalse",
      writtenBy: "Mirabeth Undercroft",
      told: "1996-02-11",
      about: "195X",
    },
  ],
  Coal: [
    {
      words: "The curtains were black until the first wash and after that they were the colour of us.",
      teller: "Mirabeth Undercroft",
      writtenBy: "Edda Sallowby",
      told: "2013-12-01",
      about: "194X",
    },
  ],
  Iron: [
    {
      words: "My mother sowed it where the horse turned, because nothing else would stand that.",
      teller: "Hesk Dunnaby",
      writtenBy: "Edda Sallowby",
      told: "1999-07",
    },
  ],
  Tollgate: [
    {
      words: "Everybody who paid the toll took one and put one back. That is why there is always half.",
      teller: "Jossa Pellinder",
      writtenBy: "Orlo Brackstane",
      told: "2013-04-07",
    },
  ],
  Wheel: [
    {
      words: "Forty to the spoke, twelve spokes, and a good year went round twice.",
      teller: "Nab Hurdlestone",
      writtenBy: "Mirabeth Undercroft",
      told: "2006-08",
    },
  ],
};

/** Long keepings that may have drifted, by the variety's word. */
const strains: Readonly<Record<string, readonly Line<"strains.csv">[]>> = {
  Thimble: [
    {
      name: "Averil keeping",
      steward: "Ottoline Frayle",
      place: "Port Averil",
      kept_from: "1999",
      difference: "a week earlier, cap a little smaller",
      relation: "same",
      note: "left the valley in 1999, came home in 2023",
    },
    {
      name: "Lasting End keeping",
      steward: "Edda Sallowby",
      place: "Lasting End",
      kept_from: "2001",
      difference: "through seven plants in 2011",
      relation: "same",
    },
  ],
  Cleave: [
    {
      name: "Marrowsty keeping",
      steward: "Hesk Dunnaby",
      place: "Marrowsty",
      kept_from: "1997",
      difference: "a hand shorter since it stands in the barn acre",
      relation: "same",
    },
    { name: "Ferry keeping", steward: "Tamsel Vike", place: "Hobbleford", kept_from: "2018", relation: "same" },
  ],
  Quillet: [
    {
      name: "the tins of Cleavehead",
      place: "Cleavehead",
      kept_to: "2009",
      relation: "possibly the same",
      note: "two tins without a label; grown beside the home strain in 2010 and found the same",
    },
  ],
  Anvil: [
    {
      name: "Ferry Anvil",
      steward: "Tamsel Vike",
      place: "Hobbleford",
      kept_from: "2018",
      difference: "one in ten still has a warm tone in the rind",
      relation: "crossed with",
      note: "from the seed that met the show squash",
    },
  ],
};

export function writeStories(book: Book, variety: string, word: string): void {
  for (const { words, teller, writtenBy, told, about } of stories[word] ?? []) {
    const consent = "may be shared in the circle";
    book.write("stories.csv", { variety, words, teller, steward: writtenBy, told_on: told, about, consent });
  }
  for (const strain of strains[word] ?? []) book.write("strains.csv", { variety, ...strain });
}
