/**
 * Leaves a seeded random sample of the faults in a plan; the others are set aside and count for nothing.
 * The plan itself is changed: a checker of the tool's own would take a process, and hand its place to a
 * second one that runs tests.
 */
export function drawSample(plans, sample, seed) {
  const places = new Map(plans.map((plan) => [plan, placeOf(plan.mutant, seed)]));
  // In the order of the draw, so that the faults tried are a random sample at any moment.
  plans.sort((a, b) => places.get(a) - places.get(b) || Number(a.mutant.id) - Number(b.mutant.id));
  let drawn = 0;
  for (const plan of plans) {
    if (plan.plan !== "Run" || drawn++ < sample) continue;
    setAside(plan, "not drawn");
  }
}

/** Leaves the faults in a plan that are reached only while files are loaded, never within a test. */
export function leaveConstants(plans) {
  for (const plan of plans) {
    const { static: atLoading, coveredBy = [] } = plan.mutant;
    if (plan.plan === "Run" && !(atLoading && coveredBy.length === 0)) setAside(plan, "in a test");
  }
}

function setAside(plan, statusReason) {
  plan.plan = "EarlyResult";
  plan.mutant = { ...plan.mutant, status: "Ignored", statusReason };
}

/** A fault's place in the draw, from what it is and where (FNV-1a). */
function placeOf({ fileName, location, replacement }, seed) {
  const { start, end } = location;
  const file = fileName.slice(fileName.lastIndexOf("/src/"));
  const text = `${seed} ${file} ${start.line}:${start.column}-${end.line}:${end.column} ${replacement}`;
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  // Near texts have near hashes: mixed once more.
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}
