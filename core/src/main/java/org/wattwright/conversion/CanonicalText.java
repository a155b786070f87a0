package org.wattwright.conversion;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.Measure;

/**
 * A text of a value that says the same whenever the values are the same: by its fields, so that a
 * new field of an input is in it without anybody remembering it.
 *
 * <p>Fields of a type stand in alphabetical order, since Java promises none; those of sets and maps
 * in the order of their texts. Numbers have twelve significant digits: the thirteenth of a table
 * that was derived with a logarithm may differ from one Java to the next.
 */
final class CanonicalText {
  private static final String OURS = "org.wattwright.";
  private static final MathContext DIGITS = new MathContext(12);
  private static final String FUNCTION = "function";

  private final StringBuilder out = new StringBuilder();
  private final Set<Object> open = Collections.newSetFromMap(new IdentityHashMap<>());

  private CanonicalText() {}

  static String of(@Nullable Object value) {
    CanonicalText text = new CanonicalText();
    text.write(value);
    return text.out.toString();
  }

  /** Of a list whose order means nothing. */
  static String ofUnordered(Collection<?> values) {
    return sorted(values).toString();
  }

  private static List<String> sorted(Collection<?> values) {
    return values.stream().map(CanonicalText::of).sorted().toList();
  }

  private void write(@Nullable Object value) {
    if (value == null) {
      out.append('-');
    } else if (!writeLeaf(value) && !writeMany(value)) {
      writeFields(value);
    }
  }

  private boolean writeLeaf(Object value) {
    if (value instanceof Measure<?> measure) {
      out.append(measure.kind()).append(' ').append(number(siValue(measure)));
    } else if (value instanceof Double || value instanceof Float) {
      out.append(number(((Number) value).doubleValue()));
    } else if (value instanceof String text) {
      out.append('"').append(text.replace("\\", "\\\\").replace("\"", "\\\"")).append('"');
    } else if (value instanceof Enum<?> constant) {
      out.append(constant.name());
    } else if (!value.getClass().isArray() && isForeign(value) && !isContainer(value)) {
      out.append(foreign(value));
    } else {
      return false;
    }
    return true;
  }

  /** A function, and what has no text of its own, would else stand with its address. */
  private static String foreign(Object value) {
    Class<?> type = value.getClass();
    if (type.isHidden()) {
      return FUNCTION;
    }
    try {
      boolean isMute = type.getMethod("toString").getDeclaringClass() == Object.class;
      return isMute ? type.getName() : value.toString();
    } catch (NoSuchMethodException e) {
      throw new IllegalStateException("every object has toString", e);
    }
  }

  private static <Q extends javax.measure.Quantity<Q>> double siValue(Measure<Q> measure) {
    return measure.kind().siValueOf(measure);
  }

  /** Zero has no sign. */
  private static String number(double value) {
    return Double.isFinite(value)
        ? new BigDecimal(value, DIGITS).stripTrailingZeros().toString()
        : Double.toString(value);
  }

  private static boolean isContainer(Object value) {
    return value instanceof Collection || value instanceof Map || value instanceof Optional;
  }

  /** Boxed numbers, prices in their own words and the like. */
  private static boolean isForeign(Object value) {
    return !value.getClass().getName().startsWith(OURS);
  }

  private boolean writeMany(Object value) {
    if (value instanceof Optional<?> optional) {
      write(optional.orElse(null));
    } else if (value instanceof Map<?, ?> map) {
      out.append(
          map.entrySet().stream()
              .map(e -> of(e.getKey()) + "=" + of(e.getValue()))
              .sorted()
              .toList());
    } else if (value instanceof Set<?> set) {
      out.append(sorted(set));
    } else if (value instanceof Collection<?> list) {
      writeAll(new ArrayList<>(list));
    } else if (value.getClass().isArray()) {
      List<@Nullable Object> elements = new ArrayList<>();
      for (int i = 0; i < Array.getLength(value); i++) {
        elements.add(Array.get(value, i));
      }
      writeAll(elements);
    } else {
      return false;
    }
    return true;
  }

  private void writeAll(List<? extends @Nullable Object> values) {
    out.append('[');
    for (Object value : values) {
      write(value);
      out.append(',');
    }
    out.append(']');
  }

  /** A function has nothing to tell its content by; a value within itself was written before. */
  private void writeFields(Object value) {
    if (value.getClass().isHidden()) {
      out.append(FUNCTION);
      return;
    }
    if (!open.add(value)) {
      out.append("above");
      return;
    }
    out.append(value.getClass().getSimpleName()).append('{');
    for (Field field : fields(value.getClass())) {
      out.append(field.getName()).append('=');
      write(get(field, value));
      out.append(';');
    }
    out.append('}');
    open.remove(value);
  }

  private static List<Field> fields(Class<?> type) {
    List<Field> fields = new ArrayList<>();
    for (Class<?> each = type;
        each != null && each.getName().startsWith(OURS);
        each = each.getSuperclass()) {
      for (Field field : each.getDeclaredFields()) {
        if ((field.getModifiers() & (Modifier.STATIC | Modifier.TRANSIENT)) == 0
            && !field.isSynthetic()) {
          fields.add(field);
        }
      }
    }
    fields.sort(Comparator.comparing(Field::getName));
    return fields;
  }

  private static @Nullable Object get(Field field, Object from) {
    try {
      field.setAccessible(true);
      return field.get(from);
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(field + " is one of this library's own", e);
    }
  }
}
