package org.coatrun.ifcimport.part21;

import org.coatrun.shared.finding.FileFinding;

/** Gives complex instances their names, which the scanner does not read. */
final class ComplexNames {

  private ComplexNames() {}

  static void give(RecordIndex index, NameTable names, ByteSource source, FindingLog log) {
    Chunk[] chunks = index.chunks();
    for (int k = 0; k < chunks.length; k++) {
      for (int i = 0; chunks[k].complex && i < chunks[k].count; i++) {
        if (chunks[k].names[i] == NameTable.COMPLEX) {
          int number = index.first(k) + i;
          StepRecord record = index.decode(number, source, FaultSink.NONE);
          index.rename(number, names.code(record.name()));
          String sentence =
              "#%d is of several entities at once: %s".formatted(record.id(), record.name());
          log.add(FileFinding.COMPLEX_RECORD, index.position(number), record.id(), sentence);
        }
      }
    }
  }
}
