-- SQLite checks a column's constraint where the column is added: each check stands with the last of the columns it names.
ALTER TABLE "GrowOut" ADD COLUMN "plantsPlanned" INTEGER;
ALTER TABLE "GrowOut" ADD COLUMN "seedParentsPlanned" INTEGER CONSTRAINT "grow_out_planned" CHECK (("plantsPlanned" IS NULL OR "plantsPlanned" >= 1) AND ("seedParentsPlanned" IS NULL OR "seedParentsPlanned" >= 1));
ALTER TABLE "GrowOut" ADD COLUMN "detasselled" INTEGER;
ALTER TABLE "GrowOut" ADD COLUMN "seedParentsDetasselled" INTEGER CONSTRAINT "grow_out_detasselled" CHECK (("detasselled" IS NULL OR "detasselled" >= 0) AND ("seedParentsDetasselled" IS NULL OR "seedParentsDetasselled" >= 0));
ALTER TABLE "GrowOut" ADD COLUMN "neighboursLookedOn" TEXT;
ALTER TABLE "GrowOut" ADD COLUMN "endedOn" TEXT;
ALTER TABLE "Harvest" ADD COLUMN "detasselled" INTEGER;
ALTER TABLE "Harvest" ADD COLUMN "seeds" REAL CONSTRAINT "harvest_counted" CHECK (("detasselled" IS NULL OR "detasselled" >= 0) AND ("seeds" IS NULL OR "seeds" >= 0));

-- Roots that are lifted and replanted are counted: the table is rebuilt for its new check.
CREATE TABLE "new_StageCount" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "growOutId" TEXT NOT NULL,
    "stage" TEXT NOT NULL,
    "plants" INTEGER NOT NULL,
    "males" INTEGER,
    "on" TEXT,
    "onFirst" TEXT,
    "onLast" TEXT,
    "thinnedBy" TEXT,
    "stewardId" TEXT,
    "note" TEXT,
    "replacesId" TEXT,
    "recordedAt" TEXT,
    "recordedOffset" INTEGER,
    "deviceId" TEXT,
    "deviceSequence" INTEGER,
    CONSTRAINT "StageCount_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "StageCount_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "stage_known" CHECK ("stage" IN ('sown','up','thinned','lifted','replanted','standing','flowering')),
    CONSTRAINT "stage_count" CHECK ("plants" >= 0 AND ("males" IS NULL OR "males" BETWEEN 0 AND "plants"))
);
INSERT INTO "new_StageCount" ("id", "growOutId", "stage", "plants", "males", "on", "onFirst", "onLast", "thinnedBy", "stewardId", "note", "replacesId", "recordedAt", "recordedOffset", "deviceId", "deviceSequence") SELECT "id", "growOutId", "stage", "plants", "males", "on", "onFirst", "onLast", "thinnedBy", "stewardId", "note", "replacesId", "recordedAt", "recordedOffset", "deviceId", "deviceSequence" FROM "StageCount";
DROP TABLE "StageCount";
ALTER TABLE "new_StageCount" RENAME TO "StageCount";
CREATE UNIQUE INDEX "StageCount_replacesId_key" ON "StageCount"("replacesId");
CREATE INDEX "StageCount_growOutId_idx" ON "StageCount"("growOutId");
