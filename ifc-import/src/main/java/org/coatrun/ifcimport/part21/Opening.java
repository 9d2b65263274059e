package org.coatrun.ifcimport.part21;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.coatrun.shared.finding.FileFinding;

/** Opens a file: finds the exchange structure, indexes it, judges whether it is whole. */
final class Opening {

  private final String name;
  private final ByteSource source;
  private final StepOptions options;
  private final NameTable names = new NameTable();
  private final LineCounter lines;
  private final FindingLog log;
  private final Sections sections;
  private List<Chunk> chunks = List.of();

  private Opening(String name, ByteSource source, StepOptions options) {
    this.name = name;
    this.source = source;
    this.options = options;
    this.lines = new LineCounter(source);
    this.log = new FindingLog(name, lines);
    this.sections = new Sections(source, log);
  }

  static Opened open(Path file, StepOptions options) {
    String name = String.valueOf(file.getFileName());
    ByteSource source = Sources.open(file, options);
    try {
      return new Opening(name, source, options).run();
    } catch (RuntimeException | Error e) {
      source.close();
      throw e;
    }
  }

  private Opened run() {
    long start = Signature.check(name, source);
    chunks = new ParallelScan(source, names, options).from(start);
    readSections();
    RecordIndex index = new RecordIndex(chunks, names);
    if (!sections.sawAny()) {
      throw Signature.noModel(name);
    }
    Header header = sections.header();
    Tail tail = new Tail(name, index, chunks, sections.endMark(), log, lines);
    tail.judge(options.acceptTruncated());
    Faults.log(index, end(), log, lines);
    ComplexNames.give(index, names, source, log);
    if (index.count() == 0) {
      log.add(FileFinding.NO_RECORDS, FindingLog.NOWHERE, 0, "the file holds no records");
    }
    ForkJoinPool.commonPool().execute(index::group); // soon asked for
    return new Opened(name, source, header, index, names, lines, log);
  }

  private long end() {
    return sections.endMark() >= 0 ? sections.endMark() : source.size();
  }

  private void readSections() {
    for (Chunk c : chunks) {
      if (c.tooManyOthers) {
        throw Signature.noModel(name);
      }
      for (int i = 0; i < c.otherCount; i++) {
        sections.statement(c.others[i]);
      }
    }
  }
}
