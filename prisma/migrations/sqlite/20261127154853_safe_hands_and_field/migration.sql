-- AlterTable
ALTER TABLE "GrowOut" ADD COLUMN "foreignPollenHow" TEXT;

-- CreateTable
CREATE TABLE "LineageClaim" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "lotId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "parentLotId" TEXT,
    "words" TEXT NOT NULL,
    "teller" TEXT,
    "stewardId" TEXT,
    "toldOn" TEXT,
    "howSure" TEXT,
    "generationsFirst" INTEGER,
    "generationsLast" INTEGER,
    "storyId" TEXT,
    "standing" TEXT NOT NULL DEFAULT 'open',
    "standingReason" TEXT,
    "replacesId" TEXT,
    CONSTRAINT "LineageClaim_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "LineageClaim_parentLotId_fkey" FOREIGN KEY ("parentLotId") REFERENCES "Lot" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "LineageClaim_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "LineageClaim_storyId_fkey" FOREIGN KEY ("storyId") REFERENCES "Story" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "claim_kind_known" CHECK ("kind" IN ('descends from','same as','unknown before')),
    CONSTRAINT "claim_parent_fits" CHECK (("kind" <> 'unknown before' OR "parentLotId" IS NULL) AND ("parentLotId" IS NULL OR "parentLotId" <> "lotId")),
    CONSTRAINT "claim_told" CHECK ("words" <> ''),
    CONSTRAINT "claim_standing_known" CHECK ("standing" IN ('open','believed','set aside')),
    CONSTRAINT "claim_generations" CHECK ("generationsFirst" IS NULL OR ("generationsFirst" >= 0 AND ("generationsLast" IS NULL OR "generationsLast" >= "generationsFirst")))
);

-- CreateTable
CREATE TABLE "FounderKinship" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "firstId" TEXT NOT NULL,
    "secondId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "coancestry" REAL,
    "how" TEXT NOT NULL,
    CONSTRAINT "FounderKinship_firstId_fkey" FOREIGN KEY ("firstId") REFERENCES "Lot" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "FounderKinship_secondId_fkey" FOREIGN KEY ("secondId") REFERENCES "Lot" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "kinship_of_two" CHECK ("firstId" <> "secondId"),
    CONSTRAINT "kinship_kind_known" CHECK ("kind" IN ('unrelated','same source','coancestry')),
    CONSTRAINT "kinship_coancestry" CHECK (("kind" = 'coancestry') = ("coancestry" IS NOT NULL) AND ("coancestry" IS NULL OR "coancestry" BETWEEN 0 AND 1)),
    CONSTRAINT "kinship_says_how" CHECK ("how" <> '')
);

-- CreateTable
CREATE TABLE "FieldDevice" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "stewardId" TEXT,
    "userId" TEXT,
    "firstHeardAt" TEXT NOT NULL,
    "lastHeardAt" TEXT NOT NULL,
    CONSTRAINT "FieldDevice_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "FieldDevice_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User" ("id") ON DELETE SET NULL ON UPDATE CASCADE,
    CONSTRAINT "field_device_named" CHECK ("name" <> '')
);

-- CreateTable
CREATE TABLE "FieldRecord" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "deviceId" TEXT NOT NULL,
    "sequence" INTEGER NOT NULL,
    "growOutId" TEXT,
    "kind" TEXT NOT NULL,
    "body" TEXT NOT NULL,
    "recordedAt" TEXT NOT NULL,
    "recordedOffset" INTEGER NOT NULL,
    "arrivedAt" TEXT NOT NULL,
    "stewardId" TEXT,
    "state" TEXT NOT NULL,
    "refusals" TEXT,
    "changeSetId" TEXT,
    CONSTRAINT "FieldRecord_deviceId_fkey" FOREIGN KEY ("deviceId") REFERENCES "FieldDevice" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "FieldRecord_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "FieldRecord_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "FieldRecord_changeSetId_fkey" FOREIGN KEY ("changeSetId") REFERENCES "ChangeSet" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "field_record_sequence" CHECK ("sequence" >= 0),
    CONSTRAINT "field_record_state_known" CHECK ("state" IN ('taken','question','set aside'))
);

