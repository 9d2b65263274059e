package org.coatrun.cli.damage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever is done to a packed model, to its bytes or to the names in it, a survey ends in a result
 * or in one sentence.
 */
class PackedModelsTest {

  private static final Path MODEL =
      Path.of(System.getProperty("coatrun.root"), "test-models", "first-try.ifc");
  private static final int EACH = 150;

  private static final List<String> NAMES =
      List.of(
          "a.ifc",
          "A.IFC",
          "b/steel.ifc",
          "../up.ifc",
          "/etc/up.ifc",
          "C:\\up.ifc",
          "a.ifc/",
          "._a.ifc",
          "__MACOSX/a.ifc",
          "\u001b[2J.ifc",
          "a\nb.ifc",
          "\u202eabc.ifc",
          "\u0000.ifc",
          "\u00e9.ifc",
          "\uD83D\uDD25.ifc",
          ".ifc",
          "a.txt",
          "x".repeat(9000) + ".ifc",
          "");

  @TempDir Path home;

  @ParameterizedTest
  @ValueSource(strings = {"zip", "gzip"})
  void aDamagedPackEndsInAResultOrASentence(String kind) throws IOException {
    byte[] model = Files.readAllBytes(MODEL);
    Path pack = home.resolve("pack.ifczip");
    int results = 0;
    for (int seed = Attempt.FIRST; seed < Attempt.FIRST + EACH * Attempt.TIMES; seed++) {
      var random = new Random(seed);
      byte[] whole = kind.equals("zip") ? zip(model, random) : gzip(model);
      Files.write(pack, damaged(whole, random));
      results += Attempt.reading(kind + ", seed " + seed, home, "survey", pack) ? 1 : 0;
    }
    assertThat(results).describedAs("some damage does no harm").isPositive();
  }

  private static byte[] zip(byte[] model, Random random) throws IOException {
    var bytes = new ByteArrayOutputStream();
    try (var zip = new ZipOutputStream(bytes)) {
      zip.setLevel(random.nextInt(10));
      int entries = random.nextInt(3) == 0 ? random.nextInt(8) : 1;
      for (int i = 0; i < entries; i++) {
        String name = NAMES.get(entries == 1 ? random.nextInt(3) : random.nextInt(NAMES.size()));
        zip.putNextEntry(new ZipEntry(i == 0 ? name : i + name));
        zip.write(model, 0, name.endsWith("/") ? 0 : model.length);
        zip.closeEntry();
      }
    }
    return bytes.toByteArray();
  }

  private static byte[] gzip(byte[] model) throws IOException {
    var bytes = new ByteArrayOutputStream();
    try (var gzip = new GZIPOutputStream(bytes)) {
      gzip.write(model);
    }
    return bytes.toByteArray();
  }

  /** Up to four edits, of which half are where the names, the sizes and the places stand. */
  private static byte[] damaged(byte[] whole, Random random) {
    byte[] bytes = whole.clone();
    for (int edits = random.nextInt(5); edits > 0; edits--) {
      int at = random.nextInt(bytes.length);
      if (random.nextBoolean()) {
        at = random.nextBoolean() ? at % 64 : bytes.length - 1 - at % 160;
        at = Math.min(Math.max(at, 0), bytes.length - 1);
      }
      bytes[at] = (byte) (random.nextBoolean() ? random.nextInt(256) : random.nextInt(2) * 255);
    }
    int end = random.nextInt(12) == 0 ? random.nextInt(bytes.length + 1) : bytes.length;
    return Arrays.copyOf(bytes, end);
  }
}
