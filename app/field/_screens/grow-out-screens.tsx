import { Later, laterPart } from "../_components/later";
import type { FieldPlace } from "../_components/place";
import type { Readiness } from "../_components/readiness";
import { CountScreen } from "./count-screen";
import { FloweringScreen } from "./flowering-screen";
import { HarvestScreen } from "./harvest-screen";
import { PassScreen } from "./pass-screen";
import { PlantScreen } from "./plant-screen";
import { PlantsScreen } from "./plants-screen";
import { TakeAlong, useTaking } from "./take-along";
import { TypeScreen } from "./type-screen";
import { useWork } from "./work";
import { WorkList } from "./work-list";

/* Seldom needed, and heavy. */
const chooseScreen = laterPart(() => import("./choose-screen"));

/** What is done in a grow-out: the place in the address says which screen. */
export default function GrowOutScreens({
  place,
  growOutId,
  readiness,
}: {
  place: FieldPlace;
  growOutId: string;
  readiness: Readiness;
}) {
  const taking = useTaking(growOutId);
  const work = useWork(growOutId);
  if (work === null || taking.shown) {
    return <TakeAlong taking={taking} pack={work?.pack ?? null} readiness={readiness} />;
  }
  switch (place.what) {
    case "mark":
      return <PlantScreen key="new" work={work} plantId={null} />;
    case "plant":
      return <PlantScreen key={place.which} work={work} plantId={place.which} />;
    case "pass":
      return <PassScreen work={work} />;
    case "count":
      return <CountScreen work={work} />;
    case "flowering":
      return <FloweringScreen work={work} />;
    case "harvest":
      return <HarvestScreen work={work} />;
    case "plants":
      return <PlantsScreen work={work} />;
    case "choose":
      return <Later part={chooseScreen} props={{ work }} />;
    case "type":
      return <TypeScreen work={work} />;
    default:
      return <WorkList work={work} />;
  }
}
