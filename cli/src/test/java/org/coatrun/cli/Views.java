package org.coatrun.cli;

import java.awt.image.BufferedImage;
import java.io.IOException;
import org.coatrun.cli.browser.BrowserPage;

/** What the view of a page shows, and how far two of them differ. */
final class Views {

  private Views() {}

  /** The window with the view in sight, drawn in full. */
  static BufferedImage of(BrowserPage page) throws IOException {
    page.evaluate("document.querySelector('#view').scrollIntoView({block: 'end'})");
    page.evaluate("coatrun.scene.drawNow()");
    return page.picture();
  }

  /** The part of the points that differ. */
  static double difference(BufferedImage a, BufferedImage b) {
    int other = 0;
    for (int y = 0; y < a.getHeight(); y++) {
      for (int x = 0; x < a.getWidth(); x++) {
        other += a.getRGB(x, y) == b.getRGB(x, y) ? 0 : 1;
      }
    }
    return (double) other / (a.getWidth() * a.getHeight());
  }
}
