import type { Found } from "../pattern";
import type { IsolationMethod } from "../reading";
import { likely, type Reading, rule, sure } from "./rule";

/** Foreign pollen that is suspected, never a share of it: "crossed with the neighbour's", "looks crossed". */
export const crossRule = rule("suspected-cross", [
  [
    "(has|have|had|it has|must have|may have|might have|looks to have|i think it)? (crossed|got crossed|been crossed) (with|by) {rest}",
    (found) => crossed(found.name("rest")),
  ],
  [
    "(has|have|had|it has|must have|may have|might have|looks|looked|seems|seemed|looks to have|clearly|perhaps|maybe|probably|some|a few|{count})? (crossed|a bit crossed|got crossed) $",
    () => crossed(null),
  ],
  [
    "(a|some|maybe a|perhaps a|suspect a|suspected|signs of a|signs of)? (cross|crossing|outcross) (with {rest})? $",
    (found) => crossed(found.name("rest")),
  ],
  [
    "(caught|got) (foreign|strange|the neighbour's|some)? pollen (from {rest})?",
    (found) => crossed(found.name("rest")),
  ],
]);

function crossed(other: string | null): Reading {
  return likely({ kind: "suspected-cross", value: { other } });
}

/** Another planting in reach: "next to Wend's field 80 m off", "neighbour had yellow ones 200 m away". */
export const neighbourRule = rule("neighbour", [
  [
    "(too)? (next to|beside|near|close to|right by|alongside|opposite) {owner} (,|at|about|only)? {distance} (off|away|from it|from them)?",
    source,
  ],
  ["(too)? (next to|beside|near|close to|right by|alongside|opposite) {owner}", source],
  ["(only|about|just)? {distance} (off|from|away from|up from|down from|upwind of|downwind of) {owner}", source],
  ["{owner} (only|about|just)? {distance} (off|away)", source],
  [
    "{owner} (had|grew|has|grows|sowed|planted) {adjectives} (next door|over the fence|across the lane|across the road|nearby|close by)",
    source,
  ],
  [
    "{owner} (had|grew|has|grows|sowed|planted) {adjectives} (only|about|just)? {distance} (off|away|from mine|from ours|from here)",
    source,
  ],
]);

function source(found: Found): Reading {
  return sure({ kind: "neighbour", value: { what: found.words, distanceMetres: found.distance()?.metres ?? null } });
}

const kept = (method: IsolationMethod | null) => (): Reading => sure({ kind: "isolation", value: { method } });

/** How pollen was kept out: "bagged", "caged", "hand pollinated", "nobody else near". */
export const isolationRule = rule("isolation", [
  [
    "(all|each|the flowers|every one)? (hand-pollinated|hand pollinated|pollinated by hand|taped|taped and hand pollinated)",
    kept("hand pollination"),
  ],
  [
    "(all|them|it|the flowers|ears|heads)? (bagged|bagged up|under bags|bagged the (flowers|ears|heads|tassels)) $",
    kept("bags"),
  ],
  ["(all)? (in|under|inside) (a|the)? (cage|net|netting|fleece|cages|isolation cage)", kept("cage")],
  ["(caged|netted|caged with flies|caged with bees) $", kept("cage")],
  ["(sown|sowed|flowered) (early|late) (to miss|to avoid|to dodge) {rest}", kept("time")],
  ["(behind|with) (a|the)? (hedge|wood|barrier|screen) (between|around)?", kept("barrier")],
  [
    "(nobody|no one|none|nothing) (else)? (near|nearby|about|in the valley|within {distance}|for {distance}) (growing it|grew it|grows it)?",
    kept("distance"),
  ],
  [
    "(isolated|well isolated|isolation good|good isolation|on its own|all alone|alone in the valley) ((by)? {distance})? $",
    kept(null),
  ],
]);
