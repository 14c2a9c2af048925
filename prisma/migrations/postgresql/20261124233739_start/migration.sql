-- CreateSchema
CREATE SCHEMA IF NOT EXISTS "public";

-- CreateTable
CREATE TABLE "Steward" (
    "id" TEXT NOT NULL,
    "kind" TEXT,
    "place" TEXT,
    "active" TEXT NOT NULL DEFAULT 'unknown',
    "note" TEXT,
    "extra" TEXT,

    CONSTRAINT "Steward_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "steward_kind_known" CHECK ("kind" IS NULL OR "kind" IN ('grower','library','genebank')),
    CONSTRAINT "steward_active_known" CHECK ("active" IN ('yes','no','unknown'))
);

-- CreateTable
CREATE TABLE "Person" (
    "id" TEXT NOT NULL,
    "stewardId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "nameKey" TEXT NOT NULL,
    "contact" TEXT,
    "address" TEXT,
    "consent" TEXT,
    "consentOn" TEXT,
    "lastHeard" TEXT,
    "successorStewardId" TEXT,

    CONSTRAINT "Person_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "person_named" CHECK ("name" <> '' AND "nameKey" <> '')
);

-- CreateTable
CREATE TABLE "Crop" (
    "id" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "commonName" TEXT NOT NULL,
    "commonNameKey" TEXT NOT NULL,
    "latinName" TEXT,
    "family" TEXT,
    "own" BOOLEAN NOT NULL DEFAULT false,
    "lifeCycle" TEXT,
    "matingSystem" TEXT,
    "pollinationVector" TEXT,
    "outcrossingPctMin" DOUBLE PRECISION,
    "outcrossingPctMax" DOUBLE PRECISION,
    "selfIncompatible" TEXT,
    "isolationHomeMinM" DOUBLE PRECISION,
    "isolationHomeMaxM" DOUBLE PRECISION,
    "isolationStewardMinM" DOUBLE PRECISION,
    "isolationStewardMaxM" DOUBLE PRECISION,
    "plantsMin" INTEGER,
    "plantsRecommendedMin" INTEGER,
    "plantsRecommendedMax" INTEGER,
    "daysToFlowerMin" INTEGER,
    "daysToFlowerMax" INTEGER,
    "daysToSeedMin" INTEGER,
    "daysToSeedMax" INTEGER,
    "seedLifeYearsMin" DOUBLE PRECISION,
    "seedLifeYearsMax" DOUBLE PRECISION,
    "seedsPerGramMin" DOUBLE PRECISION,
    "seedsPerGramMax" DOUBLE PRECISION,
    "vernalisation" TEXT,
    "wildRelatives" TEXT,
    "seedProcessing" TEXT,
    "cautions" TEXT,
    "clonal" BOOLEAN NOT NULL DEFAULT false,
    "dryStorage" BOOLEAN NOT NULL DEFAULT true,
    "notes" TEXT,
    "sources" TEXT,
    "crossingGroupId" TEXT,

    CONSTRAINT "Crop_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "crop_outcrossing_percent" CHECK ("outcrossingPctMin" IS NULL OR ("outcrossingPctMin" BETWEEN 0 AND 100 AND "outcrossingPctMax" BETWEEN "outcrossingPctMin" AND 100))
);

-- CreateTable
CREATE TABLE "CropOverride" (
    "id" TEXT NOT NULL,
    "cropId" TEXT NOT NULL,
    "field" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "source" TEXT,

    CONSTRAINT "CropOverride_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "override_has_reason" CHECK ("reason" <> '')
);

-- CreateTable
CREATE TABLE "CrossingGroup" (
    "id" TEXT NOT NULL,
    "key" TEXT NOT NULL,

    CONSTRAINT "CrossingGroup_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "CrossingPair" (
    "id" TEXT NOT NULL,
    "crossingGroupId" TEXT NOT NULL,
    "memberA" TEXT NOT NULL,
    "memberB" TEXT NOT NULL,
    "cropKeysA" TEXT NOT NULL,
    "cropKeysB" TEXT NOT NULL,
    "relation" TEXT NOT NULL,
    "degree" TEXT NOT NULL,
    "direction" TEXT NOT NULL,
    "factor" DOUBLE PRECISION,
    "factorNote" TEXT,
    "f1Fertility" TEXT,
    "evidence" TEXT,
    "sources" TEXT,
    "verified" TEXT,

    CONSTRAINT "CrossingPair_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "crossing_factor_share" CHECK ("factor" IS NULL OR "factor" BETWEEN 0 AND 1)
);

-- CreateTable
CREATE TABLE "Variety" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "nameKey" TEXT NOT NULL,
    "cropId" TEXT NOT NULL,
    "aim" TEXT,
    "story" TEXT,
    "typeDescription" TEXT,
    "seedCoat" TEXT,
    "cautions" TEXT,
    "rights" TEXT,
    "sensitivity" TEXT NOT NULL DEFAULT 'circle',
    "plantsWanted" INTEGER,
    "seedParentsWanted" INTEGER,
    "isolationWantedM" DOUBLE PRECISION,
    "note" TEXT,
    "extra" TEXT,
    "revision" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "Variety_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "variety_named" CHECK ("name" <> '' AND "nameKey" <> ''),
    CONSTRAINT "variety_aim_known" CHECK ("aim" IS NULL OR "aim" IN ('true-to-type','broad-and-alive','improved')),
    CONSTRAINT "variety_sensitivity_known" CHECK ("sensitivity" IN ('public','circle','held')),
    CONSTRAINT "variety_plants_wanted" CHECK ("plantsWanted" IS NULL OR "plantsWanted" >= 1)
);

