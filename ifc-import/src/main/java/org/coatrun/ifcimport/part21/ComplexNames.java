package org.coatrun.ifcimport.part21;

import org.coatrun.shared.finding.FileFinding;

/** Gives complex instances their names, which the scanner does not read. */
final class ComplexNames {

  private ComplexNames() {}

  static void give(RecordIndex index, NameTable names, ByteSource source, FindingLog log) {
    int number = 0;
    for (Chunk c : index.chunks()) {
      for (int i = 0; i < c.count; i++, number++) {
        if (c.names[i] == NameTable.COMPLEX) {
          StepRecord record = index.decode(number, source, FaultSink.NONE);
          index.rename(number, names.code(record.name()));
          log.add(
              FileFinding.COMPLEX_RECORD,
              index.position(number),
              record.id(),
              "#" + record.id() + " is of several entities at once: " + record.name());
        }
      }
    }
  }
}
