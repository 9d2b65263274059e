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

  /** The second record lies across this border of 31-bit offsets and of two mapped segments. */
  private static final long BORDER = 1L << 31;

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
      String far = "#3000000000=IFCB('far',(1.,2.));\n#2=IFCC('behind');\n";
      channel.write(bytes(far + StepText.FOOT), BORDER - 20);
    }
    return file;
  }

  private static ByteBuffer bytes(String text) {
    return ByteBuffer.wrap(text.getBytes(StandardCharsets.ISO_8859_1));
  }

  @Test
  void readsAcrossAndBehindTwoGibibytes() throws IOException {
    Path path = sparse();
    assertThat(Files.size(path)).isGreaterThan(BORDER);
    try (StepFile file = StepFile.open(path, StepOptions.DEFAULT)) {
      assertThat(file.count()).isEqualTo(3);
      long far = file.record(1).ref(0).orElseThrow();
      assertThat(file.record(far).text(0)).contains("far");
      assertThat(file.record(far).value(1).items()).hasSize(2);
      assertThat(file.record(2).text(0)).contains("behind");
      assertThat(file.findings()).isEmpty();
    }
  }
}
