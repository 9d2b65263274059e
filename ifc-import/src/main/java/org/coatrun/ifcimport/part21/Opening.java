package org.coatrun.ifcimport.part21;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.finding.FileFinding;

/** Opens a file: finds the exchange structure, indexes it, judges whether it is whole. */
final class Opening {

  private final String name;
  private final ByteSource source;
  private final StepOptions options;
  private final NameTable names = new NameTable();
  private final LineCounter lines;
  private final FindingLog log;

  private Opening(String name, ByteSource source, StepOptions options) {
    this.name = name;
    this.source = source;
    this.options = options;
    this.lines = new LineCounter(source);
    this.log = new FindingLog(name);
  }

  static Opened open(Path file, StepOptions options) {
    String name = String.valueOf(file.getFileName());
    ByteSource source = source(file, name);
    try {
      return new Opening(name, source, options).run();
    } catch (ModelFileException e) {
      source.close();
      throw e;
    }
  }

  private static ByteSource source(Path file, String name) {
    if (!Files.exists(file)) {
      throw new ModelFileException(file + " does not exist; check the path.");
    }
    if (Files.isDirectory(file)) {
      throw new ModelFileException(file + " is a folder; name a model file in it.");
    }
    try {
      return new MappedSource(file);
    } catch (IOException e) {
      throw new ModelFileException(name + " cannot be read; check its permissions.", e);
    }
  }

  private Opened run() {
    if (source.size() == 0) {
      throw new ModelFileException(name + " is empty; export or copy the model again.");
    }
    List<Chunk> chunks = scan();
    RecordIndex index = new RecordIndex(chunks, names, (first, second) -> {});
    Sections sections = new Sections(source, log, lines);
    for (Chunk c : chunks) {
      for (int i = 0; i < c.otherCount; i++) {
        sections.statement(c.others[i]);
      }
    }
    if (!sections.sawData()) {
      throw new ModelFileException(name + " is not an IFC model in STEP form.");
    }
    if (index.count() == 0) {
      log.add(FileFinding.NO_RECORDS, 0, 0, "the file holds no records");
    }
    return new Opened(name, source, sections.header(), index, names, lines, log);
  }

  private List<Chunk> scan() {
    StatementScanner scanner = new StatementScanner(source, names, 1 << 20);
    List<Chunk> chunks = new ArrayList<>();
    long at = 0;
    while (at < source.size()) {
      Chunk chunk = new Chunk(at, Math.min(source.size(), at + options.chunkBytes()));
      chunks.add(chunk.scan(scanner, at));
      at = chunk.next;
    }
    return chunks;
  }
}
