/** The same work, done once for each key. */
export function remembered<Key, Value>(work: (key: Key) => Value): (key: Key) => Value {
  const known = new Map<Key, Value>();
  return (key) => {
    const found = known.get(key);
    // A value may be undefined itself; asking twice is left to those that are.
    if (found !== undefined || known.has(key)) return found as Value;
    const value = work(key);
    known.set(key, value);
    return value;
  };
}
