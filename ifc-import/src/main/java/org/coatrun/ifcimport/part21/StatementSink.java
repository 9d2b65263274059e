package org.coatrun.ifcimport.part21;

import org.coatrun.shared.finding.FileFinding;

/** Takes what the scanner finds, in the file's order. */
interface StatementSink {

  /** Takes nothing. */
  StatementSink NONE =
      new StatementSink() {
        @Override
        public void record(long position, long id, int name) {}

        @Override
        public void other(long position) {}

        @Override
        public void fault(FileFinding code, long position, long id) {}
      };

  /** A record {@code #id=NAME(}, with the code of its name. */
  void record(long position, long id, int name);

  /**
   * A statement that is no record: a section mark, a header line, or text that has no place here.
   */
  void other(long position);

  /** A fault that shows without decoding. */
  void fault(FileFinding code, long position, long id);
}
