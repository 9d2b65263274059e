package org.coatrun.cli.output;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {

  @TempDir private Path home;

  @Test
  void publishesAllFilesAndLeavesNothingElse() throws Exception {
    Path target = home.resolve("a/b/out");
    try (OutputFolder folder = OutputFolder.open(target)) {
      folder.write("one.txt", writer -> writer.write("1"));
      folder.write("two.txt", writer -> writer.write("zwei ü"));
      folder.publish();
    }

    assertThat(names(home.resolve("a/b"))).containsExactly("out");
    assertThat(names(target)).containsExactly("one.txt", "two.txt");
    assertThat(target.resolve("two.txt")).content(UTF_8).isEqualTo("zwei ü");
  }

  @Test
  void leavesEverythingAsItWasWhereNothingIsPublished() throws Exception {
    try (OutputFolder folder = OutputFolder.open(home.resolve("a/b/out"))) {
      folder.write("one.txt", writer -> writer.write("1"));
    }

    assertThat(names(home)).isEmpty();
  }

  @Test
  void keepsOldResultsWhenWritingFails() throws Exception {
    Files.writeString(home.resolve("one.txt"), "old");
    try (OutputFolder folder = OutputFolder.open(home)) {
      folder.write("one.txt", writer -> writer.write("new"));
      folder.write(
          "two.txt",
          writer -> {
            writer.write("half");
            throw new IOException("No space left on device");
          });
      assertThatThrownBy(folder::publish)
          .isInstanceOf(CommandFailure.class)
          .hasMessageContaining("two.txt: No space left on device");
    }

    assertThat(names(home)).containsExactly("one.txt");
    assertThat(home.resolve("one.txt")).content().isEqualTo("old");
  }

  @Test
  void namesTheFirstFileThatFailedInTheOrderOfAsking() throws Exception {
    try (OutputFolder folder = OutputFolder.open(home)) {
      for (String name : List.of("good.txt", "one.txt", "two.txt", "three.txt")) {
        folder.write(
            name,
            writer -> {
              if (!name.startsWith("good")) {
                throw new IOException("no room for " + name);
              }
            });
      }
      assertThatThrownBy(folder::publish).hasMessageEndingWith("one.txt: no room for one.txt");
    }

    assertThat(names(home)).isEmpty();
  }

  @Test
  void passesOnAFaultOfTheProgram() throws Exception {
    try (OutputFolder folder = OutputFolder.open(home)) {
      folder.write(
          "one.txt",
          writer -> {
            throw new OutOfMemoryError("no heap");
          });
      assertThatThrownBy(folder::publish).isInstanceOf(OutOfMemoryError.class);
    }

    assertThat(names(home)).isEmpty();
  }

  @Test
  void replacesItsOwnFilesAndKeepsOthers() throws Exception {
    Files.writeString(home.resolve("one.txt"), "old");
    Files.writeString(home.resolve("notes.txt"), "mine");
    try (OutputFolder folder = OutputFolder.open(home)) {
      folder.write("one.txt", writer -> writer.write("new"));
      folder.publish();
    }

    assertThat(names(home)).containsExactly("notes.txt", "one.txt");
    assertThat(home.resolve("one.txt")).content().isEqualTo("new");
    assertThat(home.resolve("notes.txt")).content().isEqualTo("mine");
  }

  @Test
  void movesNothingWhereOneNameIsAFolder() throws Exception {
    Files.createDirectory(home.resolve("two.txt"));
    try (OutputFolder folder = OutputFolder.open(home)) {
      folder.write("one.txt", writer -> writer.write("1"));
      folder.write("two.txt", writer -> writer.write("2"));
      assertThatThrownBy(folder::publish)
          .isInstanceOf(CommandFailure.class)
          .hasMessageContaining("two.txt: it is a folder");
    }

    assertThat(names(home)).containsExactly("two.txt");
  }

  @Test
  void refusesAFile() throws Exception {
    Path file = Files.writeString(home.resolve("out"), "a file");

    assertThatThrownBy(() -> OutputFolder.open(file))
        .isInstanceOfSatisfying(
            CommandFailure.class,
            failure -> assertThat(failure.exitCode()).isEqualTo(ExitCode.CANNOT_WRITE))
        .hasMessage("cannot write " + file + ": it is a file; name a folder");
  }

  @Test
  void refusesAFileOnTheWay() throws Exception {
    Files.writeString(home.resolve("a"), "a file");

    assertThatThrownBy(() -> OutputFolder.open(home.resolve("a/b/out")))
        .isInstanceOf(CommandFailure.class)
        .hasMessageContaining("cannot write");
    assertThat(names(home)).containsExactly("a");
  }

  private static List<String> names(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