-- CreateTable
CREATE TABLE "User" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "emailVerified" BOOLEAN NOT NULL DEFAULT false,
    "image" TEXT,
    "username" TEXT,
    "displayUsername" TEXT,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "Session" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "userId" TEXT NOT NULL,
    "token" TEXT NOT NULL,
    "expiresAt" DATETIME NOT NULL,
    "ipAddress" TEXT,
    "userAgent" TEXT,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "Session_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Account" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "accountId" TEXT NOT NULL,
    "providerId" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "accessToken" TEXT,
    "refreshToken" TEXT,
    "idToken" TEXT,
    "accessTokenExpiresAt" DATETIME,
    "refreshTokenExpiresAt" DATETIME,
    "scope" TEXT,
    "password" TEXT,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "Account_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Verification" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "identifier" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "expiresAt" DATETIME NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "Passkey" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT,
    "publicKey" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "credentialID" TEXT NOT NULL,
    "counter" INTEGER NOT NULL,
    "deviceType" TEXT NOT NULL,
    "backedUp" BOOLEAN NOT NULL,
    "transports" TEXT,
    "createdAt" DATETIME,
    "aaguid" TEXT,
    CONSTRAINT "Passkey_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "RateLimit" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "key" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "lastRequest" BIGINT NOT NULL
);

-- CreateTable
CREATE TABLE "Member" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "userId" TEXT,
    "role" TEXT NOT NULL,
    "stewardId" TEXT,
    "addedAt" TEXT NOT NULL,
    "endedAt" TEXT,
    "note" TEXT,
    CONSTRAINT "Member_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User" ("id") ON DELETE SET NULL ON UPDATE CASCADE,
    CONSTRAINT "Member_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "member_role_known" CHECK ("role" IN ('owner','steward','helper','librarian','reader'))
);

-- CreateTable
CREATE TABLE "MemberGrowOut" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "memberId" TEXT NOT NULL,
    "growOutId" TEXT NOT NULL,
    CONSTRAINT "MemberGrowOut_memberId_fkey" FOREIGN KEY ("memberId") REFERENCES "Member" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "MemberGrowOut_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Invitation" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "codeHash" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "stewardId" TEXT,
    "growOuts" TEXT,
    "forUserId" TEXT,
    "words" TEXT,
    "createdAt" TEXT NOT NULL,
    "expiresAt" TEXT NOT NULL,
    "usedAt" TEXT,
    "withdrawnAt" TEXT,
    CONSTRAINT "Invitation_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "invitation_role_known" CHECK ("role" IN ('owner','steward','helper','librarian','reader'))
);

-- CreateTable
CREATE TABLE "TableOverride" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "table" TEXT NOT NULL,
    "row" TEXT NOT NULL,
    "field" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "source" TEXT,
    CONSTRAINT "table_override_has_reason" CHECK ("reason" <> '')
);