-- CreateTable
CREATE TABLE "VarietyName" (
    "id" TEXT NOT NULL,
    "varietyId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "nameKey" TEXT NOT NULL,
    "kind" TEXT NOT NULL DEFAULT 'other',
    "source" TEXT,

    CONSTRAINT "VarietyName_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "TypeTrait" (
    "id" TEXT NOT NULL,
    "varietyId" TEXT NOT NULL,
    "trait" TEXT NOT NULL,
    "traitId" TEXT,
    "allowed" TEXT NOT NULL,
    "offType" TEXT,
    "part" TEXT,

    CONSTRAINT "TypeTrait_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Strain" (
    "id" TEXT NOT NULL,
    "varietyId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "nameKey" TEXT NOT NULL,
    "stewardId" TEXT,
    "place" TEXT,
    "keptFrom" TEXT,
    "keptTo" TEXT,
    "difference" TEXT,
    "relation" TEXT,
    "note" TEXT,

    CONSTRAINT "Strain_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "strain_relation_known" CHECK ("relation" IS NULL OR "relation" IN ('same','selected from','possibly the same','crossed with'))
);

-- CreateTable
CREATE TABLE "Lot" (
    "id" TEXT NOT NULL,
    "number" TEXT NOT NULL,
    "numberKey" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "varietyId" TEXT NOT NULL,
    "strainId" TEXT,
    "holderId" TEXT,
    "kind" TEXT NOT NULL,
    "growOutId" TEXT,
    "year" TEXT,
    "yearFirst" TEXT,
    "yearLast" TEXT,
    "yearWords" TEXT,
    "thousandSeedGrams" DOUBLE PRECISION,
    "inbreeding" DOUBLE PRECISION,
    "founderLines" TEXT,
    "origin" TEXT,
    "status" TEXT,
    "statusReason" TEXT,
    "treatment" TEXT,
    "treatmentSubstance" TEXT,
    "originalSample" BOOLEAN,
    "identityGrade" TEXT,
    "isolationGrade" TEXT,
    "isolationReasons" TEXT,
    "donorNumber" TEXT,
    "howSure" TEXT,
    "notes" TEXT,
    "extra" TEXT,

    CONSTRAINT "Lot_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "lot_numbered" CHECK ("number" <> '' AND "numberKey" <> ''),
    CONSTRAINT "lot_kind_known" CHECK ("kind" IN ('founder','harvest','blend','split')),
    CONSTRAINT "lot_harvest_has_grow_out" CHECK (("kind" = 'harvest') = ("growOutId" IS NOT NULL)),
    CONSTRAINT "lot_seed_weight_above_zero" CHECK ("thousandSeedGrams" IS NULL OR "thousandSeedGrams" > 0),
    CONSTRAINT "lot_inbreeding_of_founder" CHECK ("inbreeding" IS NULL OR ("kind" = 'founder' AND "inbreeding" BETWEEN 0 AND 1)),
    CONSTRAINT "lot_lines_known" CHECK ("founderLines" IS NULL OR ("kind" = 'founder' AND "founderLines" IN ('one','many'))),
    CONSTRAINT "lot_status_known" CHECK ("status" IS NULL OR "status" IN ('quarantine','usable','share freely','circle only','closed','hold','not for seed','finished','dead','discarded')),
    CONSTRAINT "lot_treatment_known" CHECK ("treatment" IS NULL OR "treatment" IN ('none','hot water','chemical','unknown')),
    CONSTRAINT "lot_isolation_known" CHECK ("isolationGrade" IS NULL OR "isolationGrade" IN ('controlled','isolated','partly','open','unknown')),
    CONSTRAINT "lot_year_span" CHECK ("yearFirst" IS NULL OR "yearLast" IS NULL OR "yearFirst" <= "yearLast")
);

-- CreateTable
CREATE TABLE "LotParent" (
    "id" TEXT NOT NULL,
    "lotId" TEXT NOT NULL,
    "parentLotId" TEXT NOT NULL,
    "share" DOUBLE PRECISION,
    "grams" DOUBLE PRECISION,
    "seeds" DOUBLE PRECISION,

    CONSTRAINT "LotParent_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "lot_parent_is_another" CHECK ("lotId" <> "parentLotId"),
    CONSTRAINT "lot_parent_share" CHECK ("share" IS NULL OR ("share" > 0 AND "share" <= 1.000001))
);

-- CreateTable
CREATE TABLE "LotMaking" (
    "id" TEXT NOT NULL,
    "lotId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "on" TEXT,
    "onFirst" TEXT,
    "onLast" TEXT,
    "reason" TEXT,
    "stewardId" TEXT,

    CONSTRAINT "LotMaking_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "making_kind_known" CHECK ("kind" IN ('blend','split'))
);

-- CreateTable
CREATE TABLE "Place" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "nameKey" TEXT NOT NULL,
    "stewardId" TEXT,
    "kind" TEXT,
    "building" TEXT,
    "temperatureC" DOUBLE PRECISION,
    "relativeHumidityPercent" DOUBLE PRECISION,
    "note" TEXT,

    CONSTRAINT "Place_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "place_kind_known" CHECK ("kind" IS NULL OR "kind" IN ('cupboard','cellar','fridge','freezer','deposit elsewhere'))
);

-- CreateTable
CREATE TABLE "Container" (
    "id" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "lotId" TEXT NOT NULL,
    "placeId" TEXT,
    "kind" TEXT,
    "amount" DOUBLE PRECISION,
    "unit" TEXT NOT NULL DEFAULT 'g',
    "sealedOn" TEXT,
    "lastOpened" TEXT,
    "desiccant" TEXT,
    "note" TEXT,

    CONSTRAINT "Container_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "container_amount" CHECK ("amount" IS NULL OR "amount" >= 0)
);

-- CreateTable
CREATE TABLE "LedgerEntry" (
    "id" TEXT NOT NULL,
    "lotId" TEXT NOT NULL,
    "on" TEXT NOT NULL,
    "onFirst" TEXT NOT NULL,
    "onLast" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "amount" DOUBLE PRECISION NOT NULL,
    "unit" TEXT NOT NULL DEFAULT 'g',
    "how" TEXT,
    "other" TEXT,
    "otherStewardId" TEXT,
    "otherLotId" TEXT,
    "notes" TEXT,
    "transferId" TEXT,
    "replacesId" TEXT,
    "takenBack" BOOLEAN NOT NULL DEFAULT false,
    "extra" TEXT,

    CONSTRAINT "LedgerEntry_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "ledger_kind_known" CHECK ("kind" IN ('received','harvested','blended-in','sown','tested','given','blended-out','discarded','weighed')),
    CONSTRAINT "ledger_amount" CHECK ("amount" > 0 OR ("amount" = 0 AND "kind" = 'weighed')),
    CONSTRAINT "ledger_unit_known" CHECK ("unit" IN ('g','seeds','ears','heads','pods','fruits','packets')),
    CONSTRAINT "ledger_date_span" CHECK ("onFirst" <= "onLast"),
    CONSTRAINT "ledger_corrects_another" CHECK ("replacesId" IS NULL OR "replacesId" <> "id"),
    CONSTRAINT "ledger_taken_back_names_entry" CHECK (NOT "takenBack" OR "replacesId" IS NOT NULL)
);

