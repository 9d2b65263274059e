package org.coatrun.cli.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.zip.GZIPOutputStream;

/**
 * The scripts of the page as one. Joining, packing and hashing them would be a quarter of a small
 * run, so it is done when the program is built, and a run finds the result.
 */
public final class PageScripts {

  private static final String PACKED = "scripts.b64";
  private static final String HASH = "scripts.hash";

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

  private PageScripts() {}

  /**
   * Makes them; part of the build.
   *
   * @param args the folder of the compiled classes
   */
  public static void main(String[] args) throws IOException {
    byte[] script = PageResources.utf8(joined());
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (OutputStream out = new GZIPOutputStream(bytes)) {
      out.write(script);
    }
    Path folder = Path.of(args[0]).resolve("org/coatrun/cli/page");
    Files.write(folder.resolve(PACKED), Base64.getEncoder().encode(bytes.toByteArray()));
    Files.writeString(folder.resolve(HASH), PageResources.hash(script), StandardCharsets.US_ASCII);
  }

  private static String joined() {
    ModuleBundle bundle = new ModuleBundle();
    bundle.add("three.core.min.js", PageResources.text("three/three.core.min.js"));
    bundle.add("three", PageResources.text("three/three.module.min.js"));
    bundle.add("controls", PageResources.text("three/OrbitControls.js"));
    OWN.forEach(name -> bundle.add(name, PageResources.text(name)));
    return bundle.script();
  }

  /** Gzip in base64. */
  static byte[] packed() {
    return PageResources.bytes(PACKED);
  }

  /** By which a page allows them. */
  static String hash() {
    return PageResources.text(HASH);
  }
}
