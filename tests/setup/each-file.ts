import { afterAll } from "vitest";
import { clearAwayWhatIsLeft } from "./left-behind";

// Runs for each test file, also where files share their modules.
afterAll(clearAwayWhatIsLeft);
