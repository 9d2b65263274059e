package org.coatrun.ifcimport.part21;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Records beyond what 32 bits can count. */
class LargeFileTest {

  private static final long BEYOND = (1L << 31) + 5;

  @TempDir Path folder;

  /** The file has a hole, which takes no room on the disk and reads as blanks. */
  private Path sparse() throws IOException {
    Path file = folder.resolve("large.ifc");
    try (FileChannel channel =
        FileChannel.open(
            file,
            StandardOpenOption.CREATE_NEW,
            StandardOpenOption.SPARSE,
            StandardOpenOption.WRITE)) {
      channel.write(bytes(StepText.HEAD + "#1=IFCA(#3000000000);\n"), 0);
      channel.write(bytes("\n#3000000000=IFCB('far');\n" + StepText.FOOT), BEYOND);
    }
    return file;
  }

  private static ByteBuffer bytes(String text) {
    return ByteBuffer.wrap(text.getBytes(StandardCharsets.ISO_8859_1));
  }

  @Test
  void readsBehindTwoGibibytes() throws IOException {
    Path path = sparse();
    assertThat(Files.size(path)).isGreaterThan(1L << 31);
    try (StepFile file = StepFile.open(path, StepOptions.DEFAULT)) {
      assertThat(file.count()).isEqualTo(2);
      long far = file.record(1).ref(0).orElseThrow();
      assertThat(file.record(far).text(0)).contains("far");
      assertThat(file.lineOf(far)).isEqualTo(StepText.FIRST_LINE + 2);
      assertThat(file.findings()).isEmpty();
    }
  }

  /** A record that lies across the border of two mapped segments. */
  @Test
  void readsAcrossSegments() throws IOException {
    Path path = folder.resolve("border.ifc");
    long border = 1L << 30;
    try (FileChannel channel =
        FileChannel.open(
            path,
            StandardOpenOption.CREATE_NEW,
            StandardOpenOption.SPARSE,
            StandardOpenOption.WRITE)) {
      channel.write(bytes(StepText.HEAD), 0);
      channel.write(bytes("#7=IFCB('across',(1.,2.,3.));\n" + StepText.FOOT), border - 12);
    }
    try (StepFile file = StepFile.open(path, StepOptions.DEFAULT)) {
      assertThat(file.record(7).text(0)).contains("across");
      assertThat(file.record(7).value(1).items()).hasSize(3);
    }
  }
}