-- CreateTable
CREATE TABLE "SeedWeighing" (
    "id" TEXT NOT NULL,
    "lotId" TEXT NOT NULL,
    "on" TEXT,
    "seeds" INTEGER NOT NULL,
    "grams" DOUBLE PRECISION NOT NULL,
    "note" TEXT,

    CONSTRAINT "SeedWeighing_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "weighing_counts" CHECK ("seeds" >= 1 AND "grams" > 0)
);

-- CreateTable
CREATE TABLE "MoistureReading" (
    "id" TEXT NOT NULL,
    "lotId" TEXT NOT NULL,
    "on" TEXT NOT NULL,
    "onFirst" TEXT NOT NULL,
    "onLast" TEXT NOT NULL,
    "percent" DOUBLE PRECISION,
    "relativeHumidityPercent" DOUBLE PRECISION,
    "method" TEXT,
    "temperatureC" DOUBLE PRECISION,
    "note" TEXT,

    CONSTRAINT "MoistureReading_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "moisture_percent" CHECK ("percent" IS NULL OR "percent" BETWEEN 0 AND 100),
    CONSTRAINT "moisture_humidity" CHECK ("relativeHumidityPercent" IS NULL OR "relativeHumidityPercent" BETWEEN 0 AND 100)
);

-- CreateTable
CREATE TABLE "Drying" (
    "id" TEXT NOT NULL,
    "lotId" TEXT NOT NULL,
    "on" TEXT NOT NULL,
    "onFirst" TEXT NOT NULL,
    "onLast" TEXT NOT NULL,
    "startGrams" DOUBLE PRECISION,
    "startPercent" DOUBLE PRECISION,
    "targetPercent" DOUBLE PRECISION,
    "endGrams" DOUBLE PRECISION,
    "days" DOUBLE PRECISION,
    "note" TEXT,

    CONSTRAINT "Drying_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "GerminationTest" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "nameKey" TEXT NOT NULL,
    "lotId" TEXT NOT NULL,
    "on" TEXT NOT NULL,
    "onFirst" TEXT NOT NULL,
    "onLast" TEXT NOT NULL,
    "basis" TEXT,
    "method" TEXT,
    "temperature" TEXT,
    "preTreatment" TEXT,
    "finalCountDay" DOUBLE PRECISION,
    "note" TEXT,
    "extra" TEXT,

    CONSTRAINT "GerminationTest_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "test_named" CHECK ("name" <> '' AND "nameKey" <> ''),
    CONSTRAINT "test_basis_known" CHECK ("basis" IS NULL OR "basis" IN ('normal seedlings','sprouted')),
    CONSTRAINT "test_date_span" CHECK ("onFirst" <= "onLast")
);

-- CreateTable
CREATE TABLE "TestReplicate" (
    "id" TEXT NOT NULL,
    "testId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "sown" INTEGER NOT NULL,

    CONSTRAINT "TestReplicate_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "replicate_sown" CHECK ("sown" >= 1)
);

-- CreateTable
CREATE TABLE "TestCount" (
    "id" TEXT NOT NULL,
    "replicateId" TEXT NOT NULL,
    "day" DOUBLE PRECISION,
    "normal" INTEGER NOT NULL,
    "abnormal" INTEGER,
    "hard" INTEGER,
    "fresh" INTEGER,
    "dead" INTEGER,
    "replacesId" TEXT,
    "takenBack" BOOLEAN NOT NULL DEFAULT false,
    "extra" TEXT,

    CONSTRAINT "TestCount_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "count_not_negative" CHECK ("normal" >= 0 AND ("abnormal" IS NULL OR "abnormal" >= 0) AND ("hard" IS NULL OR "hard" >= 0) AND ("fresh" IS NULL OR "fresh" >= 0) AND ("dead" IS NULL OR "dead" >= 0)),
    CONSTRAINT "count_day" CHECK ("day" IS NULL OR "day" >= 0)
);

-- CreateTable
CREATE TABLE "GrowOut" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "nameKey" TEXT NOT NULL,
    "varietyId" TEXT NOT NULL,
    "stewardId" TEXT,
    "purpose" TEXT,
    "sown" TEXT,
    "sownFirst" TEXT,
    "sownLast" TEXT,
    "seedsSown" INTEGER,
    "plantsStanding" INTEGER,
    "malesStanding" INTEGER,
    "roguedBeforePollen" INTEGER,
    "roguedAfterPollen" INTEGER,
    "seedParents" INTEGER,
    "seedShares" TEXT,
    "seedSharesCv" DOUBLE PRECISION,
    "selfingRate" DOUBLE PRECISION,
    "foreignPollen" DOUBLE PRECISION,
    "outcome" TEXT,
    "note" TEXT,
    "extra" TEXT,

    CONSTRAINT "GrowOut_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "grow_out_named" CHECK ("name" <> '' AND "nameKey" <> ''),
    CONSTRAINT "grow_out_purpose_known" CHECK ("purpose" IS NULL OR "purpose" IN ('renew','food','compare','teach','increase')),
    CONSTRAINT "grow_out_counts" CHECK (("seedsSown" IS NULL OR "seedsSown" >= 0) AND ("plantsStanding" IS NULL OR "plantsStanding" >= 0) AND ("malesStanding" IS NULL OR "malesStanding" >= 0) AND ("roguedBeforePollen" IS NULL OR "roguedBeforePollen" >= 0) AND ("roguedAfterPollen" IS NULL OR "roguedAfterPollen" >= 0) AND ("seedParents" IS NULL OR "seedParents" >= 0)),
    CONSTRAINT "grow_out_shares_known" CHECK ("seedShares" IS NULL OR "seedShares" IN ('equal','cv','plants')),
    CONSTRAINT "grow_out_cv" CHECK (("seedShares" = 'cv' AND "seedSharesCv" >= 0) OR (("seedShares" IS NULL OR "seedShares" <> 'cv') AND "seedSharesCv" IS NULL)),
    CONSTRAINT "grow_out_rates" CHECK (("selfingRate" IS NULL OR "selfingRate" BETWEEN 0 AND 1) AND ("foreignPollen" IS NULL OR "foreignPollen" BETWEEN 0 AND 1))
);

-- CreateTable
CREATE TABLE "GrowOutParent" (
    "id" TEXT NOT NULL,
    "growOutId" TEXT NOT NULL,
    "lotId" TEXT NOT NULL,
    "share" DOUBLE PRECISION,

    CONSTRAINT "GrowOutParent_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "grow_out_parent_share" CHECK ("share" IS NULL OR ("share" > 0 AND "share" <= 1.000001))
);

