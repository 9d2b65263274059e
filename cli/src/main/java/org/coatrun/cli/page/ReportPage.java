package org.coatrun.cli.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

/** Writes the page: one HTML file, complete in itself. */
public final class ReportPage {

  private static final Pattern SLOT = Pattern.compile("\\{\\{(\\w+)}}");

  private ReportPage() {}

  /** The page as HTML in UTF-8; the same content gives the same bytes. */
  static byte[] html(PageContent content, GeometryBlock geometry) {
    byte[] boot = PageResources.utf8(PageResources.text("boot.js"));
    byte[] style = PageResources.utf8(PageResources.text("page.css"));
    Map<String, byte[]> slots = new TreeMap<>();
    slots.put("title", PageResources.utf8(escaped(content.title())));
    slots.put("style", style);
    slots.put("policy", PageResources.utf8(policy(style, boot)));
    slots.put("licence", PageResources.utf8(escaped(PageResources.text("three/LICENSE"))));
    slots.put("data", packed(content));
    slots.put("geometry", geometry.encoded());
    slots.put("code", PageScripts.packed());
    slots.put("boot", boot);
    return joined(filled(PageResources.text("page.html"), slots));
  }

  /** The text, in pieces; the large ones stay what they are: bytes, which nothing has to encode. */
  private static List<byte[]> filled(String template, Map<String, byte[]> slots) {
    Matcher m = SLOT.matcher(template);
    List<byte[]> pieces = new ArrayList<>();
    int from = 0;
    while (m.find()) {
      pieces.add(PageResources.utf8(template.substring(from, m.start())));
      pieces.add(slots.get(m.group(1)));
      from = m.end();
    }
    pieces.add(PageResources.utf8(template.substring(from)));
    return pieces;
  }

  private static byte[] joined(List<byte[]> pieces) {
    byte[] all = new byte[pieces.stream().mapToInt(piece -> piece.length).sum()];
    int at = 0;
    for (byte[] piece : pieces) {
      System.arraycopy(piece, 0, all, at, piece.length);
      at += piece.length;
    }
    return all;
  }

  /** Nothing may be loaded or sent; the two scripts and the style are known by their hashes. */
  private static String policy(byte[] style, byte[] boot) {
    return "default-src 'none'; script-src "
        + PageResources.hash(boot)
        + " "
        + PageScripts.hash()
        + "; style-src "
        + PageResources.hash(style)
        + "; img-src data: blob:; connect-src 'none'; base-uri 'none'; form-action 'none'";
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  private static byte[] packed(PageContent content) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (QuickGzip out = new QuickGzip(bytes)) {
      PageJson.write(out, content);
    } catch (IOException e) {
      throw new UncheckedIOException("the page's data cannot be written", e);
    }
    return Base64.getEncoder().encode(bytes.toByteArray());
  }

  /** Packs in a third of the time that the usual level takes, for a sixth more room. */
  private static final class QuickGzip extends GZIPOutputStream {
    private QuickGzip(OutputStream out) throws IOException {
      super(out, 1 << 16);
      def.setLevel(Deflater.BEST_SPEED);
    }
  }
}
