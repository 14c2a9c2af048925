import { pictureAddress } from "@/lib/field/pictures";
import styles from "./screens.module.css";
import type { Work } from "./work";

/** What the variety should look like, what is wanted of it, what the plan asks for, and what to be careful about. */
export function TypeScreen({ work }: { work: Work }) {
  const { variety, crop, plan, type, traits, cautions } = work.pack;
  const pictured = traits.filter((each) => each.photos.length > 0);
  return (
    <>
      <h1>The type</h1>
      {variety.aim ? <p className={styles.lead}>{variety.aim}</p> : null}
      {type.length === 0 ? (
        <p>No type description is written yet. Write it at the desk, or words at the plants here.</p>
      ) : null}
      <dl className={styles.type}>
        {type.map(({ trait, words }) => (
          <div key={trait}>
            <dt>{trait}</dt>
            <dd>{words}</dd>
          </div>
        ))}
        <div>
          <dt>Plants planned</dt>
          <dd>{plan.plants ?? "not said"}</dd>
        </div>
        <div>
          <dt>Seed parents wanted</dt>
          <dd>{plan.seedParentsWanted ?? plan.seedParents ?? "not said"}</dd>
        </div>
        <div>
          <dt>Floor for {crop.name}</dt>
          <dd>{crop.plantsMin === null ? "not known" : `${crop.plantsMin} plants`}</dd>
        </div>
      </dl>
      {pictured.map((each) => (
        <figure key={each.id} className={styles.pictures}>
          {each.photos.map((hash) => (
            <img key={hash} src={pictureAddress(hash)} alt={each.name} loading="lazy" />
          ))}
          <figcaption>{each.name}</figcaption>
        </figure>
      ))}
      {[...cautions, variety.cautions ?? ""].filter(Boolean).map((each) => (
        <p key={each} className={styles.warning}>
          {each}
        </p>
      ))}
    </>
  );
}
