-- AlterTable
ALTER TABLE "GrowOutParent" ADD COLUMN "role" TEXT CONSTRAINT "grow_out_parent_role_known" CHECK ("role" IS NULL OR "role" IN ('seed parent','pollen parent'));

-- RedefineTables
PRAGMA defer_foreign_keys=ON;
PRAGMA foreign_keys=OFF;
CREATE TABLE "new_VarietyName" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "varietyId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "nameKey" TEXT NOT NULL,
    "kind" TEXT NOT NULL DEFAULT 'other',
    "source" TEXT,
    "possiblySameAsId" TEXT,
    CONSTRAINT "VarietyName_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "VarietyName_possiblySameAsId_fkey" FOREIGN KEY ("possiblySameAsId") REFERENCES "Variety" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "variety_name_not_itself" CHECK ("possiblySameAsId" IS NULL OR "possiblySameAsId" <> "varietyId")
);
INSERT INTO "new_VarietyName" ("id", "kind", "name", "nameKey", "source", "varietyId") SELECT "id", "kind", "name", "nameKey", "source", "varietyId" FROM "VarietyName";
DROP TABLE "VarietyName";
ALTER TABLE "new_VarietyName" RENAME TO "VarietyName";
CREATE INDEX "VarietyName_varietyId_idx" ON "VarietyName"("varietyId");
CREATE INDEX "VarietyName_nameKey_idx" ON "VarietyName"("nameKey");
CREATE INDEX "VarietyName_possiblySameAsId_idx" ON "VarietyName"("possiblySameAsId");
PRAGMA foreign_keys=ON;
PRAGMA defer_foreign_keys=OFF;