-- CreateTable
CREATE TABLE "Plot" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "nameKey" TEXT NOT NULL,
    "stewardId" TEXT,
    "place" TEXT,
    "latitude" DOUBLE PRECISION,
    "longitude" DOUBLE PRECISION,
    "areaM2" DOUBLE PRECISION,
    "altitudeM" DOUBLE PRECISION,
    "soil" TEXT,
    "windExposure" TEXT,
    "note" TEXT,

    CONSTRAINT "Plot_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "GrowOutPlot" (
    "id" TEXT NOT NULL,
    "growOutId" TEXT NOT NULL,
    "plotId" TEXT NOT NULL,
    "fromOn" TEXT,
    "toOn" TEXT,

    CONSTRAINT "GrowOutPlot_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "StageCount" (
    "id" TEXT NOT NULL,
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

    CONSTRAINT "StageCount_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "stage_known" CHECK ("stage" IN ('sown','up','thinned','standing','flowering')),
    CONSTRAINT "stage_count" CHECK ("plants" >= 0 AND ("males" IS NULL OR "males" BETWEEN 0 AND "plants"))
);

-- CreateTable
CREATE TABLE "RoguePass" (
    "id" TEXT NOT NULL,
    "growOutId" TEXT NOT NULL,
    "on" TEXT NOT NULL,
    "onFirst" TEXT NOT NULL,
    "onLast" TEXT NOT NULL,
    "stage" TEXT,
    "timing" TEXT,
    "looked" INTEGER,
    "pulled" INTEGER NOT NULL,
    "reason" TEXT,
    "left" INTEGER,
    "stewardId" TEXT,
    "note" TEXT,
    "replacesId" TEXT,
    "recordedAt" TEXT,
    "recordedOffset" INTEGER,
    "deviceId" TEXT,
    "deviceSequence" INTEGER,

    CONSTRAINT "RoguePass_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "rogue_timing_known" CHECK ("timing" IS NULL OR "timing" IN ('before','after')),
    CONSTRAINT "rogue_counts" CHECK ("pulled" >= 0 AND ("looked" IS NULL OR "looked" >= "pulled"))
);

-- CreateTable
CREATE TABLE "FloweringNote" (
    "id" TEXT NOT NULL,
    "growOutId" TEXT,
    "neighbourId" TEXT,
    "organ" TEXT NOT NULL DEFAULT 'flower',
    "moment" TEXT NOT NULL,
    "on" TEXT NOT NULL,
    "onFirst" TEXT NOT NULL,
    "onLast" TEXT NOT NULL,
    "stewardId" TEXT,
    "note" TEXT,
    "replacesId" TEXT,
    "recordedAt" TEXT,
    "recordedOffset" INTEGER,
    "deviceId" TEXT,
    "deviceSequence" INTEGER,

    CONSTRAINT "FloweringNote_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "flowering_known" CHECK ("organ" IN ('flower','pollen','silk') AND "moment" IN ('first','half','last')),
    CONSTRAINT "flowering_of_one" CHECK (("growOutId" IS NULL) <> ("neighbourId" IS NULL))
);

-- CreateTable
CREATE TABLE "NeighbourSource" (
    "id" TEXT NOT NULL,
    "growOutId" TEXT,
    "plotId" TEXT,
    "cropId" TEXT,
    "varietyId" TEXT,
    "what" TEXT NOT NULL,
    "distanceMetres" DOUBLE PRECISION,
    "bearing" TEXT,
    "sizeM2" DOUBLE PRECISION,
    "plants" INTEGER,
    "windowFirst" TEXT,
    "windowLast" TEXT,
    "howSure" TEXT,
    "note" TEXT,

    CONSTRAINT "NeighbourSource_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "neighbour_distance" CHECK ("distanceMetres" IS NULL OR "distanceMetres" >= 0),
    CONSTRAINT "neighbour_bearing_known" CHECK ("bearing" IS NULL OR "bearing" IN ('N','NE','E','SE','S','SW','W','NW'))
);

-- CreateTable
CREATE TABLE "IsolationMethod" (
    "id" TEXT NOT NULL,
    "growOutId" TEXT NOT NULL,
    "method" TEXT NOT NULL,
    "evidence" TEXT,
    "fromOn" TEXT,
    "toOn" TEXT,
    "note" TEXT,

    CONSTRAINT "IsolationMethod_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "isolation_method_known" CHECK ("method" IN ('distance','time','barrier','cage','bags','hand pollination'))
);

-- CreateTable
CREATE TABLE "Plant" (
    "id" TEXT NOT NULL,
    "growOutId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "nameKey" TEXT NOT NULL,
    "cell" TEXT,
    "kept" BOOLEAN,
    "seedGrams" DOUBLE PRECISION,
    "extra" TEXT,

    CONSTRAINT "Plant_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "plant_seed" CHECK ("seedGrams" IS NULL OR "seedGrams" >= 0)
);

-- CreateTable
CREATE TABLE "Mark" (
    "id" TEXT NOT NULL,
    "plantId" TEXT NOT NULL,
    "tag" TEXT,
    "intent" TEXT NOT NULL,
    "on" TEXT NOT NULL,
    "onFirst" TEXT NOT NULL,
    "onLast" TEXT NOT NULL,
    "words" TEXT,
    "fate" TEXT,
    "stewardId" TEXT,
    "replacesId" TEXT,
    "recordedAt" TEXT,
    "recordedOffset" INTEGER,
    "deviceId" TEXT,
    "deviceSequence" INTEGER,

    CONSTRAINT "Mark_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "mark_intent_known" CHECK ("intent" IN ('keep','watch','pull'))
);

-- CreateTable
CREATE TABLE "Trait" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "nameKey" TEXT NOT NULL,
    "varietyId" TEXT,
    "cropId" TEXT,
    "kind" TEXT NOT NULL,
    "unit" TEXT,
    "version" INTEGER NOT NULL DEFAULT 1,
    "direction" TEXT,
    "target" DOUBLE PRECISION,
    "scaleLow" DOUBLE PRECISION,
    "scaleHigh" DOUBLE PRECISION,
    "wording" TEXT,
    "previousId" TEXT,

    CONSTRAINT "Trait_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "trait_kind_known" CHECK ("kind" IN ('count','measure','scale','yes-no','category','date')),
    CONSTRAINT "trait_direction_known" CHECK ("direction" IS NULL OR "direction" IN ('higher','lower','target','none')),
    CONSTRAINT "trait_version" CHECK ("version" >= 1)
);

