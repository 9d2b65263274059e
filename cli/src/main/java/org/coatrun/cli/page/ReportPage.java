package org.coatrun.cli.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
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
  private static final List<String> OWN =
      List.of(
          "dom.js",
          "quantity.js",
          "colour.js",
          "geometry.js",
          "shade.js",
          "pick.js",
          "scene.js",
          "model.js",
          "state.js",
          "table.js",
          "card.js",
          "filters.js",
          "legend.js",
          "lists.js",
          "paper.js",
          "hand-out.js",
          "plan.js",
          "line.js",
          "line-bodies.js",
          "canvas.js",
          "main.js");

  private ReportPage() {}

  /** The page as HTML; the same content gives the same text. */
  static String html(PageContent content, GeometryBlock geometry) {
    String code = code();
    String boot = resource("boot.js");
    String style = resource("page.css");
    Map<String, String> slots = new TreeMap<>();
    slots.put("title", escaped(content.title()));
    slots.put("style", style);
    slots.put("policy", policy(style, List.of(boot, code)));
    slots.put("licence", escaped(resource("three/LICENSE")));
    slots.put("data", packed(out -> PageJson.write(out, content)));
    slots.put("geometry", geometry.encoded());
    slots.put("code", packed(out -> out.write(code.getBytes(StandardCharsets.UTF_8))));
    slots.put("boot", boot);
    return fill(resource("page.html"), slots);
  }

  private static String fill(String template, Map<String, String> slots) {
    Matcher m = SLOT.matcher(template);
    StringBuilder out = new StringBuilder();
    int from = 0;
    while (m.find()) {
      out.append(template, from, m.start()).append(slots.get(m.group(1)));
      from = m.end();
    }
    return out.append(template.substring(from)).toString();
  }

  /** Nothing may be loaded or sent; the two scripts and the style are known by their hashes. */
  private static String policy(String style, List<String> scripts) {
    StringBuilder policy = new StringBuilder("default-src 'none'; script-src");
    scripts.forEach(s -> policy.append(' ').append(hash(s)));
    return policy
        .append("; style-src ")
        .append(hash(style))
        .append("; img-src data: blob:; connect-src 'none'; base-uri 'none'; form-action 'none'")
        .toString();
  }

  private static String code() {
    ModuleBundle bundle = new ModuleBundle();
    bundle.add("three.core.min.js", resource("three/three.core.min.js"));
    bundle.add("three", resource("three/three.module.min.js"));
    bundle.add("controls", resource("three/OrbitControls.js"));
    OWN.forEach(name -> bundle.add(name, resource(name)));
    return bundle.script();
  }

  private static String resource(String name) {
    try (InputStream in = ReportPage.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its part " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
    } catch (IOException e) {
      throw new UncheckedIOException("the program cannot read its part " + name, e);
    }
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  private static String hash(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("this Java lacks SHA-256", e);
    }
  }

  /** What writes into a stream. */
  @FunctionalInterface
  private interface Writing {
    void to(OutputStream out) throws IOException;
  }

  private static String packed(Writing text) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (QuickGzip out = new QuickGzip(bytes)) {
      text.to(out);
    } catch (IOException e) {
      throw new UncheckedIOException("the page's data cannot be written", e);
    }
    return Base64.getEncoder().encodeToString(bytes.toByteArray());
  }

  /** Packs in a third of the time that the usual level takes, for a sixth more room. */
  private static final class QuickGzip extends GZIPOutputStream {
    private QuickGzip(OutputStream out) throws IOException {
      super(out, 1 << 16);
      def.setLevel(Deflater.BEST_SPEED);
    }
  }
}
