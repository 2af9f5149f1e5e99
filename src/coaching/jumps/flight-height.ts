import { accept, type Outcome, refuse } from "../../outcome";
import { gravity } from "./gravity";

/** Nobody stays up longer; a longer time, or one too short for a jump, is a misread unit. */
const longestFlightS = 1.2;
const shortestFlightS = 0.1;

/**
 * Rise of a jump above take-off from its flight time, cm. Level landing: g·t²/8 (Bosco, Luhtanen &
 * Komi 1983). Onto a landing h higher the body covers h in the time t, so it left at
 * v = h/t + g·t/2 and rose v²/2g; a lower landing has h below zero. It holds when the body is as
 * straight on landing as at take-off; bent knees read high, and with an arm swing flight time read
 * 2.5 cm over take-off velocity (Yamashita, Murata & Inaba 2020, Appl Sci 10(3):776).
 *
 * @param flightS flight time, s
 * @param landingCm height of the landing above the take-off, cm; 0 is level
 * @returns cm. Refuses `flight-impossible` (not in 0.1–1.2 s), `landing-impossible` (not −150–150 cm)
 * and `landing-not-reached` when such a flight would meet the landing still rising.
 */
export function flightHeight(flightS: number, landingCm = 0): Outcome<number> {
  if (!(flightS >= shortestFlightS && flightS <= longestFlightS))
    return refuse("flight-impossible", { flightS });
  if (!(Math.abs(landingCm) <= 150)) return refuse("landing-impossible", { landingCm });
  const landingM = landingCm / 100;
  const takeOff = landingM / flightS + (gravity * flightS) / 2;
  const landingSpeed = takeOff - gravity * flightS;
  if (takeOff <= 0 || landingSpeed > 0)
    return refuse("landing-not-reached", { flightS, landingCm });
  return accept((100 * takeOff ** 2) / (2 * gravity));
}