-- RedefineTables
PRAGMA defer_foreign_keys=ON;
PRAGMA foreign_keys=OFF;
CREATE TABLE "new_Steward" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "kind" TEXT,
    "place" TEXT,
    "placeGrain" TEXT NOT NULL DEFAULT 'village',
    "active" TEXT NOT NULL DEFAULT 'unknown',
    "note" TEXT,
    "extra" TEXT,
    CONSTRAINT "steward_kind_known" CHECK ("kind" IS NULL OR "kind" IN ('grower','library','genebank')),
    CONSTRAINT "steward_active_known" CHECK ("active" IN ('yes','no','unknown')),
    CONSTRAINT "steward_place_grain" CHECK ("placeGrain" IN ('exact','village','none'))
);
INSERT INTO "new_Steward" ("active", "extra", "id", "kind", "note", "place") SELECT "active", "extra", "id", "kind", "note", "place" FROM "Steward";
DROP TABLE "Steward";
ALTER TABLE "new_Steward" RENAME TO "Steward";
CREATE TABLE "new_Lot" (
    "id" TEXT NOT NULL PRIMARY KEY,
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
    "thousandSeedGrams" REAL,
    "inbreeding" REAL,
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
    "sameAsId" TEXT,
    "donorNumber" TEXT,
    "howSure" TEXT,
    "notes" TEXT,
    "extra" TEXT,
    CONSTRAINT "Lot_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Lot_strainId_fkey" FOREIGN KEY ("strainId") REFERENCES "Strain" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Lot_holderId_fkey" FOREIGN KEY ("holderId") REFERENCES "Steward" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Lot_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Lot_sameAsId_fkey" FOREIGN KEY ("sameAsId") REFERENCES "Lot" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "lot_numbered" CHECK ("number" <> '' AND "numberKey" <> ''),
    CONSTRAINT "lot_kind_known" CHECK ("kind" IN ('founder','harvest','blend','split')),
    CONSTRAINT "lot_harvest_has_grow_out" CHECK (("kind" = 'harvest') = ("growOutId" IS NOT NULL)),
    CONSTRAINT "lot_seed_weight_above_zero" CHECK ("thousandSeedGrams" IS NULL OR "thousandSeedGrams" > 0),
    CONSTRAINT "lot_inbreeding_of_founder" CHECK ("inbreeding" IS NULL OR ("kind" = 'founder' AND "inbreeding" BETWEEN 0 AND 1)),
    CONSTRAINT "lot_lines_known" CHECK ("founderLines" IS NULL OR ("kind" = 'founder' AND "founderLines" IN ('one','many'))),
    CONSTRAINT "lot_status_known" CHECK ("status" IS NULL OR "status" IN ('quarantine','usable','share freely','circle only','closed','hold','not for seed','finished','dead','discarded')),
    CONSTRAINT "lot_treatment_known" CHECK ("treatment" IS NULL OR "treatment" IN ('none','hot water','chemical','unknown')),
    CONSTRAINT "lot_isolation_known" CHECK ("isolationGrade" IS NULL OR "isolationGrade" IN ('controlled','isolated','partly','open','unknown')),
    CONSTRAINT "lot_year_span" CHECK ("yearFirst" IS NULL OR "yearLast" IS NULL OR "yearFirst" <= "yearLast"),
    CONSTRAINT "lot_same_as_another" CHECK ("sameAsId" IS NULL OR "sameAsId" <> "id")
);
INSERT INTO "new_Lot" ("code", "donorNumber", "extra", "founderLines", "growOutId", "holderId", "howSure", "id", "identityGrade", "inbreeding", "isolationGrade", "isolationReasons", "kind", "notes", "number", "numberKey", "origin", "originalSample", "status", "statusReason", "strainId", "thousandSeedGrams", "treatment", "treatmentSubstance", "varietyId", "year", "yearFirst", "yearLast", "yearWords") SELECT "code", "donorNumber", "extra", "founderLines", "growOutId", "holderId", "howSure", "id", "identityGrade", "inbreeding", "isolationGrade", "isolationReasons", "kind", "notes", "number", "numberKey", "origin", "originalSample", "status", "statusReason", "strainId", "thousandSeedGrams", "treatment", "treatmentSubstance", "varietyId", "year", "yearFirst", "yearLast", "yearWords" FROM "Lot";
DROP TABLE "Lot";
ALTER TABLE "new_Lot" RENAME TO "Lot";
CREATE UNIQUE INDEX "Lot_number_key" ON "Lot"("number");
CREATE UNIQUE INDEX "Lot_code_key" ON "Lot"("code");
CREATE INDEX "Lot_varietyId_idx" ON "Lot"("varietyId");
CREATE INDEX "Lot_holderId_idx" ON "Lot"("holderId");
CREATE INDEX "Lot_growOutId_idx" ON "Lot"("growOutId");
CREATE INDEX "Lot_numberKey_idx" ON "Lot"("numberKey");
CREATE TABLE "new_Plot" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "nameKey" TEXT NOT NULL,
    "stewardId" TEXT,
    "place" TEXT,
    "latitude" REAL,
    "longitude" REAL,
    "placeGrain" TEXT NOT NULL DEFAULT 'village',
    "areaM2" REAL,
    "altitudeM" REAL,
    "soil" TEXT,
    "windExposure" TEXT,
    "note" TEXT,
    CONSTRAINT "Plot_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "plot_place_grain" CHECK ("placeGrain" IN ('exact','village','none'))
);
INSERT INTO "new_Plot" ("altitudeM", "areaM2", "id", "latitude", "longitude", "name", "nameKey", "note", "place", "soil", "stewardId", "windExposure") SELECT "altitudeM", "areaM2", "id", "latitude", "longitude", "name", "nameKey", "note", "place", "soil", "stewardId", "windExposure" FROM "Plot";
DROP TABLE "Plot";
ALTER TABLE "new_Plot" RENAME TO "Plot";
CREATE INDEX "Plot_nameKey_idx" ON "Plot"("nameKey");
CREATE TABLE "new_Plant" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "growOutId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "nameKey" TEXT NOT NULL,
    "cell" TEXT,
    "row" TEXT,
    "position" REAL,
    "sameAsId" TEXT,
    "kept" BOOLEAN,
    "seedGrams" REAL,
    "extra" TEXT,
    CONSTRAINT "Plant_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Plant_sameAsId_fkey" FOREIGN KEY ("sameAsId") REFERENCES "Plant" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "plant_seed" CHECK ("seedGrams" IS NULL OR "seedGrams" >= 0),
    CONSTRAINT "plant_same_as_another" CHECK ("sameAsId" IS NULL OR "sameAsId" <> "id")
);
INSERT INTO "new_Plant" ("cell", "extra", "growOutId", "id", "kept", "name", "nameKey", "seedGrams") SELECT "cell", "extra", "growOutId", "id", "kept", "name", "nameKey", "seedGrams" FROM "Plant";
DROP TABLE "Plant";
ALTER TABLE "new_Plant" RENAME TO "Plant";
CREATE INDEX "Plant_growOutId_idx" ON "Plant"("growOutId");
CREATE TABLE "new_Harvest" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "growOutId" TEXT NOT NULL,
    "lotId" TEXT,
    "on" TEXT,
    "onFirst" TEXT,
    "onLast" TEXT,
    "bulked" TEXT,
    "seedParents" INTEGER,
    "detasselled" INTEGER,
    "grams" REAL,
    "seeds" REAL,
    "mouldyShare" REAL,
    "note" TEXT,
    "stewardId" TEXT,
    "replacesId" TEXT,
    "recordedAt" TEXT,
    "recordedOffset" INTEGER,
    "deviceId" TEXT,
    "deviceSequence" INTEGER,
    CONSTRAINT "Harvest_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Harvest_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Harvest_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "harvest_bulked_known" CHECK ("bulked" IS NULL OR "bulked" IN ('equal seeds','equal weight','all together','kept apart')),
    CONSTRAINT "harvest_amounts" CHECK (("seedParents" IS NULL OR "seedParents" >= 1) AND ("grams" IS NULL OR "grams" >= 0) AND ("mouldyShare" IS NULL OR "mouldyShare" BETWEEN 0 AND 1)),
    CONSTRAINT "harvest_counted" CHECK (("detasselled" IS NULL OR "detasselled" >= 0) AND ("seeds" IS NULL OR "seeds" >= 0)),
    CONSTRAINT "harvest_corrects_another" CHECK ("replacesId" IS NULL OR "replacesId" <> "id")
);
INSERT INTO "new_Harvest" ("bulked", "detasselled", "grams", "growOutId", "id", "lotId", "mouldyShare", "note", "on", "onFirst", "onLast", "seedParents", "seeds") SELECT "bulked", "detasselled", "grams", "growOutId", "id", "lotId", "mouldyShare", "note", "on", "onFirst", "onLast", "seedParents", "seeds" FROM "Harvest";
DROP TABLE "Harvest";
ALTER TABLE "new_Harvest" RENAME TO "Harvest";
CREATE UNIQUE INDEX "Harvest_replacesId_key" ON "Harvest"("replacesId");
CREATE INDEX "Harvest_growOutId_idx" ON "Harvest"("growOutId");
CREATE TABLE "new_Photo" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "hash" TEXT NOT NULL,
    "varietyId" TEXT,
    "lotId" TEXT,
    "growOutId" TEXT,
    "plantId" TEXT,
    "testId" TEXT,
    "traitId" TEXT,
    "stewardId" TEXT,
    "recordedAt" TEXT,
    "recordedOffset" INTEGER,
    "deviceId" TEXT,
    "deviceSequence" INTEGER,
    "takenOn" TEXT,
    "caption" TEXT,
    "scale" TEXT,
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "bytes" INTEGER NOT NULL,
    CONSTRAINT "Photo_traitId_fkey" FOREIGN KEY ("traitId") REFERENCES "Trait" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Photo_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Photo_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Photo_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Photo_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Photo_plantId_fkey" FOREIGN KEY ("plantId") REFERENCES "Plant" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Photo_testId_fkey" FOREIGN KEY ("testId") REFERENCES "GerminationTest" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "photo_size" CHECK ("bytes" > 0 AND "bytes" <= 2097152 AND "width" BETWEEN 1 AND 1600 AND "height" BETWEEN 1 AND 1600)
);
INSERT INTO "new_Photo" ("bytes", "caption", "growOutId", "hash", "height", "id", "lotId", "plantId", "scale", "takenOn", "testId", "varietyId", "width") SELECT "bytes", "caption", "growOutId", "hash", "height", "id", "lotId", "plantId", "scale", "takenOn", "testId", "varietyId", "width" FROM "Photo";
DROP TABLE "Photo";
ALTER TABLE "new_Photo" RENAME TO "Photo";
CREATE INDEX "Photo_growOutId_idx" ON "Photo"("growOutId");
CREATE INDEX "Photo_plantId_idx" ON "Photo"("plantId");
CREATE TABLE "new_Question" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "kind" TEXT NOT NULL,
    "sentence" TEXT NOT NULL,
    "varietyId" TEXT,
    "lotId" TEXT,
    "growOutId" TEXT,
    "plantId" TEXT,
    "testId" TEXT,
    "otherLotId" TEXT,
    "otherPlantId" TEXT,
    "fieldRecordId" TEXT,
    "raisedAt" TEXT NOT NULL,
    "answer" TEXT,
    "answeredAt" TEXT,
    CONSTRAINT "Question_otherLotId_fkey" FOREIGN KEY ("otherLotId") REFERENCES "Lot" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Question_otherPlantId_fkey" FOREIGN KEY ("otherPlantId") REFERENCES "Plant" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Question_fieldRecordId_fkey" FOREIGN KEY ("fieldRecordId") REFERENCES "FieldRecord" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Question_varietyId_fkey" FOREIGN KEY ("varietyId") REFERENCES "Variety" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Question_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Question_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Question_plantId_fkey" FOREIGN KEY ("plantId") REFERENCES "Plant" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Question_testId_fkey" FOREIGN KEY ("testId") REFERENCES "GerminationTest" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);
