package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The launcher for Windows, held against the one that the other tests run: what cannot be run here
 * can at least be read.
 */
class LauncherIT {

  private static final Path BIN = Program.DISTRIBUTION.resolve("bin");
  private static final Pattern OPTION = Pattern.compile("-XX:[+-]?\\w+(?:=\\w+)?");

  private static String windows() throws IOException {
    return Files.readString(BIN.resolve("coatrun.cmd"), StandardCharsets.US_ASCII);
  }

  private static String unix() throws IOException {
    return Files.readString(BIN.resolve("coatrun"), StandardCharsets.US_ASCII);
  }

  @Test
  void linesEndAsEachSystemReadsThem() throws IOException {
    assertThat(windows()).endsWith("\r\n").doesNotContainPattern("(?<!\r)\n|\r(?!\n)");
    assertThat(unix()).startsWith("#!/bin/sh\n").doesNotContain("\r");
    assertThat(Files.isExecutable(BIN.resolve("coatrun"))).isTrue();
  }

  @Test
  void bothStartTheSameProgramWithTheSameOptions() throws IOException {
    for (String text : List.of(windows(), unix())) {
      assertThat(text).contains(" " + Main.class.getName() + " ");
      assertThat(text).contains("COATRUN_OPTS");
      assertThat(text).contains("JAVA_HOME");
    }
    assertThat(options(windows())).isEqualTo(options(unix())).isNotEmpty();
    assertThat(windows()).contains("%~dp0..\\lib").contains("-cp \"%COATRUN_LIB%\\*\"");
  }

  /**
   * Java refuses an option that its system does not have; those of Linux stand on a line of its
   * own.
   */
  @Test
  void whatOnlyLinuxHasIsAskedForOnLinuxOnly() throws IOException {
    assertThat(windows()).doesNotContain("HugePages");
    assertThat(unix().lines().filter(l -> l.contains("HugePages")))
        .allMatch(l -> l.startsWith("[ \"$(uname)\" != Linux ] ||"));
  }

  /** The archive of loaded classes is the build's own and has no part in a distribution. */
  private static Set<String> options(String text) {
    Set<String> found = new TreeSet<>();
    OPTION.matcher(text).results().map(m -> m.group()).forEach(found::add);
    found.removeIf(o -> o.startsWith("-XX:SharedArchiveFile") || o.contains("HugePages"));
    return found;
  }

  /** A quote, a bracket or a variable left open runs into the next line. */
  @Test
  void eachLineOfTheWindowsLauncherIsClosed() throws IOException {
    String text = windows();
    for (String written : text.split("\r\n")) {
      String line = written.replace("%JAVA_HOME:\"=%", "%JAVA_HOME%");
      assertThat(line.chars().filter(c -> c == '"').count() % 2).as(line).isZero();
      if (!line.startsWith("rem ")) {
        String plain = line.replaceAll("%%(~\\$PATH:)?J|%~(dp)?\\d|%\\*|%\\w+%", "");
        assertThat(plain).as(line).doesNotContain("%");
      }
    }
    assertThat(count(text, "(")).isEqualTo(count(text, ")"));
    assertThat(text).startsWith("@echo off\r\n");
    assertThat(Stream.of(text.split("\r\n")).filter(l -> l.startsWith("setlocal"))).hasSize(1);
    assertThat(text).endsWith("exit /b %ERRORLEVEL%\r\n");
  }

  private static long count(String text, String what) {
    return text.lines()
        .filter(l -> !l.startsWith("rem "))
        .mapToLong(l -> l.length() - l.replace(what, "").length())
        .sum();
  }
}
