package org.coatrun.ifcimport.part21;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Packed models, recognised by their bytes whatever they are called. */
class ContainersTest {

  private static final String MODEL = StepText.file("#1=IFCA('packed');");

  @TempDir Path folder;

  private Path zip(String name, String... entriesAndContents) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
      for (int i = 0; i < entriesAndContents.length; i += 2) {
        zip.putNextEntry(new ZipEntry(entriesAndContents[i]));
        zip.write(entriesAndContents[i + 1].getBytes(StandardCharsets.ISO_8859_1));
        zip.closeEntry();
      }
    }
    return Files.write(folder.resolve(name), bytes.toByteArray());
  }

  private Path gzip(String name, byte[] content) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (OutputStream gzip = new GZIPOutputStream(bytes)) {
      gzip.write(content);
    }
    return Files.write(folder.resolve(name), bytes.toByteArray());
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  private static void assertReads(Path file) {
    try (StepFile opened = StepFile.open(file, StepOptions.DEFAULT)) {
      assertThat(opened.record(1).text(0)).contains("packed");
      assertThat(opened.fileName()).isEqualTo(file.getFileName().toString());
    }
  }

  private static void assertRefused(Path file, StepOptions options, String... words) {
    assertThatThrownBy(() -> StepFile.open(file, options).close())
        .isInstanceOf(ModelFileException.class)
        .hasMessageContaining(file.getFileName().toString())
        .hasMessageContainingAll(words);
  }

  private static void assertRefused(Path file, String... words) {
    assertRefused(file, StepOptions.DEFAULT, words);
  }

  @Test
  void readsAZipWithFoldersAndOtherFiles() throws IOException {
    assertReads(zip("a.ifczip", "a.ifc", MODEL));
    assertReads(
        zip(
            "b.ifczip",
            "readme.txt",
            "hello",
            "deep/",
            "",
            "deep/er/Mod\u00e8le.IFC",
            MODEL,
            "deep/er/picture.png",
            "x",
            "__MACOSX/deep/er/._a.ifc",
            "x"));
  }

  @Test
  void readsZipAndGzipUnderAnyName() throws IOException {
    assertReads(zip("zipped.ifc", "a.ifc", MODEL));
    assertReads(gzip("gzipped.ifc", bytes(MODEL)));
  }

  @Test
  void namesTheModelsOfAZipWithSeveral() throws IOException {
    assertRefused(
        zip("two.ifczip", "b/steel.ifc", MODEL, "a/walls.ifc", MODEL),
        "several models",
        "a/walls.ifc, b/steel.ifc");
  }

  @Test
  void namesOfEntriesNeitherSteerATerminalNorFillIt() throws IOException {
    Path odd =
        zip("odd.ifczip", "x\u001b[2J\r\n\u202e.ifc", MODEL, "d/".repeat(9000) + ".ifc", MODEL);
    assertThatThrownBy(() -> StepFile.open(odd, StepOptions.DEFAULT).close())
        .isInstanceOf(ModelFileException.class)
        .hasMessageContaining("x?[2J???.ifc")
        .satisfies(e -> assertThat(e.getMessage().length()).isLessThan(300));
  }

  @Test
  void refusesAZipWithoutAModel() throws IOException {
    assertRefused(zip("none.ifczip", "readme.txt", "x"), "no file whose name ends in .ifc");
    Path empty = Files.write(folder.resolve("empty.ifczip"), emptyZip());
    assertRefused(empty, "no file whose name ends in .ifc");
  }

  private static byte[] emptyZip() {
    byte[] end = new byte[22];
    end[0] = 'P';
    end[1] = 'K';
    end[2] = 5;
    end[3] = 6;
    return end;
  }

  @Test
  void refusesDamagedContainers() throws IOException {
    byte[] whole = Files.readAllBytes(zip("whole.ifczip", "a.ifc", MODEL));
    byte[] half = Arrays.copyOf(whole, whole.length / 2);
    assertRefused(Files.write(folder.resolve("half.ifczip"), half), "damaged");
    byte[] packed = Files.readAllBytes(gzip("whole.gz", bytes(MODEL)));
    half = Arrays.copyOf(packed, packed.length / 2);
    assertRefused(Files.write(folder.resolve("half.gz"), half), "damaged");
    packed[packed.length - 8] ^= 1; // the checksum
    assertRefused(Files.write(folder.resolve("flipped.gz"), packed), "damaged");
  }

  @Test
  void refusesAContainerInAContainer() throws IOException {
    byte[] inner = Files.readAllBytes(zip("inner.zip", "a.ifc", MODEL));
    assertRefused(gzip("outer.ifc", inner), "inside another packed file");
  }

  @Test
  void refusesABombByItsRatio() throws IOException {
    byte[] blanks = new byte[40 << 20];
    Arrays.fill(blanks, (byte) ' ');
    System.arraycopy(bytes(StepText.HEAD), 0, blanks, 0, StepText.HEAD.length());
    assertRefused(gzip("bomb.ifc", blanks), "far more than a model packs");
    String text = new String(blanks, StandardCharsets.ISO_8859_1);
    assertRefused(zip("bomb.ifczip", "a.ifc", text), "far more than a model packs");
  }

  @Test
  void refusesWhatUnpacksBeyondTheLimit() throws IOException {
    Path file = gzip("large.ifc", bytes(MODEL));
    assertRefused(file, StepOptions.DEFAULT.limits(MODEL.length() - 1, 200), "for safety");
    try (StepFile ok = StepFile.open(file, StepOptions.DEFAULT.limits(MODEL.length(), 200))) {
      assertThat(ok.count()).isEqualTo(1);
    }
  }

  @Test
  void whatIsLargeGoesThroughATemporaryFileThatIsRemoved() throws IOException {
    StringBuilder records = new StringBuilder("#1=IFCA('packed');\n");
    java.util.Random random = new java.util.Random(5);
    for (int i = 2; records.length() < 34 << 20; i++) {
      records.append('#').append(i).append("=IFCB(").append(random.nextLong()).append(");\n");
    }
    Path file = gzip("large.ifc", bytes(StepText.file(records.toString())));
    long before = temporaryFiles();
    try (StepFile opened = StepFile.open(file, StepOptions.DEFAULT)) {
      assertThat(opened.record(1).text(0)).contains("packed");
      long last = opened.count();
      assertThat(opened.record(last).size()).isEqualTo(1);
      assertThat(opened.lineOf(last)).isEqualTo(last + StepText.FIRST_LINE - 1);
    }
    assertThat(temporaryFiles()).isEqualTo(before);
  }

  private static long temporaryFiles() throws IOException {
    try (var files = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
      return files.filter(f -> f.getFileName().toString().matches("coatrun.*\\.ifc")).count();
    }
  }
}
