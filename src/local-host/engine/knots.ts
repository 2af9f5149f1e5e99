/**
 * Groups of a directed graph whose members can all be reached from one another: the strongly connected
 * components of more than one member, and members that lead to themselves (Tarjan 1972, SIAM J Comput
 * 1:146–160, from memory).
 * Without recursion, for a circle of formulas may be longer than the call stack is deep.
 *
 * @param names of the members
 * @param next names each leads to, in the same order; names of nobody are passed over
 */
export function knots(names: readonly number[], next: readonly Iterable<number>[]): number[][] {
  const at = new Map(names.map((name, index) => [name, index]));
  const leadsTo = next.map((ones) =>
    [...ones].flatMap((name) => {
      const index = at.get(name);
      return index === undefined ? [] : [index];
    }),
  );
  const found: number[][] = [];
  const order = names.map(() => 0);
  const lowest = names.map(() => 0);
  const open: number[] = [];
  const isOpen = names.map(() => false);
  let seen = 0;
  for (let first = 0; first < names.length; first++) {
    if (order[first] !== 0) continue;
    const path: { readonly member: number; tried: number }[] = [];
    const enter = (member: number) => {
      seen++;
      order[member] = seen;
      lowest[member] = seen;
      open.push(member);
      isOpen[member] = true;
      path.push({ member, tried: 0 });
    };
    enter(first);
    for (let step = path.at(-1); step !== undefined; step = path.at(-1)) {
      const { member } = step;
      const to = leadsTo[member]![step.tried++];
      if (to === undefined) {
        path.pop();
        const above = path.at(-1)?.member;
        if (above !== undefined) lowest[above] = Math.min(lowest[above]!, lowest[member]!);
        if (lowest[member] !== order[member]) continue;
        const knot = open.splice(open.lastIndexOf(member));
        for (const one of knot) isOpen[one] = false;
        if (knot.length > 1 || leadsTo[member]!.includes(member))
          found.push(knot.map((one) => names[one]!));
      } else if (order[to] === 0) enter(to);
      else if (isOpen[to]) lowest[member] = Math.min(lowest[member]!, order[to]!);
    }
  }
  return found;
}
