// Before anything else of a page runs: the policy of pages lets no script make another out of text, so the shapes (zod) are told not to try.
Object.assign(globalThis, { __zod_globalConfig: { jitless: true } });

export {};
