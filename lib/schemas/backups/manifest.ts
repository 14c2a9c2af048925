import { z } from "zod";

/** The name of the manifest's file in a backup. */
export const manifestFile = "manifest.json";

/** Who asked for a backup: the day, a person, or a release that was about to change the tables. */
export const backupReasons = ["daily", "by hand", "before a new release"] as const;

/** What a backup says of itself: when, of which release, and each of its files with its hash. */
export const ManifestSchema = z.object({
  kind: z.literal("kinrow backup"),
  layout: z.literal(1),
  /** the moment at which it was begun, UTC */
  at: z.iso.datetime(),
  why: z.enum(backupReasons),
  release: z.string(),
  engine: z.enum(["sqlite", "postgresql"]),
  /** true where the database's own file is in it; else the plain files alone */
  wholeRegistry: z.boolean(),
  migrations: z.array(z.object({ name: z.string(), checksum: z.string() })),
  /** rows by table */
  counts: z.record(z.string(), z.int().min(0)),
  files: z.array(
    z.object({ path: z.string().min(1), bytes: z.int().min(0), sha256: z.string().regex(/^[0-9a-f]{64}$/) }),
  ),
  check: z.object({
    /** false: something in it contradicts itself; the sentences say what */
    sound: z.boolean(),
    faults: z.array(z.string()),
    notes: z.int().min(0),
  }),
});

export type Manifest = z.infer<typeof ManifestSchema>;

/** What is remembered between backups: the last that failed, and what the last check found. Stands in the data folder. */
export const KeepingStateSchema = z.object({
  failure: z.object({ at: z.iso.datetime(), sentence: z.string() }).nullable().default(null),
  verified: z
    .object({ at: z.iso.datetime(), faults: z.int().min(0), notes: z.int().min(0), first: z.string().nullable() })
    .nullable()
    .default(null),
});

export type KeepingState = z.infer<typeof KeepingStateSchema>;
