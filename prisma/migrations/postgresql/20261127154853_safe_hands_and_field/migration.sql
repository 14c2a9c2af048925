-- AlterTable
ALTER TABLE "Steward" ADD COLUMN     "placeGrain" TEXT NOT NULL DEFAULT 'village';

-- AlterTable
ALTER TABLE "Lot" ADD COLUMN     "sameAsId" TEXT;

-- AlterTable
ALTER TABLE "GrowOut" ADD COLUMN     "foreignPollenHow" TEXT;

-- AlterTable
ALTER TABLE "Plot" ADD COLUMN     "placeGrain" TEXT NOT NULL DEFAULT 'village';

-- AlterTable
ALTER TABLE "Plant" ADD COLUMN     "position" DOUBLE PRECISION,
ADD COLUMN     "row" TEXT,
ADD COLUMN     "sameAsId" TEXT;

-- AlterTable
ALTER TABLE "Harvest" ADD COLUMN     "deviceId" TEXT,
ADD COLUMN     "deviceSequence" INTEGER,
ADD COLUMN     "recordedAt" TEXT,
ADD COLUMN     "recordedOffset" INTEGER,
ADD COLUMN     "replacesId" TEXT,
ADD COLUMN     "stewardId" TEXT;

-- AlterTable
ALTER TABLE "Photo" ADD COLUMN     "deviceId" TEXT,
ADD COLUMN     "deviceSequence" INTEGER,
ADD COLUMN     "recordedAt" TEXT,
ADD COLUMN     "recordedOffset" INTEGER,
ADD COLUMN     "stewardId" TEXT,
ADD COLUMN     "traitId" TEXT;

-- AlterTable
ALTER TABLE "Question" ADD COLUMN     "fieldRecordId" TEXT,
ADD COLUMN     "otherLotId" TEXT,
ADD COLUMN     "otherPlantId" TEXT;

-- CreateTable
CREATE TABLE "LineageClaim" (
    "id" TEXT NOT NULL,
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

    CONSTRAINT "LineageClaim_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "claim_kind_known" CHECK ("kind" IN ('descends from','same as','unknown before')),
    CONSTRAINT "claim_parent_fits" CHECK (("kind" <> 'unknown before' OR "parentLotId" IS NULL) AND ("parentLotId" IS NULL OR "parentLotId" <> "lotId")),
    CONSTRAINT "claim_told" CHECK ("words" <> ''),
    CONSTRAINT "claim_standing_known" CHECK ("standing" IN ('open','believed','set aside')),
    CONSTRAINT "claim_generations" CHECK ("generationsFirst" IS NULL OR ("generationsFirst" >= 0 AND ("generationsLast" IS NULL OR "generationsLast" >= "generationsFirst")))
);

-- CreateTable
CREATE TABLE "FounderKinship" (
    "id" TEXT NOT NULL,
    "firstId" TEXT NOT NULL,
    "secondId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "coancestry" DOUBLE PRECISION,
    "how" TEXT NOT NULL,

    CONSTRAINT "FounderKinship_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "kinship_of_two" CHECK ("firstId" <> "secondId"),
    CONSTRAINT "kinship_kind_known" CHECK ("kind" IN ('unrelated','same source','coancestry')),
    CONSTRAINT "kinship_coancestry" CHECK (("kind" = 'coancestry') = ("coancestry" IS NOT NULL) AND ("coancestry" IS NULL OR "coancestry" BETWEEN 0 AND 1)),
    CONSTRAINT "kinship_says_how" CHECK ("how" <> '')
);

-- CreateTable
CREATE TABLE "FieldDevice" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "stewardId" TEXT,
    "userId" TEXT,
    "firstHeardAt" TEXT NOT NULL,
    "lastHeardAt" TEXT NOT NULL,

    CONSTRAINT "FieldDevice_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "field_device_named" CHECK ("name" <> '')
);

-- CreateTable
CREATE TABLE "FieldRecord" (
    "id" TEXT NOT NULL,
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

    CONSTRAINT "FieldRecord_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "field_record_sequence" CHECK ("sequence" >= 0),
    CONSTRAINT "field_record_state_known" CHECK ("state" IN ('taken','question','set aside'))
);

