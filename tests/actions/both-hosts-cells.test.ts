import { scenarios } from "../faults/writing-actions";
import { holdsOnBothHosts, isAnswer } from "./both-hosts-contract";

// Every request that writes into cells; those about what is remembered have a file of their own.
for (const scenario of scenarios.filter((one) => !isAnswer(one))) holdsOnBothHosts(scenario);
