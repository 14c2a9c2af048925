import type { VarietyHistory } from "../telling/variety-history";
import { amaranthVesper } from "./amaranth-vesper";
import { beanSaltgate } from "./bean-saltgate";
import { beanThimblewright } from "./bean-thimblewright";
import { beetUndercroft } from "./beet-undercroft";
import { carrotRustspindle } from "./carrot-rustspindle";
import { garlicCartwheel } from "./garlic-cartwheel";
import { kalePotheringLedge } from "./kale-pothering-ledge";
import { leekHeronleg } from "./leek-heronleg";
import { lettuceDustSlipper } from "./lettuce-dust-slipper";
import { maizeNightwatch } from "./maize-nightwatch";
import { onionTollgate } from "./onion-tollgate";
import { peaQuillet } from "./pea-quillet";
import { runnerBellrope } from "./runner-bellrope";
import { ryeCleavehead } from "./rye-cleavehead";
import { spinachDunnaby } from "./spinach-dunnaby";
import { squashGreyAnvil } from "./squash-grey-anvil";
import { tomatoLateLamp } from "./tomato-late-lamp";
import { tomatoLockhouse } from "./tomato-lockhouse";

/** In the order in which the circle lists them. */
export const histories: readonly VarietyHistory[] = [
  maizeNightwatch,
  ryeCleavehead,
  peaQuillet,
  beanThimblewright,
  beanSaltgate,
  runnerBellrope,
  tomatoLateLamp,
  lettuceDustSlipper,
  squashGreyAnvil,
  kalePotheringLedge,
  carrotRustspindle,
  leekHeronleg,
  beetUndercroft,
  spinachDunnaby,
  onionTollgate,
  amaranthVesper,
  garlicCartwheel,
  tomatoLockhouse,
];
