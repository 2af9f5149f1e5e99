/** The same work, done once for each key. */
export function remembered<Key, Value>(work: (key: Key) => Value): (key: Key) => Value {
  const known = new Map<Key, Value>();
  return (key) => {
    const value = known.get(key) ?? work(key);
    known.set(key, value);
    return value;
  };
}
