package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.coatrun.cli.Program.Run;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged program refuses what it cannot use: a sentence, an exit code, nothing written. */
class RefusalIT {

  @TempDir private Path home;

  @Test
  void refusesAMissingFile() throws Exception {
    refuses(home.resolve("nowhere.ifc"));
  }

  @Test
  void refusesADirectory() throws Exception {
    refuses(Files.createDirectory(home.resolve("folder.ifc")));
  }

  @Test
  void refusesAnEmptyFile() throws Exception {
    refuses(Files.createFile(home.resolve("empty.ifc")));
  }

  @Test
  void refusesAnotherKindOfFile() throws Exception {
    refuses(Files.writeString(home.resolve("drawing.ifc"), "%PDF-1.7\n1 0 obj\n<< >>\nendobj\n"));
  }

  @Test
  void refusesAZipBomb() throws Exception {
    Path bomb = home.resolve("bomb.ifczip");
    try (OutputStream file = Files.newOutputStream(bomb);
        ZipOutputStream zip = new ZipOutputStream(file)) {
      zip.putNextEntry(new ZipEntry("model.ifc"));
      zip.write("ISO-10303-21;\n".getBytes(StandardCharsets.US_ASCII));
      byte[] zeros = new byte[1 << 20];
      for (int i = 0; i < 200; i++) {
        zip.write(zeros);
      }
    }
    refuses(bomb);
  }

  @Test
  void refusesATruncatedFileUnlessToldToTakeIt() throws Exception {
    Path cut = home.resolve("cut.ifc");
    byte[] whole = Files.readAllBytes(Program.FIRST_TRY);
    Files.write(cut, Arrays.copyOf(whole, whole.length * 9 / 10));
    refuses(cut);

    Path out = home.resolve("accepted");
    Run run = Program.run("takeoff", cut, "--out", out, "--accept-truncated");
    assertThat(run.exitCode()).describedAs(run.err()).isEqualTo(5);
    assertThat(run.err()).contains("cut off");
    TakeoffResult.read(out).requireLedger();
  }

  @Test
  void refusesAFolderThatCannotBeWritten() throws Exception {
    Path file = Files.writeString(home.resolve("out"), "a file");
    Run run = Program.run("takeoff", Program.FIRST_TRY, "--out", file);

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.err())
        .isEqualTo("coatrun: cannot write " + file + ": it is a file; name a folder\n");
    assertThat(file).content().isEqualTo("a file");
  }

  @Test
  void refusesAFolderWithoutPermission() throws Exception {
    Path locked = Files.createDirectory(home.resolve("locked"));
    assumeFalse(
        !locked.toFile().setWritable(false) || Files.isWritable(locked),
        "skipped: this user may write everywhere");
    Run run = Program.run("takeoff", Program.FIRST_TRY, "--out", locked.resolve("out"));

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.err()).startsWith("coatrun: cannot write ").contains("no permission");
  }

  private void refuses(Path model) throws IOException, InterruptedException {
    List<String> before = names();
    Run run = Program.run("takeoff", model, "--out", home.resolve("results"));

    assertThat(run.exitCode()).describedAs(run.err()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.err())
        .startsWith("coatrun: ")
        .contains(model.getFileName().toString())
        .doesNotContain("Exception", "\tat ");
    assertThat(names()).isEqualTo(before);
    assertThat(Program.run("survey", model).exitCode()).isEqualTo(3);
  }

  private List<String> names() throws IOException {
    try (var files = Files.list(home)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
