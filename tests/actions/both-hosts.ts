import { clubInMemory } from "./club-in-memory";
import { clubOnServices } from "./club-on-services";

export const bothHosts = [
  ["a workbook in memory", clubInMemory],
  ["the platform's services", clubOnServices],
] as const;
