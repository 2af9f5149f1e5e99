import { scenarios } from "../faults/writing-actions";
import { holdsOnBothHosts, isAnswer } from "./both-hosts-contract";

// Every request that only changes what is remembered.
for (const scenario of scenarios.filter(isAnswer)) holdsOnBothHosts(scenario);
