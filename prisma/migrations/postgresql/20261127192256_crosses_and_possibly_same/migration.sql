-- AlterTable
ALTER TABLE "VarietyName" ADD COLUMN     "possiblySameAsId" TEXT;

-- AlterTable
ALTER TABLE "GrowOutParent" ADD COLUMN     "role" TEXT;

-- CreateIndex
CREATE INDEX "VarietyName_possiblySameAsId_idx" ON "VarietyName"("possiblySameAsId");

-- AddForeignKey
ALTER TABLE "VarietyName" ADD CONSTRAINT "VarietyName_possiblySameAsId_fkey" FOREIGN KEY ("possiblySameAsId") REFERENCES "Variety"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddConstraint
ALTER TABLE "GrowOutParent" ADD CONSTRAINT "grow_out_parent_role_known" CHECK ("role" IS NULL OR "role" IN ('seed parent','pollen parent'));

-- AddConstraint
ALTER TABLE "VarietyName" ADD CONSTRAINT "variety_name_not_itself" CHECK ("possiblySameAsId" IS NULL OR "possiblySameAsId" <> "varietyId");
