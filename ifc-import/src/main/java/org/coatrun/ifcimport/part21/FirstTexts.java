package org.coatrun.ifcimport.part21;

import java.util.Set;
import java.util.TreeSet;
import java.util.function.LongConsumer;

/** The first parameters of many records, each text once: no text is made for a record. */
final class FirstTexts {

  private final RecordIndex index;
  private final ByteSource source;
  private final NameTable texts = new NameTable();
  private final byte[] bytes = new byte[RecordIndex.FIRST_BYTES];

  FirstTexts(RecordIndex index, ByteSource source) {
    this.index = index;
    this.source = source;
  }

  /** Those in plain writing, in upper case; the ids of the records with another go to a sink. */
  Set<String> of(long[] ids, LongConsumer others) {
    for (long id : ids) {
      int number = index.find(id);
      if (number < 0 || !add(number)) {
        others.accept(id);
      }
    }
    Set<String> all = new TreeSet<>();
    for (int code = NameTable.COMPLEX + 1; code < texts.size(); code++) {
      all.add(texts.name(code));
    }
    return all;
  }

  private boolean add(int number) {
    FirstText text = index.firstText(number, source, bytes);
    return text.isFound() && texts.code(bytes, text.from(), text.to()) > NameTable.COMPLEX;
  }
}