-- CreateTable
CREATE TABLE "User" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "emailVerified" BOOLEAN NOT NULL DEFAULT false,
    "image" TEXT,
    "username" TEXT,
    "displayUsername" TEXT,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "User_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Session" (
    "id" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "token" TEXT NOT NULL,
    "expiresAt" TIMESTAMP(3) NOT NULL,
    "ipAddress" TEXT,
    "userAgent" TEXT,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Session_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Account" (
    "id" TEXT NOT NULL,
    "accountId" TEXT NOT NULL,
    "providerId" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "accessToken" TEXT,
    "refreshToken" TEXT,
    "idToken" TEXT,
    "accessTokenExpiresAt" TIMESTAMP(3),
    "refreshTokenExpiresAt" TIMESTAMP(3),
    "scope" TEXT,
    "password" TEXT,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Account_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Verification" (
    "id" TEXT NOT NULL,
    "identifier" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "expiresAt" TIMESTAMP(3) NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Verification_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Passkey" (
    "id" TEXT NOT NULL,
    "name" TEXT,
    "publicKey" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "credentialID" TEXT NOT NULL,
    "counter" INTEGER NOT NULL,
    "deviceType" TEXT NOT NULL,
    "backedUp" BOOLEAN NOT NULL,
    "transports" TEXT,
    "createdAt" TIMESTAMP(3),
    "aaguid" TEXT,

    CONSTRAINT "Passkey_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "RateLimit" (
    "id" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "lastRequest" BIGINT NOT NULL,

    CONSTRAINT "RateLimit_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Member" (
    "id" TEXT NOT NULL,
    "userId" TEXT,
    "role" TEXT NOT NULL,
    "stewardId" TEXT,
    "addedAt" TEXT NOT NULL,
    "endedAt" TEXT,
    "note" TEXT,

    CONSTRAINT "Member_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "member_role_known" CHECK ("role" IN ('owner','steward','helper','librarian','reader'))
);

-- CreateTable
CREATE TABLE "MemberGrowOut" (
    "id" TEXT NOT NULL,
    "memberId" TEXT NOT NULL,
    "growOutId" TEXT NOT NULL,

    CONSTRAINT "MemberGrowOut_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Invitation" (
    "id" TEXT NOT NULL,
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

    CONSTRAINT "Invitation_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "invitation_role_known" CHECK ("role" IN ('owner','steward','helper','librarian','reader'))
);

-- CreateTable
CREATE TABLE "TableOverride" (
    "id" TEXT NOT NULL,
    "table" TEXT NOT NULL,
    "row" TEXT NOT NULL,
    "field" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "source" TEXT,

    CONSTRAINT "TableOverride_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "table_override_has_reason" CHECK ("reason" <> '')
);

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

-- CreateIndex
CREATE UNIQUE INDEX "Harvest_replacesId_key" ON "Harvest"("replacesId");

-- CreateIndex
CREATE INDEX "Photo_growOutId_idx" ON "Photo"("growOutId");

-- CreateIndex
CREATE INDEX "Photo_plantId_idx" ON "Photo"("plantId");

-- AddForeignKey
ALTER TABLE "Lot" ADD CONSTRAINT "Lot_sameAsId_fkey" FOREIGN KEY ("sameAsId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LineageClaim" ADD CONSTRAINT "LineageClaim_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LineageClaim" ADD CONSTRAINT "LineageClaim_parentLotId_fkey" FOREIGN KEY ("parentLotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LineageClaim" ADD CONSTRAINT "LineageClaim_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LineageClaim" ADD CONSTRAINT "LineageClaim_storyId_fkey" FOREIGN KEY ("storyId") REFERENCES "Story"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "FounderKinship" ADD CONSTRAINT "FounderKinship_firstId_fkey" FOREIGN KEY ("firstId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "FounderKinship" ADD CONSTRAINT "FounderKinship_secondId_fkey" FOREIGN KEY ("secondId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Plant" ADD CONSTRAINT "Plant_sameAsId_fkey" FOREIGN KEY ("sameAsId") REFERENCES "Plant"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Harvest" ADD CONSTRAINT "Harvest_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Photo" ADD CONSTRAINT "Photo_traitId_fkey" FOREIGN KEY ("traitId") REFERENCES "Trait"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Photo" ADD CONSTRAINT "Photo_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Question" ADD CONSTRAINT "Question_otherLotId_fkey" FOREIGN KEY ("otherLotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Question" ADD CONSTRAINT "Question_otherPlantId_fkey" FOREIGN KEY ("otherPlantId") REFERENCES "Plant"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Question" ADD CONSTRAINT "Question_fieldRecordId_fkey" FOREIGN KEY ("fieldRecordId") REFERENCES "FieldRecord"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "FieldDevice" ADD CONSTRAINT "FieldDevice_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "FieldDevice" ADD CONSTRAINT "FieldDevice_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "FieldRecord" ADD CONSTRAINT "FieldRecord_deviceId_fkey" FOREIGN KEY ("deviceId") REFERENCES "FieldDevice"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "FieldRecord" ADD CONSTRAINT "FieldRecord_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "FieldRecord" ADD CONSTRAINT "FieldRecord_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "FieldRecord" ADD CONSTRAINT "FieldRecord_changeSetId_fkey" FOREIGN KEY ("changeSetId") REFERENCES "ChangeSet"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Session" ADD CONSTRAINT "Session_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Account" ADD CONSTRAINT "Account_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Passkey" ADD CONSTRAINT "Passkey_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Member" ADD CONSTRAINT "Member_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Member" ADD CONSTRAINT "Member_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "MemberGrowOut" ADD CONSTRAINT "MemberGrowOut_memberId_fkey" FOREIGN KEY ("memberId") REFERENCES "Member"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "MemberGrowOut" ADD CONSTRAINT "MemberGrowOut_growOutId_fkey" FOREIGN KEY ("growOutId") REFERENCES "GrowOut"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Invitation" ADD CONSTRAINT "Invitation_stewardId_fkey" FOREIGN KEY ("stewardId") REFERENCES "Steward"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddConstraint
ALTER TABLE "Steward" ADD CONSTRAINT "steward_place_grain" CHECK ("placeGrain" IN ('exact','village','none'));

-- AddConstraint
ALTER TABLE "Plot" ADD CONSTRAINT "plot_place_grain" CHECK ("placeGrain" IN ('exact','village','none'));

-- AddConstraint
ALTER TABLE "Lot" ADD CONSTRAINT "lot_same_as_another" CHECK ("sameAsId" IS NULL OR "sameAsId" <> "id");

-- AddConstraint
ALTER TABLE "Plant" ADD CONSTRAINT "plant_same_as_another" CHECK ("sameAsId" IS NULL OR "sameAsId" <> "id");

-- AddConstraint
ALTER TABLE "Harvest" ADD CONSTRAINT "harvest_corrects_another" CHECK ("replacesId" IS NULL OR "replacesId" <> "id");
