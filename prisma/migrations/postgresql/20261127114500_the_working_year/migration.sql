ALTER TABLE "GrowOut" ADD COLUMN "plantsPlanned" INTEGER,
ADD COLUMN "seedParentsPlanned" INTEGER,
ADD COLUMN "detasselled" INTEGER,
ADD COLUMN "seedParentsDetasselled" INTEGER,
ADD COLUMN "neighboursLookedOn" TEXT,
ADD COLUMN "endedOn" TEXT,
ADD CONSTRAINT "grow_out_planned" CHECK (("plantsPlanned" IS NULL OR "plantsPlanned" >= 1) AND ("seedParentsPlanned" IS NULL OR "seedParentsPlanned" >= 1)),
ADD CONSTRAINT "grow_out_detasselled" CHECK (("detasselled" IS NULL OR "detasselled" >= 0) AND ("seedParentsDetasselled" IS NULL OR "seedParentsDetasselled" >= 0));

ALTER TABLE "Harvest" ADD COLUMN "detasselled" INTEGER,
ADD COLUMN "seeds" DOUBLE PRECISION,
ADD CONSTRAINT "harvest_counted" CHECK (("detasselled" IS NULL OR "detasselled" >= 0) AND ("seeds" IS NULL OR "seeds" >= 0));

-- Roots that are lifted and replanted are counted.
ALTER TABLE "StageCount" DROP CONSTRAINT "stage_known",
ADD CONSTRAINT "stage_known" CHECK ("stage" IN ('sown','up','thinned','lifted','replanted','standing','flowering'));
