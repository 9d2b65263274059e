package org.coatrun.ifcimport.read;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.coatrun.ifcimport.entity.BrokenRecordException;
import org.coatrun.ifcimport.part21.StepFile;
import org.coatrun.shared.finding.FileFinding;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.FindingCode;
import org.coatrun.shared.finding.ModelFinding;

/** Gathers what was found in one file, each thing once. Safe for several threads. */
final class FindingSink {

  private final StepFile file;
  private final TreeSet<Finding> findings = new TreeSet<>();

  FindingSink(StepFile file) {
    this.file = file;
  }

  /** About one record, or about the file where {@code step} is 0. */
  void add(FindingCode code, long step, String guid, String sentence) {
    long line = step > 0 ? file.lineOf(step) : 0;
    synchronized (findings) {
      findings.add(new Finding(code, file.fileName(), line, step, guid, sentence));
    }
  }

  void broken(BrokenRecordException e) {
    FindingCode code = e.isDangling() ? FileFinding.DANGLING_REFERENCE : ModelFinding.BROKEN_RECORD;
    add(code, e.step(), "", e.getMessage() + ".");
  }

  List<Finding> sorted() {
    synchronized (findings) {
      var all = new ArrayList<Finding>(file.findings());
      all.addAll(findings);
      all.sort(null);
      return all;
    }
  }
}
