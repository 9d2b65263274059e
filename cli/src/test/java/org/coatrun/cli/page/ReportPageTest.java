package org.coatrun.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportPageTest {

  @Test
  void thePageIsCompleteInItselfAndTheSameEachTime(@TempDir Path folder) throws IOException {
    byte[] html = ReportPage.html(PageSketch.content(6), PageSketch.geometry(6));
    Files.write(folder.resolve("report.html"), html);
    assertThat(html)
        .isEqualTo(ReportPage.html(PageSketch.content(6), PageSketch.geometry(6)))
        .asString(StandardCharsets.UTF_8)
        .contains("default-src 'none'; script-src 'sha256-")
        .contains("connect-src 'none'")
        .doesNotContain(PageSketch.HOSTILE)
        .doesNotContain("src=\"http")
        .doesNotContain("{{");
    String copy = System.getProperty("coatrun.page.copy");
    if (copy != null) {
      Files.write(Path.of(copy), html);
    }
  }

  /** Else a browser would refuse to run them (Content Security Policy Level 3, hash sources). */
  @Test
  void theScriptsAreAllowedByTheHashOfWhatUnpacks() throws Exception {
    byte[] packed = Base64.getDecoder().decode(PageScripts.packed());
    byte[] script = new GZIPInputStream(new ByteArrayInputStream(packed)).readAllBytes();
    byte[] digest = MessageDigest.getInstance("SHA-256").digest(script);
    assertThat(PageScripts.hash())
        .isEqualTo("'sha256-" + Base64.getEncoder().encodeToString(digest) + "'");
    assertThat(script).asString(StandardCharsets.UTF_8).startsWith("\"use strict\";");
  }

  @Test
  void likeMeshesAreKeptOnce() {
    GeometryBlock block = PageSketch.geometry(40);
    assertThat(block.uniqueMeshes()).isEqualTo(1);
    assertThat(block.triangles()).isEqualTo(40 * 12);
  }
}
