package org.coatrun.cli.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/** What lies beside these classes and goes into each page. */
final class PageResources {

  private PageResources() {}

  static byte[] bytes(String name) {
    try (InputStream in = PageResources.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its part " + name);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException("the program cannot read its part " + name, e);
    }
  }

  /** A text, whatever ends its lines on the machine that it was built on. */
  static String text(String name) {
    return new String(bytes(name), StandardCharsets.UTF_8).replace("\r\n", "\n");
  }

  static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** As a policy of content names what it allows. */
  static String hash(byte[] text) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(text);
      return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("this Java lacks SHA-256", e);
    }
  }
}
