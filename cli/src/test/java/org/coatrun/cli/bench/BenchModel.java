package org.coatrun.cli.bench;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import org.coatrun.testmodels.ifc.ModelOptions;
import org.coatrun.testmodels.scenario.SteelTower;
import org.coatrun.testmodels.scenario.TowerSize;

/** A tower written for a benchmark. */
record BenchModel(Path file, int elements, double megabytes) {

  static BenchModel write(Path folder, String name, TowerSize size) throws IOException {
    Path file = folder.resolve(name + ".ifc");
    var elements = new AtomicInteger();
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      new SteelTower(size).write(out, ModelOptions.DEFAULT, element -> elements.incrementAndGet());
    }
    return new BenchModel(file, elements.get(), Files.size(file) / 1e6);
  }
}
