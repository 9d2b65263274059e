package org.coatrun.ifcimport.part21;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/** A zip with one model in it, among folders and other files ({@code .ifczip}). */
final class ZipContainer {

  /** Names without the mark for UTF-8 may be in any page; this one reads whatever stands there. */
  private static final Charset OLD_NAMES = StandardCharsets.ISO_8859_1;

  private static final int MOST_ENTRIES = 10_000;
  private static final int MOST_NAMED = 5;
  private static final int LONGEST_NAME = 60;

  private ZipContainer() {}

  static ByteSource open(Path file, StepOptions options) throws IOException {
    String name = String.valueOf(file.getFileName());
    try (ZipFile zip = new ZipFile(file.toFile(), OLD_NAMES)) {
      ZipEntry model = onlyModel(zip, name);
      Unpacker unpacker = new Unpacker(name, model.getCompressedSize(), options);
      try (InputStream in = zip.getInputStream(model)) {
        return unpacker.unpack(in);
      }
    } catch (ZipException | EOFException | IllegalArgumentException e) {
      throw new ModelFileException(
          name + " is a damaged or locked zip file; copy or pack the model again.", e);
    }
  }

  private static ZipEntry onlyModel(ZipFile zip, String name) {
    if (zip.size() > MOST_ENTRIES) {
      throw new ModelFileException(
          name + " holds " + zip.size() + " files; name a zip that holds one model.");
    }
    List<? extends ZipEntry> models = zip.stream().filter(ZipContainer::isModel).toList();
    if (models.isEmpty()) {
      throw new ModelFileException(
          name + " holds no file whose name ends in .ifc; pack one model as .ifc.");
    }
    if (models.size() > 1) {
      throw new ModelFileException(
          name + " holds several models (" + names(models) + "); unpack it and name one or all.");
    }
    return models.get(0);
  }

  /** A name ending in .ifc; the shadow files of some packers do not count. */
  private static boolean isModel(ZipEntry entry) {
    String path = entry.getName().toLowerCase(Locale.ROOT);
    String last = path.substring(path.lastIndexOf('/') + 1);
    return !entry.isDirectory()
        && last.endsWith(".ifc")
        && !last.startsWith("._")
        && !path.startsWith("__macosx/");
  }

  private static String names(List<? extends ZipEntry> models) {
    String first =
        String.join(
            ", ", models.stream().map(ZipContainer::shown).sorted().limit(MOST_NAMED).toList());
    int more = models.size() - MOST_NAMED;
    return more > 0 ? first + " and " + more + " more" : first;
  }

  /** The end of a name, which says most, without what would steer a terminal. */
  private static String shown(ZipEntry entry) {
    String name = entry.getName().replaceAll("[\\p{Cntrl}\\p{Cf}\\u2028\\u2029]", "?");
    int length = name.length();
    return length > LONGEST_NAME ? "..." + name.substring(length - LONGEST_NAME) : name;
  }
}
