/** The open registry and its reading and writing ends, for layers that may not know the driver. */
export type { Client, Database, Transaction } from "@/lib/db";
