package org.coatrun.ifcimport.part21;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Kinds of files that are taken for models by mistake, by how they begin. */
final class Kinds {

  private static final Map<String, String> BEGINNINGS = new LinkedHashMap<>();

  static {
    BEGINNINGS.put("PK\u0003\u0004", "a zip inside another packed file");
    BEGINNINGS.put("\u001f\u008b", "a gzip file inside another packed file");
    BEGINNINGS.put("%PDF", "a PDF document");
    BEGINNINGS.put("\u00d0\u00cf\u0011\u00e0", "a program's own document");
    BEGINNINGS.put("\u00ff\u00fe", "text in UTF-16");
    BEGINNINGS.put("\u00fe\u00ff", "text in UTF-16");
    BEGINNINGS.put("I\0S\0O\0", "text in UTF-16");
    BEGINNINGS.put("\0I\0S\0O", "text in UTF-16");
    BEGINNINGS.put("7z\u00bc\u00af", "a 7z archive");
    BEGINNINGS.put("Rar!", "a RAR archive");
    BEGINNINGS.put("BZh", "a bzip2 archive");
    BEGINNINGS.put("\u00fd7zXZ", "an xz archive");
    BEGINNINGS.put("(\u00b5/\u00fd", "a zstd archive");
    BEGINNINGS.put("\u0089PNG", "an image");
    BEGINNINGS.put("\u00ff\u00d8\u00ff", "an image");
    BEGINNINGS.put("GIF8", "an image");
    BEGINNINGS.put("\u0089HDF", "an HDF5 file");
    BEGINNINGS.put("glTF", "a glTF file");
    BEGINNINGS.put("AC10", "a drawing");
  }

  private Kinds() {}

  /** What a file is, in words with an article, if it is known and no exchange structure. */
  static Optional<String> nameOf(String head) {
    for (Map.Entry<String, String> e : BEGINNINGS.entrySet()) {
      if (head.startsWith(e.getKey())) {
        return Optional.of(e.getValue());
      }
    }
    String text = head.startsWith("\u00ef\u00bb\u00bf") ? head.substring(3) : head;
    text = text.stripLeading().toLowerCase(Locale.ROOT);
    if (text.startsWith("<html") || text.startsWith("<!doctype html")) {
      return Optional.of("a web page");
    }
    if (text.startsWith("<")) {
      return Optional.of("an XML file");
    }
    return text.startsWith("{") || text.startsWith("[")
        ? Optional.of("a JSON file")
        : Optional.empty();
  }
}
