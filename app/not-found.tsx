import { EmptyState } from "@/components/empty";
import { ButtonLink } from "@/components/ui";

export default function NotFound() {
  return (
    <div className="sheet">
      <h1 className="heard">Not found</h1>
      <EmptyState noun="search" action={<ButtonLink href="/search">Search everything</ButtonLink>}>
        Nothing stands at this address. It may have been taken back, or the address has a slip in it.
      </EmptyState>
    </div>
  );
}
