import { Button } from "@/components/ui/button";

/** Says that what is typed is kept on this device, or that it is not; `again` throws the draft away. */
export function DraftLine({ kept, restored, again }: { kept: boolean; restored: boolean; again?: () => void }) {
  if (!kept) {
    return (
      <p className="waits" role="status">
        This device keeps no drafts: what is typed here is lost when the page is closed.
      </p>
    );
  }
  return (
    <div className="row not-on-paper">
      <p className="quiet" role="status">
        {restored
          ? "What you typed before was kept on this device and stands here again."
          : "Kept on this device as you type."}
      </p>
      {restored && again ? (
        <Button kind="quiet" onClick={again}>
          Begin afresh
        </Button>
      ) : null}
    </div>
  );
}
