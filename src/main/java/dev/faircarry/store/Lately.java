package dev.faircarry.store;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalLong;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;

/** What was read since anything was last changed, so that it need not be read again. */
final class Lately<V> {
  private final DataVersion version;
  private final int mostWeight;
  private final ToIntFunction<V> weight;
  private final Map<String, V> values = new LinkedHashMap<>(16, 0.75f, true);
  private long ofVersion = -1;
  private long weighs;

  /**
   * @param mostWeight of all values together; those longest unused go first
   */
  Lately(DataVersion version, int mostWeight, ToIntFunction<V> weight) {
    this.version = version;
    this.mostWeight = mostWeight;
    this.weight = weight;
  }

  /** The value read before, if nothing has changed since; otherwise what is read now. */
  V get(String key, Supplier<V> read) {
    OptionalLong now = version.now();
    if (now.isEmpty()) {
      return read.get();
    }
    synchronized (values) {
      if (ofVersion != now.getAsLong()) {
        values.clear();
        weighs = 0;
        ofVersion = now.getAsLong();
      }
      V before = values.get(key);
      if (before != null) {
        return before;
      }
    }
    // It may be newer than the version, never older; then it is read once more for nothing.
    V value = read.get();
    synchronized (values) {
      if (ofVersion == now.getAsLong()) {
        keep(key, value);
      }
    }
    return value;
  }

  private void keep(String key, V value) {
    V before = values.put(key, value);
    weighs += weight.applyAsInt(value) - (before == null ? 0 : weight.applyAsInt(before));
    var eldest = values.values().iterator();
    while (weighs > mostWeight) {
      weighs -= weight.applyAsInt(eldest.next());
      eldest.remove();
    }
  }
}
