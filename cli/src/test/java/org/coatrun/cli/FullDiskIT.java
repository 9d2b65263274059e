package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.coatrun.cli.Program.Run;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that is full, or a folder that is not there: one sentence, and nothing half-written. */
class FullDiskIT {

  private static final Path FULL = Path.of("/dev/full");
  private static final Path LAUNCHER = Program.DISTRIBUTION.resolve("bin/coatrun");

  @TempDir private Path home;

  /** A small file system of its own; only the administrator may mount one. */
  @Test
  void leavesNothingOnAFullDisk() throws Exception {
    Path disk = Files.createDirectory(home.resolve("disk"));
    assumeTrue(
        mount(disk), "skipped: this user may not mount a small file system, or there is none");
    try {
      Path kept = Files.writeString(disk.resolve("members.csv"), "before");
      Run run = Program.run("takeoff", Program.FIRST_TRY, "--out", disk);
      requireNoSpace(run);
      assertThat(kept).content().isEqualTo("before");
      assertThat(count(disk)).isEqualTo(1);
      requireNoSpace(Program.run("takeoff", Program.FIRST_TRY, "--out", disk.resolve("a/b")));
      assertThat(count(disk)).isEqualTo(1);
    } finally {
      run("umount", disk.toString());
    }
  }

  /** A job file cut off by a full disk must not pass for a whole one. */
  @Test
  void saysSoWhereTheScreenGoesToAFullDisk() throws Exception {
    assumeTrue(Files.exists(FULL), "skipped: this system has no /dev/full");
    Path err = home.resolve("err");
    Process process =
        new ProcessBuilder(LAUNCHER.toString(), "job", Program.FIRST_TRY.toString())
            .redirectOutput(FULL.toFile())
            .redirectError(err.toFile())
            .start();
    assertThat(process.waitFor()).isEqualTo(4);
    assertThat(err)
        .content()
        .isEqualTo("coatrun: cannot write all of the output: No space left on device\n");
  }

  /** Large packed models are unpacked aside. */
  @Test
  void saysSoWhereThereIsNoRoomToUnpack() throws Exception {
    Path nowhere = home.resolve("nowhere");
    Run run =
        Program.run(
            Map.of("COATRUN_OPTS", "-Djava.io.tmpdir=" + nowhere),
            "survey",
            packed("large.ifczip"));
    assertThat(run.exitCode()).describedAs(run.err()).isEqualTo(3);
    assertThat(run.err())
        .startsWith("coatrun: large.ifczip cannot be unpacked into " + nowhere + ", the folder")
        .hasLineCount(1);
  }

  private Path packed(String name) throws IOException {
    Path file = home.resolve(name);
    Random random = new Random(1);
    byte[] text = new byte[1 << 20];
    for (int i = 0; i < text.length; i++) {
      text[i] = (byte) ('0' + random.nextInt(10));
    }
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.setLevel(1);
      zip.putNextEntry(new ZipEntry("model.ifc"));
      zip.write("ISO-10303-21;\n".getBytes(StandardCharsets.US_ASCII));
      for (int i = 0; i < 33; i++) {
        zip.write(text);
      }
    }
    return file;
  }

  private static void requireNoSpace(Run run) {
    assertThat(run.exitCode()).describedAs(run.err()).isEqualTo(4);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.err())
        .startsWith("coatrun: cannot write ")
        .containsIgnoringCase("no space left");
  }

  private static boolean mount(Path at) throws InterruptedException {
    try {
      return run("mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", at.toString()) == 0;
    } catch (IOException e) {
      return false;
    }
  }

  private static int run(String... command) throws IOException, InterruptedException {
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start()
        .waitFor();
  }

  private static long count(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.count();
    }
  }
}
