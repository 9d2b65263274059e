package org.coatrun.cli.report;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.FindingCode;

/** Findings on the screen: how many of each kind, and what the kind means. */
public final class FindingSummary {

  private FindingSummary() {}

  /** Prints how often each kind of finding came up, and what it means. */
  public static void print(PrintWriter out, List<Finding> findings) {
    if (findings.isEmpty()) {
      out.println("Findings: none");
      return;
    }
    out.println("Findings: " + findings.size());
    Map<String, List<Finding>> kinds =
        findings.stream()
            .collect(
                Collectors.groupingBy(f -> f.code().code(), TreeMap::new, Collectors.toList()));
    kinds.forEach((code, kind) -> print(out, code, kind));
  }

  private static void print(PrintWriter out, String code, List<Finding> kind) {
    FindingCode what = kind.get(0).code();
    out.printf("  %s %-7s %6d  %s%n", code, Words.of(what.severity()), kind.size(), what.meaning());
  }
}