INSERT INTO "new_Question" ("answer", "answeredAt", "growOutId", "id", "kind", "lotId", "plantId", "raisedAt", "sentence", "testId", "varietyId") SELECT "answer", "answeredAt", "growOutId", "id", "kind", "lotId", "plantId", "raisedAt", "sentence", "testId", "varietyId" FROM "Question";
DROP TABLE "Question";
ALTER TABLE "new_Question" RENAME TO "Question";
PRAGMA foreign_keys=ON;
PRAGMA defer_foreign_keys=OFF;

-- CreateIndex
CREATE UNIQUE INDEX "LineageClaim_replacesId_key" ON "LineageClaim"("replacesId");

-- CreateIndex
CREATE INDEX "LineageClaim_lotId_idx" ON "LineageClaim"("lotId");

-- CreateIndex
CREATE INDEX "FounderKinship_secondId_idx" ON "FounderKinship"("secondId");

-- CreateIndex
CREATE UNIQUE INDEX "FounderKinship_firstId_secondId_key" ON "FounderKinship"("firstId", "secondId");

-- CreateIndex
CREATE INDEX "FieldRecord_deviceId_sequence_idx" ON "FieldRecord"("deviceId", "sequence");

-- CreateIndex
CREATE INDEX "FieldRecord_growOutId_idx" ON "FieldRecord"("growOutId");

