package org.coatrun.ifcimport.part21;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever happens to a file's bytes, it is read or refused: no hang, no other exception. */
class MutationTest {

  private static final String SPICE = "'#=;()/*\\\",.$\n\r\0\u00ff0ESX2-";
  private static final Duration MOST = Duration.ofSeconds(60);

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void mutatedModels(long seed) {
    Random random = new Random(seed);
    byte[] model = model(random).getBytes(StandardCharsets.ISO_8859_1);
    assertTimeoutPreemptively(MOST, () -> attack(random, model, 250));
  }

  @ParameterizedTest
  @ValueSource(longs = {7, 8})
  void mutatedContainers(long seed) throws IOException {
    Random random = new Random(seed);
    byte[] model = model(random).getBytes(StandardCharsets.ISO_8859_1);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (OutputStream out = seed == 7 ? zip(bytes) : new GZIPOutputStream(bytes)) {
      out.write(model);
    }
    assertTimeoutPreemptively(MOST, () -> attack(random, bytes.toByteArray(), 200));
  }

  private static OutputStream zip(OutputStream out) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out);
    zip.putNextEntry(new ZipEntry("a.ifc"));
    return zip;
  }

  private static String model(Random random) {
    StringBuilder text = new StringBuilder(StepText.HEAD);
    RandomStep step = new RandomStep(random);
    for (int i = 1; i < 40; i++) {
      text.append(step.write(step.record(i)));
    }
    return text + StepText.FOOT;
  }

  private void attack(Random random, byte[] original, int times) throws IOException {
    Path path = folder.resolve("mutant.ifc");
    for (int i = 0; i < times; i++) {
      Files.write(path, mutate(random, original));
      readOrRefuse(path, random.nextBoolean());
    }
  }

  private static byte[] mutate(Random random, byte[] original) {
    byte[] mutant = original.clone();
    int edits = 1 + random.nextInt(8);
    for (int i = 0; i < edits; i++) {
      mutant = edit(random, mutant);
    }
    return mutant;
  }

  private static byte[] edit(Random random, byte[] bytes) {
    if (bytes.length < 2) {
      return bytes;
    }
    int at = random.nextInt(bytes.length);
    int to = Math.min(bytes.length, at + random.nextInt(60));
    return switch (random.nextInt(5)) {
      case 0 -> replace(bytes, at, at + 1, new byte[] {(byte) random.nextInt(256)});
      case 1 -> replace(bytes, at, at + 1, new byte[] {spice(random)});
      case 2 -> replace(bytes, at, at, new byte[] {spice(random)});
      case 3 -> replace(bytes, at, to, new byte[0]);
      default -> replace(bytes, at, at, Arrays.copyOfRange(bytes, at, to));
    };
  }

  private static byte spice(Random random) {
    return (byte) SPICE.charAt(random.nextInt(SPICE.length()));
  }

  private static byte[] replace(byte[] bytes, int from, int to, byte[] by) {
    byte[] result = new byte[bytes.length - (to - from) + by.length];
    System.arraycopy(bytes, 0, result, 0, from);
    System.arraycopy(by, 0, result, from, by.length);
    System.arraycopy(bytes, to, result, from + by.length, bytes.length - to);
    return result;
  }

  private static void readOrRefuse(Path path, boolean acceptTruncated) {
    StepOptions options = StepOptions.DEFAULT.split(2, 200);
    try (StepFile file =
        StepFile.open(path, acceptTruncated ? options.acceptingTruncated() : options)) {
      StepText.decodeAll(file);
      assertThat(file.findings()).isSorted();
    } catch (ModelFileException e) {
      assertThat(e).hasMessageContaining("mutant.ifc").hasMessageEndingWith(".");
    }
  }
}
