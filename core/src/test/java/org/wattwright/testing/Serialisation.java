package org.wattwright.testing;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.UncheckedIOException;

/** Out and in again. */
public final class Serialisation {
  private Serialisation() {}

  /** A copy by Java serialisation. */
  @SuppressWarnings("unchecked")
  public static <T> T copy(T object) {
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes(object)))) {
      return (T) in.readObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The serial form. */
  public static byte[] bytes(Object object) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(object);
    }
    return bytes.toByteArray();
  }
}
