/** How a unit turns into the base unit of its quantity: times, then divided by. */
export type Unit = {
  readonly name: string;
  readonly quantity: Quantity;
  readonly times: number;
  readonly per: number;
};

export type Quantity = "mass" | "length" | "time" | "speed" | "distance" | "share";

const unit = (quantity: Quantity, name: string, times = 1, per = 1): Unit => ({
  name,
  quantity,
  times,
  per,
});

// The international pound is 0.45359237 kg and the inch 2.54 cm exactly (NIST SP 811, appendix B).
const kg = unit("mass", "kg");
const lb = unit("mass", "lb", 0.45359237);
const cm = unit("length", "cm");
const metre = unit("length", "m", 100);
const mm = unit("length", "mm", 1, 10);
const inch = unit("length", "in", 2.54);
const second = unit("time", "s");
const ms = unit("time", "ms", 1, 1000);
const minute = unit("time", "min", 60);
const hour = unit("time", "h", 3600);
const metrePerSecond = unit("speed", "m/s");
const cmPerSecond = unit("speed", "cm/s", 1, 100);
const mmPerSecond = unit("speed", "mm/s", 1, 1000);
const km = unit("distance", "km");
const mile = unit("distance", "mi", 1.609344);
const percent = unit("share", "%", 1, 100);

const byWord = new Map<string, Unit>(
  Object.entries({
    kg,
    kgs: kg,
    kilo: kg,
    kilos: kg,
    lb,
    lbs: lb,
    pound: lb,
    pounds: lb,
    cm,
    m: metre,
    mm,
    in: inch,
    inch,
    inches: inch,
    '"': inch,
    "″": inch,
    zoll: inch,
    s: second,
    sec: second,
    secs: second,
    sek: second,
    ms,
    msec: ms,
    min: minute,
    mins: minute,
    minutes: minute,
    minuten: minute,
    h: hour,
    hr: hour,
    hrs: hour,
    hours: hour,
    std: hour,
    stunden: hour,
    "m/s": metrePerSecond,
    "m·s⁻¹": metrePerSecond,
    "ms⁻¹": metrePerSecond,
    "m.s-1": metrePerSecond,
    "m s-1": metrePerSecond,
    "cm/s": cmPerSecond,
    "mm/s": mmPerSecond,
    km,
    k: km,
    mi: mile,
    mile,
    miles: mile,
    "%": percent,
  }),
);

/** The unit a word names; null when it names none, or where there is no word. */
export function unitOf(word: string | undefined): Unit | null {
  return byWord.get(word?.trim().toLowerCase() ?? "") ?? null;
}

/** A value in its base unit: kg, cm, s, m/s, km or a fraction. */
export function inBase(value: number, of: Unit): number {
  return (value * of.times) / of.per;
}

/** Names of the units that a column in this one might be in instead, itself among them. */
export function unitsLike(name: string): string[] {
  const like = unitOf(name);
  return [...new Set([...byWord.values()].filter((one) => one.quantity === like?.quantity))].map(
    (one) => one.name,
  );
}

/** "140#" is 140 pounds; the sign before a number counts something. */
export const withPoundSign = (text: string): string => text.replace(/(?<=\d)\s*#(?!\d)/g, "lb");
