package org.wattwright.architecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaParameterizedType;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.domain.JavaWildcardType;
import java.util.List;
import javax.measure.Quantity;

/** Finds what the public API should not mention. */
final class ApiRules {
  private ApiRules() {}

  /** Members that mention a {@code Quantity} without naming its kind. */
  static List<String> wildcardQuantities(JavaClasses core) {
    return CoreCode.api(core).stream()
        .filter(member -> member.signature().stream().anyMatch(ApiRules::hidesKind))
        .map(CoreCode.ApiMember::key)
        .distinct()
        .sorted()
        .toList();
  }

  /** Members that take or return a double in any wrapping. */
  static List<String> doubles(JavaClasses core) {
    return CoreCode.api(core).stream()
        .filter(member -> member.types().stream().anyMatch(ApiRules::carriesDouble))
        .map(CoreCode.ApiMember::key)
        .distinct()
        .sorted()
        .toList();
  }

  private static boolean hidesKind(JavaType type) {
    if (type instanceof JavaParameterizedType parameterized) {
      List<JavaType> arguments = parameterized.getActualTypeArguments();
      boolean wildcard = arguments.stream().anyMatch(JavaWildcardType.class::isInstance);
      return (wildcard && isQuantity(type)) || arguments.stream().anyMatch(ApiRules::hidesKind);
    }
    if (type instanceof JavaWildcardType wildcard) {
      return wildcard.getUpperBounds().stream().anyMatch(ApiRules::hidesKind);
    }
    return type instanceof JavaClass raw && isQuantity(raw.getBaseComponentType());
  }

  private static boolean isQuantity(JavaType type) {
    return type.toErasure().isEquivalentTo(Quantity.class);
  }

  private static boolean carriesDouble(JavaClass type) {
    return type.getName().matches("double|float|java\\.lang\\.(Double|Float)")
        || type.getName().matches("java\\.util\\.(function\\.|stream\\.)?\\w*Double\\w*");
  }
}
