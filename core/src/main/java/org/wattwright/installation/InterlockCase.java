package org.wattwright.installation;

import java.io.Serializable;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.InvalidInputException;

/**
 * States of some signals: a line of a {@link TruthTable}, a forbidden pattern, or one state of the
 * vehicle. A signal that is left out may have any state. Immutable and thread-safe.
 */
public final class InterlockCase implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final InterlockCase ANY = new InterlockCase(new EnumMap<>(InterlockSignal.class));

  private final EnumMap<InterlockSignal, SignalState> states;

  private InterlockCase(EnumMap<InterlockSignal, SignalState> states) {
    this.states = states;
  }

  /**
   * Every state of every signal.
   *
   * @return no condition
   */
  public static InterlockCase any() {
    return ANY;
  }

  /**
   * One condition.
   *
   * @param signal which
   * @param state one of its states
   * @return the case
   * @throws InvalidInputException if the signal has no such state
   */
  public static InterlockCase when(InterlockSignal signal, SignalState state) {
    return ANY.and(signal, state);
  }

  /**
   * One more condition.
   *
   * @param signal which, not yet told
   * @param state one of its states
   * @return a new case
   * @throws InvalidInputException if the signal has no such state, or is told already
   */
  public InterlockCase and(InterlockSignal signal, SignalState state) {
    if (!signal.states().contains(Objects.requireNonNull(state, "state"))) {
      throw InvalidInputException.of(
          "InterlockCase." + signal, "one of " + signal.states(), state.toString());
    }
    if (states.containsKey(signal)) {
      throw InvalidInputException.of("InterlockCase." + signal, "told once", state.toString());
    }
    EnumMap<InterlockSignal, SignalState> all = new EnumMap<>(states);
    all.put(signal, state);
    return new InterlockCase(all);
  }

  /**
   * The conditions.
   *
   * @return by signal; an immutable copy
   */
  public Map<InterlockSignal, SignalState> conditions() {
    return Map.copyOf(states);
  }

  /** Whether a state of the vehicle meets every condition. */
  boolean covers(InterlockCase vehicle) {
    return states.entrySet().stream().allMatch(c -> vehicle.states.get(c.getKey()) == c.getValue());
  }

  @Nullable SignalState state(InterlockSignal signal) {
    return states.get(signal);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof InterlockCase that && states.equals(that.states);
  }

  @Override
  public int hashCode() {
    return toString().hashCode();
  }

  /**
   * The conditions.
   *
   * @return for example {@code key on, brake pressed}; {@code any} without one
   */
  @Override
  public String toString() {
    return states.isEmpty()
        ? "any"
        : states.entrySet().stream()
            .map(c -> String.format(Locale.ROOT, "%s %s", c.getKey(), c.getValue()))
            .collect(Collectors.joining(", "));
  }
}
