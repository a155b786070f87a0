package org.wattwright.architecture;

import static java.util.stream.Collectors.toUnmodifiableSet;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.Quantity;

/** What the architecture tests need to know about the code of {@code core}. */
final class CoreCode {
  static final String ROOT = "org.wattwright";

  /** A public or protected method, constructor or field that a user can reach. */
  record ApiMember(String key, JavaMember member, List<JavaType> signature) {
    /** Every class named anywhere in the signature, type arguments included. */
    Set<JavaClass> types() {
      return signature.stream()
          .flatMap(type -> type.getAllInvolvedRawTypes().stream())
          .map(JavaClass::getBaseComponentType)
          .collect(toUnmodifiableSet());
    }
  }

  private CoreCode() {}

  static Path mainClasses() {
    return Path.of("target", "classes");
  }

  /**
   * The members of the exported packages, without what a class must have because it is a {@code
   * Quantity}.
   */
  static List<ApiMember> api(JavaClasses core) {
    return core.stream()
        .filter(CoreCode::isReachable)
        .flatMap(type -> type.getMembers().stream())
        .filter(CoreCode::isOffered)
        .filter(member -> !isDemandedByQuantity(member))
        .map(member -> new ApiMember(key(member), member, signature(member)))
        .toList();
  }

  private static boolean isReachable(JavaClass type) {
    if (type.getPackageName().startsWith(ROOT + ".internal")) {
      return false;
    }
    return isOfferedModifier(type.getModifiers())
        && type.getEnclosingClass().map(CoreCode::isReachable).orElse(true);
  }

  private static boolean isOffered(JavaMember member) {
    return isOfferedModifier(member.getModifiers())
        && !member.getModifiers().contains(JavaModifier.SYNTHETIC)
        && !member.getModifiers().contains(JavaModifier.BRIDGE);
  }

  private static boolean isOfferedModifier(Set<JavaModifier> modifiers) {
    return modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED);
  }

  private static boolean isDemandedByQuantity(JavaMember member) {
    return member.getOwner().isAssignableTo(Quantity.class)
        && member instanceof JavaCodeUnit unit
        && Stream.of(Quantity.class.getMethods())
            .filter(method -> method.getName().equals(unit.getName()))
            .anyMatch(method -> method.getParameterCount() == unit.getParameters().size());
  }

  /** Such as {@code battery.Cell.capacity}, {@code battery.Cell.Builder.new}. */
  private static String key(JavaMember member) {
    String owner = member.getOwner().getFullName().replace('$', '.').substring(ROOT.length() + 1);
    return owner + "." + member.getName().replace("<init>", "new");
  }

  private static List<JavaType> signature(JavaMember member) {
    if (member instanceof JavaField field) {
      return List.of(field.getType());
    }
    JavaCodeUnit unit = (JavaCodeUnit) member;
    List<JavaType> types = new ArrayList<>(unit.getParameterTypes());
    types.add(unit.getReturnType());
    return List.copyOf(types);
  }
}
