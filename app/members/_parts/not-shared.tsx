import { Notice } from "@/components/ui";

/** How a registry is opened to others, told while it listens on its own machine alone. */
export function NotShared() {
  return (
    <Notice title="Nobody else can reach this registry">
      <p>
        It listens on this machine alone, and whoever sits here may do everything. To let others in over your own
        network, end it and start it with <code>npm start -- --share</code>: it asks for an owner’s passphrase first,
        then shows the address. From then on everybody signs in, you too.
      </p>
    </Notice>
  );
}
