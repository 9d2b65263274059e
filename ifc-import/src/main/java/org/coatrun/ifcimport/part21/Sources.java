package org.coatrun.ifcimport.part21;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** From a path to the bytes of a model: mapped, or unpacked from a container. */
final class Sources {

  private Sources() {}

  /**
   * Opens a file.
   *
   * @throws ModelFileException where there is no file to read, or a container cannot be unpacked
   */
  static ByteSource open(Path file, StepOptions options) {
    if (!Files.exists(file)) {
      throw new ModelFileException(file + " does not exist; check the path.");
    }
    if (Files.isDirectory(file)) {
      throw new ModelFileException(file + " is a folder; name a model file in it.");
    }
    if (!Files.isRegularFile(file)) {
      throw new ModelFileException(file + " is not an ordinary file; name a model file.");
    }
    try {
      return byBeginning(file, options);
    } catch (IOException e) {
      throw new ModelFileException(file + " cannot be read; check its permissions.", e);
    }
  }

  private static ByteSource byBeginning(Path file, StepOptions options) throws IOException {
    byte[] head = new byte[4];
    int count;
    try (InputStream in = Files.newInputStream(file)) {
      count = in.readNBytes(head, 0, head.length);
    }
    if (count == 0) {
      throw new ModelFileException(file + " is empty; export or copy the model again.");
    }
    if (isZip(head)) {
      return ZipContainer.open(file, options);
    }
    if (isGzip(head)) {
      return GzipContainer.open(file, options);
    }
    return new MappedSource(file);
  }

  static boolean isZip(byte[] head) {
    boolean signed = head[0] == 'P' && head[1] == 'K';
    return signed && ((head[2] == 3 && head[3] == 4) || (head[2] == 5 && head[3] == 6));
  }

  static boolean isGzip(byte[] head) {
    return head[0] == 0x1f && head[1] == (byte) 0x8b;
  }
}