-- CreateIndex
CREATE UNIQUE INDEX "User_email_key" ON "User"("email");

-- CreateIndex
CREATE UNIQUE INDEX "User_username_key" ON "User"("username");

-- CreateIndex
CREATE UNIQUE INDEX "Session_token_key" ON "Session"("token");

-- CreateIndex
CREATE INDEX "Session_userId_idx" ON "Session"("userId");

-- CreateIndex
CREATE INDEX "Account_userId_idx" ON "Account"("userId");

-- CreateIndex
CREATE INDEX "Verification_identifier_idx" ON "Verification"("identifier");

-- CreateIndex
CREATE UNIQUE INDEX "Passkey_credentialID_key" ON "Passkey"("credentialID");

-- CreateIndex
CREATE INDEX "Passkey_userId_idx" ON "Passkey"("userId");

-- CreateIndex
CREATE UNIQUE INDEX "RateLimit_key_key" ON "RateLimit"("key");

-- CreateIndex
CREATE UNIQUE INDEX "Member_userId_key" ON "Member"("userId");

-- CreateIndex
CREATE INDEX "MemberGrowOut_growOutId_idx" ON "MemberGrowOut"("growOutId");

-- CreateIndex
CREATE UNIQUE INDEX "MemberGrowOut_memberId_growOutId_key" ON "MemberGrowOut"("memberId", "growOutId");

-- CreateIndex
CREATE UNIQUE INDEX "Invitation_codeHash_key" ON "Invitation"("codeHash");

-- CreateIndex
CREATE UNIQUE INDEX "TableOverride_table_row_field_key" ON "TableOverride"("table", "row", "field");