-- CreateTable
CREATE TABLE "Score" (
    "id" TEXT NOT NULL,
    "plantId" TEXT NOT NULL,
    "traitId" TEXT NOT NULL,
    "value" DOUBLE PRECISION,
    "text" TEXT,
    "on" TEXT,
    "stewardId" TEXT,
    "replacesId" TEXT,
    "takenBack" BOOLEAN NOT NULL DEFAULT false,
    "recordedAt" TEXT,
    "recordedOffset" INTEGER,
    "deviceId" TEXT,
    "deviceSequence" INTEGER,

    CONSTRAINT "Score_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Harvest" (
    "id" TEXT NOT NULL,
    "growOutId" TEXT NOT NULL,
    "lotId" TEXT,
    "on" TEXT,
    "onFirst" TEXT,
    "onLast" TEXT,
    "bulked" TEXT,
    "seedParents" INTEGER,
    "grams" DOUBLE PRECISION,
    "mouldyShare" DOUBLE PRECISION,
    "note" TEXT,

    CONSTRAINT "Harvest_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "harvest_bulked_known" CHECK ("bulked" IS NULL OR "bulked" IN ('equal seeds','equal weight','all together','kept apart')),
    CONSTRAINT "harvest_amounts" CHECK (("seedParents" IS NULL OR "seedParents" >= 1) AND ("grams" IS NULL OR "grams" >= 0) AND ("mouldyShare" IS NULL OR "mouldyShare" BETWEEN 0 AND 1))
);

-- CreateTable
CREATE TABLE "HarvestSeedParent" (
    "id" TEXT NOT NULL,
    "harvestId" TEXT NOT NULL,
    "plantId" TEXT,
    "share" DOUBLE PRECISION,
    "grams" DOUBLE PRECISION,
    "seeds" DOUBLE PRECISION,
    "lost" TEXT,

    CONSTRAINT "HarvestSeedParent_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Transfer" (
    "id" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "lotId" TEXT NOT NULL,
    "newLotId" TEXT,
    "fromStewardId" TEXT,
    "toStewardId" TEXT,
    "toWords" TEXT,
    "on" TEXT NOT NULL,
    "onFirst" TEXT NOT NULL,
    "onLast" TEXT NOT NULL,
    "amount" DOUBLE PRECISION,
    "unit" TEXT NOT NULL DEFAULT 'g',
    "purpose" TEXT,
    "conditions" TEXT,
    "told" TEXT,
    "replyDue" TEXT,
    "note" TEXT,

    CONSTRAINT "Transfer_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "transfer_kind_known" CHECK ("kind" IN ('gift','loan','return','exchange','safety duplicate','sale','to a library')),
    CONSTRAINT "transfer_amount" CHECK ("amount" IS NULL OR "amount" > 0)
);

-- CreateTable
CREATE TABLE "Promise" (
    "id" TEXT NOT NULL,
    "transferId" TEXT,
    "varietyId" TEXT,
    "lotId" TEXT,
    "stewardId" TEXT,
    "words" TEXT NOT NULL,
    "due" TEXT,
    "keptOn" TEXT,

    CONSTRAINT "Promise_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "HolderConfirmation" (
    "id" TEXT NOT NULL,
    "varietyId" TEXT NOT NULL,
    "stewardId" TEXT NOT NULL,
    "lotId" TEXT,
    "on" TEXT NOT NULL,
    "onFirst" TEXT NOT NULL,
    "onLast" TEXT NOT NULL,
    "still" TEXT NOT NULL,
    "grams" DOUBLE PRECISION,
    "note" TEXT,

    CONSTRAINT "HolderConfirmation_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "confirmation_known" CHECK ("still" IN ('yes','no','unknown'))
);

-- CreateTable
CREATE TABLE "Story" (
    "id" TEXT NOT NULL,
    "varietyId" TEXT,
    "lotId" TEXT,
    "growOutId" TEXT,
    "words" TEXT NOT NULL,
    "teller" TEXT,
    "stewardId" TEXT,
    "toldOn" TEXT,
    "about" TEXT,
    "aboutFirst" TEXT,
    "aboutLast" TEXT,
    "consent" TEXT,

    CONSTRAINT "Story_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "story_has_subject" CHECK ("varietyId" IS NOT NULL OR "lotId" IS NOT NULL OR "growOutId" IS NOT NULL),
    CONSTRAINT "story_has_words" CHECK ("words" <> '')
);

-- CreateTable
CREATE TABLE "Observation" (
    "id" TEXT NOT NULL,
    "varietyId" TEXT,
    "lotId" TEXT,
    "growOutId" TEXT,
    "on" TEXT,
    "onFirst" TEXT,
    "onLast" TEXT,
    "words" TEXT NOT NULL,
    "value" DOUBLE PRECISION,
    "unit" TEXT,
    "howSure" TEXT,
    "stewardId" TEXT,

    CONSTRAINT "Observation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Photo" (
    "id" TEXT NOT NULL,
    "hash" TEXT NOT NULL,
    "varietyId" TEXT,
    "lotId" TEXT,
    "growOutId" TEXT,
    "plantId" TEXT,
    "testId" TEXT,
    "takenOn" TEXT,
    "caption" TEXT,
    "scale" TEXT,
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "bytes" INTEGER NOT NULL,

    CONSTRAINT "Photo_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "photo_size" CHECK ("bytes" > 0 AND "bytes" <= 2097152 AND "width" BETWEEN 1 AND 1600 AND "height" BETWEEN 1 AND 1600)
);

-- CreateTable
CREATE TABLE "Warning" (
    "id" TEXT NOT NULL,
    "varietyId" TEXT,
    "lotId" TEXT,
    "kind" TEXT,
    "reason" TEXT NOT NULL,
    "on" TEXT NOT NULL,
    "stewardId" TEXT,
    "closedOn" TEXT,
    "closedHow" TEXT,

    CONSTRAINT "Warning_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Question" (
    "id" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "sentence" TEXT NOT NULL,
    "varietyId" TEXT,
    "lotId" TEXT,
    "growOutId" TEXT,
    "plantId" TEXT,
    "testId" TEXT,
    "raisedAt" TEXT NOT NULL,
    "answer" TEXT,
    "answeredAt" TEXT,

    CONSTRAINT "Question_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Setting" (
    "id" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "value" TEXT NOT NULL,

    CONSTRAINT "Setting_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ChangeSet" (
    "id" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "at" TEXT NOT NULL,
    "atOffset" INTEGER NOT NULL DEFAULT 0,
    "kind" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "reason" TEXT,
    "actor" TEXT NOT NULL,
    "stewardId" TEXT,
    "undoesId" TEXT,

    CONSTRAINT "ChangeSet_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "change_set_kind_known" CHECK ("kind" IN ('entry','import','undo','start')),
    CONSTRAINT "change_set_undo_names_one" CHECK (("kind" = 'undo') = ("undoesId" IS NOT NULL))
);

-- CreateTable
CREATE TABLE "Change" (
    "id" TEXT NOT NULL,
    "changeSetId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "tableName" TEXT NOT NULL,
    "recordId" TEXT NOT NULL,
    "action" TEXT NOT NULL,
    "before" TEXT,
    "after" TEXT,

    CONSTRAINT "Change_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "change_action_known" CHECK (("action" = 'create' AND "before" IS NULL AND "after" IS NOT NULL) OR ("action" = 'update' AND "before" IS NOT NULL AND "after" IS NOT NULL) OR ("action" = 'remove' AND "before" IS NOT NULL AND "after" IS NULL))
);

-- CreateIndex
CREATE UNIQUE INDEX "Person_stewardId_key" ON "Person"("stewardId");

-- CreateIndex
CREATE UNIQUE INDEX "Person_name_key" ON "Person"("name");

-- CreateIndex
CREATE INDEX "Person_nameKey_idx" ON "Person"("nameKey");

-- CreateIndex
CREATE UNIQUE INDEX "Crop_key_key" ON "Crop"("key");

-- CreateIndex
CREATE UNIQUE INDEX "Crop_commonNameKey_key" ON "Crop"("commonNameKey");

-- CreateIndex
CREATE UNIQUE INDEX "CropOverride_cropId_field_key" ON "CropOverride"("cropId", "field");

-- CreateIndex
CREATE UNIQUE INDEX "CrossingGroup_key_key" ON "CrossingGroup"("key");

-- CreateIndex
CREATE INDEX "CrossingPair_crossingGroupId_idx" ON "CrossingPair"("crossingGroupId");

-- CreateIndex
CREATE UNIQUE INDEX "Variety_name_key" ON "Variety"("name");

-- CreateIndex
CREATE INDEX "Variety_cropId_idx" ON "Variety"("cropId");

-- CreateIndex
CREATE INDEX "Variety_nameKey_idx" ON "Variety"("nameKey");

-- CreateIndex
CREATE INDEX "VarietyName_varietyId_idx" ON "VarietyName"("varietyId");

-- CreateIndex
CREATE INDEX "VarietyName_nameKey_idx" ON "VarietyName"("nameKey");

-- CreateIndex
CREATE INDEX "TypeTrait_varietyId_idx" ON "TypeTrait"("varietyId");

-- CreateIndex
CREATE UNIQUE INDEX "Strain_varietyId_nameKey_key" ON "Strain"("varietyId", "nameKey");

-- CreateIndex
CREATE UNIQUE INDEX "Lot_number_key" ON "Lot"("number");

-- CreateIndex
CREATE UNIQUE INDEX "Lot_code_key" ON "Lot"("code");

-- CreateIndex
CREATE INDEX "Lot_varietyId_idx" ON "Lot"("varietyId");

-- CreateIndex
CREATE INDEX "Lot_holderId_idx" ON "Lot"("holderId");

-- CreateIndex
CREATE INDEX "Lot_growOutId_idx" ON "Lot"("growOutId");

-- CreateIndex
CREATE INDEX "Lot_numberKey_idx" ON "Lot"("numberKey");

-- CreateIndex
CREATE INDEX "LotParent_parentLotId_idx" ON "LotParent"("parentLotId");

-- CreateIndex
CREATE UNIQUE INDEX "LotParent_lotId_parentLotId_key" ON "LotParent"("lotId", "parentLotId");

-- CreateIndex
CREATE UNIQUE INDEX "LotMaking_lotId_key" ON "LotMaking"("lotId");

-- CreateIndex
CREATE UNIQUE INDEX "Container_code_key" ON "Container"("code");

-- CreateIndex
CREATE INDEX "Container_lotId_idx" ON "Container"("lotId");

-- CreateIndex
CREATE UNIQUE INDEX "LedgerEntry_replacesId_key" ON "LedgerEntry"("replacesId");

-- CreateIndex
CREATE INDEX "LedgerEntry_lotId_idx" ON "LedgerEntry"("lotId");

-- CreateIndex
CREATE INDEX "LedgerEntry_otherLotId_idx" ON "LedgerEntry"("otherLotId");

-- CreateIndex
CREATE INDEX "SeedWeighing_lotId_idx" ON "SeedWeighing"("lotId");

-- CreateIndex
CREATE INDEX "MoistureReading_lotId_idx" ON "MoistureReading"("lotId");

-- CreateIndex
CREATE INDEX "Drying_lotId_idx" ON "Drying"("lotId");

-- CreateIndex
CREATE UNIQUE INDEX "GerminationTest_name_key" ON "GerminationTest"("name");

-- CreateIndex
CREATE INDEX "GerminationTest_lotId_idx" ON "GerminationTest"("lotId");

-- CreateIndex
CREATE INDEX "GerminationTest_nameKey_idx" ON "GerminationTest"("nameKey");

-- CreateIndex
CREATE UNIQUE INDEX "TestReplicate_testId_name_key" ON "TestReplicate"("testId", "name");

-- CreateIndex
CREATE UNIQUE INDEX "TestCount_replacesId_key" ON "TestCount"("replacesId");

-- CreateIndex
CREATE INDEX "TestCount_replicateId_idx" ON "TestCount"("replicateId");

-- CreateIndex
CREATE UNIQUE INDEX "GrowOut_name_key" ON "GrowOut"("name");

-- CreateIndex
CREATE INDEX "GrowOut_varietyId_idx" ON "GrowOut"("varietyId");

-- CreateIndex
CREATE INDEX "GrowOut_nameKey_idx" ON "GrowOut"("nameKey");

-- CreateIndex
CREATE INDEX "GrowOutParent_lotId_idx" ON "GrowOutParent"("lotId");

-- CreateIndex
CREATE UNIQUE INDEX "GrowOutParent_growOutId_lotId_key" ON "GrowOutParent"("growOutId", "lotId");

-- CreateIndex
CREATE INDEX "Plot_nameKey_idx" ON "Plot"("nameKey");

-- CreateIndex
CREATE INDEX "GrowOutPlot_plotId_idx" ON "GrowOutPlot"("plotId");

-- CreateIndex
CREATE UNIQUE INDEX "GrowOutPlot_growOutId_plotId_key" ON "GrowOutPlot"("growOutId", "plotId");

-- CreateIndex
CREATE UNIQUE INDEX "StageCount_replacesId_key" ON "StageCount"("replacesId");

-- CreateIndex
CREATE INDEX "StageCount_growOutId_idx" ON "StageCount"("growOutId");

-- CreateIndex
CREATE UNIQUE INDEX "RoguePass_replacesId_key" ON "RoguePass"("replacesId");

-- CreateIndex
CREATE INDEX "RoguePass_growOutId_idx" ON "RoguePass"("growOutId");

-- CreateIndex
CREATE UNIQUE INDEX "FloweringNote_replacesId_key" ON "FloweringNote"("replacesId");

-- CreateIndex
CREATE INDEX "FloweringNote_growOutId_idx" ON "FloweringNote"("growOutId");

-- CreateIndex
CREATE INDEX "NeighbourSource_growOutId_idx" ON "NeighbourSource"("growOutId");

-- CreateIndex
CREATE INDEX "IsolationMethod_growOutId_idx" ON "IsolationMethod"("growOutId");

-- CreateIndex
CREATE INDEX "Plant_growOutId_idx" ON "Plant"("growOutId");

-- CreateIndex
CREATE UNIQUE INDEX "Mark_replacesId_key" ON "Mark"("replacesId");

-- CreateIndex
CREATE INDEX "Mark_plantId_idx" ON "Mark"("plantId");

-- CreateIndex
CREATE UNIQUE INDEX "Trait_previousId_key" ON "Trait"("previousId");

-- CreateIndex
CREATE INDEX "Trait_nameKey_idx" ON "Trait"("nameKey");

-- CreateIndex
CREATE UNIQUE INDEX "Score_replacesId_key" ON "Score"("replacesId");

-- CreateIndex
CREATE INDEX "Score_plantId_idx" ON "Score"("plantId");

-- CreateIndex
CREATE INDEX "Score_traitId_idx" ON "Score"("traitId");

-- CreateIndex
CREATE INDEX "Harvest_growOutId_idx" ON "Harvest"("growOutId");

-- CreateIndex
CREATE INDEX "HarvestSeedParent_harvestId_idx" ON "HarvestSeedParent"("harvestId");

-- CreateIndex
CREATE INDEX "Transfer_lotId_idx" ON "Transfer"("lotId");

-- CreateIndex
CREATE INDEX "HolderConfirmation_varietyId_idx" ON "HolderConfirmation"("varietyId");

-- CreateIndex
CREATE INDEX "Story_varietyId_idx" ON "Story"("varietyId");

-- CreateIndex
CREATE INDEX "Story_lotId_idx" ON "Story"("lotId");

-- CreateIndex
CREATE INDEX "Observation_varietyId_idx" ON "Observation"("varietyId");

-- CreateIndex
CREATE INDEX "Observation_lotId_idx" ON "Observation"("lotId");

-- CreateIndex
CREATE INDEX "Warning_lotId_idx" ON "Warning"("lotId");

-- CreateIndex
CREATE UNIQUE INDEX "Setting_key_key" ON "Setting"("key");

-- CreateIndex
CREATE UNIQUE INDEX "ChangeSet_number_key" ON "ChangeSet"("number");

-- CreateIndex
CREATE UNIQUE INDEX "ChangeSet_undoesId_key" ON "ChangeSet"("undoesId");

-- CreateIndex
CREATE INDEX "Change_recordId_idx" ON "Change"("recordId");

-- CreateIndex
CREATE UNIQUE INDEX "Change_changeSetId_position_key" ON "Change"("changeSetId", "position");

-- AddForeignKey
ALTER TABLE "Person" ADD CONSTRAINT "Person_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Person" ADD CONSTRAINT "Person_successorStewardId_fkey" FOREIGN KEY ("successorStewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Crop" ADD CONSTRAINT "Crop_crossingGroupId_fkey" FOREIGN KEY ("crossingGroupId") REFERENCES "CrossingGroup"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CropOverride" ADD CONSTRAINT "CropOverride_cropId_fkey" FOREIGN KEY ("cropId") REFERENCES "Crop"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CrossingPair" ADD CONSTRAINT "CrossingPair_crossingGroupId_fkey" FOREIGN KEY ("crossingGroupId") REFERENCES "CrossingGroup"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Variety" ADD CONSTRAINT "Variety_cropId_fkey" FOREIGN KEY ("cropId") REFERENCES "Crop"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "VarietyName" ADD CONSTRAINT "VarietyName_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TypeTrait" ADD CONSTRAINT "TypeTrait_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TypeTrait" ADD CONSTRAINT "TypeTrait_traitId_fkey" FOREIGN KEY ("traitId") REFERENCES "Trait"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Strain" ADD CONSTRAINT "Strain_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Strain" ADD CONSTRAINT "Strain_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Lot" ADD CONSTRAINT "Lot_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Lot" ADD CONSTRAINT "Lot_strainId_fkey" FOREIGN KEY ("strainId") REFERENCES "Strain"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Lot" ADD CONSTRAINT "Lot_holderId_fkey" FOREIGN KEY ("holderId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Lot" ADD CONSTRAINT "Lot_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LotParent" ADD CONSTRAINT "LotParent_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LotParent" ADD CONSTRAINT "LotParent_parentLotId_fkey" FOREIGN KEY ("parentLotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LotMaking" ADD CONSTRAINT "LotMaking_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LotMaking" ADD CONSTRAINT "LotMaking_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Place" ADD CONSTRAINT "Place_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Container" ADD CONSTRAINT "Container_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Container" ADD CONSTRAINT "Container_placeId_fkey" FOREIGN KEY ("placeId") REFERENCES "Place"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LedgerEntry" ADD CONSTRAINT "LedgerEntry_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LedgerEntry" ADD CONSTRAINT "LedgerEntry_otherStewardId_fkey" FOREIGN KEY ("otherStewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LedgerEntry" ADD CONSTRAINT "LedgerEntry_otherLotId_fkey" FOREIGN KEY ("otherLotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LedgerEntry" ADD CONSTRAINT "LedgerEntry_transferId_fkey" FOREIGN KEY ("transferId") REFERENCES "Transfer"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LedgerEntry" ADD CONSTRAINT "LedgerEntry_replacesId_fkey" FOREIGN KEY ("replacesId") REFERENCES "LedgerEntry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SeedWeighing" ADD CONSTRAINT "SeedWeighing_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "MoistureReading" ADD CONSTRAINT "MoistureReading_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Drying" ADD CONSTRAINT "Drying_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "GerminationTest" ADD CONSTRAINT "GerminationTest_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TestReplicate" ADD CONSTRAINT "TestReplicate_testId_fkey" FOREIGN KEY ("testId") REFERENCES "GerminationTest"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TestCount" ADD CONSTRAINT "TestCount_replicateId_fkey" FOREIGN KEY ("replicateId") REFERENCES "TestReplicate"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "TestCount" ADD CONSTRAINT "TestCount_replacesId_fkey" FOREIGN KEY ("replacesId") REFERENCES "TestCount"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "GrowOut" ADD CONSTRAINT "GrowOut_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "GrowOut" ADD CONSTRAINT "GrowOut_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "GrowOutParent" ADD CONSTRAINT "GrowOutParent_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "GrowOutParent" ADD CONSTRAINT "GrowOutParent_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Plot" ADD CONSTRAINT "Plot_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "GrowOutPlot" ADD CONSTRAINT "GrowOutPlot_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "GrowOutPlot" ADD CONSTRAINT "GrowOutPlot_plotId_fkey" FOREIGN KEY ("plotId") REFERENCES "Plot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "StageCount" ADD CONSTRAINT "StageCount_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "StageCount" ADD CONSTRAINT "StageCount_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RoguePass" ADD CONSTRAINT "RoguePass_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RoguePass" ADD CONSTRAINT "RoguePass_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "FloweringNote" ADD CONSTRAINT "FloweringNote_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "FloweringNote" ADD CONSTRAINT "FloweringNote_neighbourId_fkey" FOREIGN KEY ("neighbourId") REFERENCES "NeighbourSource"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "FloweringNote" ADD CONSTRAINT "FloweringNote_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "NeighbourSource" ADD CONSTRAINT "NeighbourSource_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "NeighbourSource" ADD CONSTRAINT "NeighbourSource_plotId_fkey" FOREIGN KEY ("plotId") REFERENCES "Plot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "NeighbourSource" ADD CONSTRAINT "NeighbourSource_cropId_fkey" FOREIGN KEY ("cropId") REFERENCES "Crop"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "NeighbourSource" ADD CONSTRAINT "NeighbourSource_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "IsolationMethod" ADD CONSTRAINT "IsolationMethod_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Plant" ADD CONSTRAINT "Plant_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Mark" ADD CONSTRAINT "Mark_plantId_fkey" FOREIGN KEY ("plantId") REFERENCES "Plant"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Mark" ADD CONSTRAINT "Mark_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Trait" ADD CONSTRAINT "Trait_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Trait" ADD CONSTRAINT "Trait_cropId_fkey" FOREIGN KEY ("cropId") REFERENCES "Crop"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Trait" ADD CONSTRAINT "Trait_previousId_fkey" FOREIGN KEY ("previousId") REFERENCES "Trait"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Score" ADD CONSTRAINT "Score_plantId_fkey" FOREIGN KEY ("plantId") REFERENCES "Plant"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Score" ADD CONSTRAINT "Score_traitId_fkey" FOREIGN KEY ("traitId") REFERENCES "Trait"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Score" ADD CONSTRAINT "Score_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Score" ADD CONSTRAINT "Score_replacesId_fkey" FOREIGN KEY ("replacesId") REFERENCES "Score"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Harvest" ADD CONSTRAINT "Harvest_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Harvest" ADD CONSTRAINT "Harvest_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "HarvestSeedParent" ADD CONSTRAINT "HarvestSeedParent_harvestId_fkey" FOREIGN KEY ("harvestId") REFERENCES "Harvest"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "HarvestSeedParent" ADD CONSTRAINT "HarvestSeedParent_plantId_fkey" FOREIGN KEY ("plantId") REFERENCES "Plant"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Transfer" ADD CONSTRAINT "Transfer_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Transfer" ADD CONSTRAINT "Transfer_newLotId_fkey" FOREIGN KEY ("newLotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Transfer" ADD CONSTRAINT "Transfer_fromStewardId_fkey" FOREIGN KEY ("fromStewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Transfer" ADD CONSTRAINT "Transfer_toStewardId_fkey" FOREIGN KEY ("toStewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Promise" ADD CONSTRAINT "Promise_transferId_fkey" FOREIGN KEY ("transferId") REFERENCES "Transfer"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Promise" ADD CONSTRAINT "Promise_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Promise" ADD CONSTRAINT "Promise_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Promise" ADD CONSTRAINT "Promise_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "HolderConfirmation" ADD CONSTRAINT "HolderConfirmation_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "HolderConfirmation" ADD CONSTRAINT "HolderConfirmation_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "HolderConfirmation" ADD CONSTRAINT "HolderConfirmation_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Story" ADD CONSTRAINT "Story_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Story" ADD CONSTRAINT "Story_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Story" ADD CONSTRAINT "Story_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Story" ADD CONSTRAINT "Story_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Observation" ADD CONSTRAINT "Observation_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Observation" ADD CONSTRAINT "Observation_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Observation" ADD CONSTRAINT "Observation_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Observation" ADD CONSTRAINT "Observation_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Photo" ADD CONSTRAINT "Photo_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Photo" ADD CONSTRAINT "Photo_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Photo" ADD CONSTRAINT "Photo_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Photo" ADD CONSTRAINT "Photo_plantId_fkey" FOREIGN KEY ("plantId") REFERENCES "Plant"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Photo" ADD CONSTRAINT "Photo_testId_fkey" FOREIGN KEY ("testId") REFERENCES "GerminationTest"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Warning" ADD CONSTRAINT "Warning_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Warning" ADD CONSTRAINT "Warning_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Warning" ADD CONSTRAINT "Warning_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Question" ADD CONSTRAINT "Question_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Question" ADD CONSTRAINT "Question_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Question" ADD CONSTRAINT "Question_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Question" ADD CONSTRAINT "Question_plantId_fkey" FOREIGN KEY ("plantId") REFERENCES "Plant"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Question" ADD CONSTRAINT "Question_testId_fkey" FOREIGN KEY ("testId") REFERENCES "GerminationTest"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ChangeSet" ADD CONSTRAINT "ChangeSet_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ChangeSet" ADD CONSTRAINT "ChangeSet_undoesId_fkey" FOREIGN KEY ("undoesId") REFERENCES "ChangeSet"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Change" ADD CONSTRAINT "Change_changeSetId_fkey" FOREIGN KEY ("changeSetId") REFERENCES "ChangeSet"("id") ON DELETE RESTRICT ON UPDATE CASCADE;


