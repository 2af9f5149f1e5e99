// Laws are tried on the same random cases in every run, so that a failure is the change's and not the day's:
// HOLDLINE_SEED=7 npm test tries others, and npm run fuzz tries new ones each time.
import fc from "fast-check";

fc.configureGlobal({ seed: Number(process.env.HOLDLINE_SEED ?? 1) });
