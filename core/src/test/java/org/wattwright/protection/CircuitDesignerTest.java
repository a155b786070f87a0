package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Outcome;

class CircuitDesignerTest {
  @Test
  void show() {
    Circuit traction = CircuitParts.traction().build();
    CircuitDesign one = CircuitParts.designer(List.of(traction)).run();
    System.out.println(one + " of " + one.combinations());
    for (DesignedCircuit c : one.circuits()) { System.out.println(c.cover()); c.checks().forEach(System.out::println); System.out.println("GOV " + c.governing()); System.out.println("RUN "+c.runnerUp()); System.out.println(c.worksheet().toText()); System.out.println(c.clearingTime()+" "+c.lowestFault()+" "+c.voltageDrop()+" "+c.operatingTemperature()); System.out.println(c.curves()); }
    CircuitDesign two = CircuitParts.designer(List.of(traction, CircuitParts.heater(traction).build())).run();
    System.out.println(two);
    two.circuits().forEach(c -> {System.out.println(c + " "+c.cover()); c.checks().forEach(System.out::println);});
  }
}
