package org.coatrun.ifcimport.part21;

/** The parts of an open file. */
record Opened(
    String fileName,
    ByteSource source,
    Header header,
    RecordIndex index,
    NameTable names,
    LineCounter lines,
    FindingLog log) {}
