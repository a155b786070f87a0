package org.wattwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.wattwright.testing.Generator;
import org.wattwright.testing.Serialisation;
import tech.units.indriya.quantity.Quantities;

/** Many threads at once get what one thread gets. */
class ConcurrencyTest {
  private static final int THREADS = 8;
  private static final int ROUNDS = 1500;

  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  void threadsAgreeOnEveryText() throws Exception {
    List<String> alone = transcript(42);
    ExecutorService pool = Executors.newFixedThreadPool(THREADS);
    try {
      CyclicBarrier start = new CyclicBarrier(THREADS);
      List<Future<List<String>>> results = new ArrayList<>();
      for (int i = 0; i < THREADS; i++) {
        Callable<List<String>> work =
            () -> {
              start.await();
              return transcript(42);
            };
        results.add(pool.submit(work));
      }
      for (Future<List<String>> result : results) {
        assertThat(result.get()).isEqualTo(alone);
      }
    } finally {
      pool.shutdownNow();
    }
  }

  private static List<String> transcript(long seed) {
    Generator random = Generator.ofSeed(seed);
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < ROUNDS; i++) {
      lines.add(line(random, random.oneOf(WorkshopUnits.defined()).unit()));
    }
    return lines;
  }

  /** Make, print, parse, convert to and from the reference implementation, compare, serialise. */
  private static <Q extends Quantity<Q>> String line(Generator random, NamedUnit<Q> unit) {
    Kind<Q> kind = unit.kind();
    Quantity<Q> made = unit.of(random.typed(0, 900, 3));
    Quantity<Q> parsed = kind.parse(made.toString());
    Quantity<Q> shown = parsed.to(random.<NamedUnit<Q>>oneOf(kind.units()).toUnit());
    Quantity<Q> foreign = Quantities.getQuantity(made.getValue(), unit.toUnit(), made.getScale());
    return String.join(
        "; ",
        shown.toString(),
        Measures.format(made, kind),
        String.valueOf(kind.compare(made, shown)),
        String.valueOf(kind.siValueOf(foreign)),
        String.valueOf(Serialisation.copy(made).equals(parsed)));
  }
}
