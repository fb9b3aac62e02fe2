package pressweek.reports.write;

import java.util.List;
import pressweek.reports.markup.Element;

/** Lines to sign on, with the time. */
final class Signatures {
  private static final String LINE = "\u00a0_____________________ at ________";

  private Signatures() {}

  static Element of(List<String> who) {
    Element signatures = Element.of("p", "sign");
    who.forEach(one -> signatures.add("span", one + LINE));
    return signatures;
  }
}
