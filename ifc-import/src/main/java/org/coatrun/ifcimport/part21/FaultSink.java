package org.coatrun.ifcimport.part21;

import org.coatrun.shared.finding.FileFinding;

/** Takes the faults of one record while it is decoded. */
interface FaultSink {

  /** Ignores faults. */
  FaultSink NONE = (code, sentence) -> {};

  void fault(FileFinding code, String sentence);
}
