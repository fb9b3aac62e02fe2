package pressweek.data.proof;

import java.util.List;
import java.util.Locale;
import pressweek.data.proof.Finding.Severity;

/**
 * What a proof of a guide came to.
 *
 * @param findings what was found, in the order of the files and lines
 * @param written how many codes were written and read back
 * @param open how many questions were left open since too many codes would have had to be tried
 * @param seed seed of the random codes
 */
public record Proof(List<Finding> findings, int written, int open, long seed) {
  public Proof {
    findings = List.copyOf(findings);
  }

  /** True when nothing but notes was found. */
  public boolean clean() {
    return findings.stream().allMatch(finding -> finding.severity() == Severity.NOTE);
  }

  /** How many findings are this bad. */
  public long count(Severity severity) {
    return findings.stream().filter(finding -> finding.severity() == severity).count();
  }

  /** What was tried, in a sentence or two. */
  public String tried() {
    String tried =
        String.format(Locale.ROOT, "%,d codes written and read back (seed %d).", written, seed);
    return open == 0
        ? tried
        : tried + " Questions left open, for want of an end to the codes: " + open + ".";
  }
}
