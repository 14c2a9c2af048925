import type { Metadata } from "next";
import { PageHead } from "@/components/frame";
import { cropsToType, holdersToType, varietiesToType } from "@/lib/registry/notebook-typing/typing-ground";
import { current } from "../_session/current";
import { Typing } from "./_components/typing";

export const metadata: Metadata = { title: "Type one variety in" };

export default async function TypeIn() {
  const { db, today, demonstration } = await current("record");
  const [crops, varieties, holders] = await Promise.all([cropsToType(db), varietiesToType(db), holdersToType(db)]);
  return (
    <div className="sheet">
      <PageHead kind="From a notebook" title="Type one variety in">
        <p className="lead measure">
          A line a year, as it stands in the notebook. What was understood stands beside it for you to put right;
          nothing is booked before you say so, and the words are kept whatever was made of them.
        </p>
      </PageHead>
      <Typing
        today={today}
        draftKey={`type-in:${demonstration ? "demonstration" : "own"}:new`}
        crops={crops}
        varieties={varieties}
        holders={holders}
        variety={null}
      />
    </div>
  );
}
