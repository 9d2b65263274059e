package org.coatrun.ifcimport.part21;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;

/** A model packed by gzip. */
final class GzipContainer {

  private GzipContainer() {}

  static ByteSource open(Path file, StepOptions options) throws IOException {
    String name = String.valueOf(file.getFileName());
    Unpacker unpacker = new Unpacker(name, Files.size(file), options);
    try (InputStream in =
        new GZIPInputStream(new BufferedInputStream(Files.newInputStream(file)), 1 << 16)) {
      return unpacker.unpack(in);
    } catch (ZipException | EOFException e) {
      throw new ModelFileException(
          name + " is a damaged gzip file; copy or pack the model again.", e);
    }
  }
}
